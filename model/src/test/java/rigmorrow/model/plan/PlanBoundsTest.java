package rigmorrow.model.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PlanBoundsTest {
  @Test
  void roundsUpSoThatNoPlanIsFurtherFromTheBestThanSaid() {
    assertThat(PlanBounds.percentAbove(101, 100)).hasValue(1);
    assertThat(PlanBounds.percentAbove(10_001, 10_000)).hasValue(1);
    assertThat(PlanBounds.percentAbove(100, 100)).hasValue(0);
  }

  @Test
  void isOfUseUpToTwiceTheBound() {
    assertThat(PlanBounds.percentAbove(200, 100)).hasValue(100);
    assertThat(PlanBounds.percentAbove(201, 100)).isEmpty();
    assertThat(PlanBounds.percentAbove(1, 0)).isEmpty();
    assertThat(PlanBounds.percentAbove(0, 0)).hasValue(0);
  }

  @Test
  void addsTheSoftPartsUp() {
    assertThat(new PlanBounds(1_000, 1, 20, 300).softPoints()).isEqualTo(321);
  }

  @Test
  void isNeverBelowNothing() {
    assertThatThrownBy(() -> new PlanBounds(0, 0, -1, 0))
        .hasMessageContaining("bounds.changeoverPoints");
  }
}
