package rigmorrow.model.statistic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PercentilesTest {
  @Test
  void givesWhatIsPublished() {
    StatisticChecks.all().get(0).verify();
  }

  @Test
  void liesBetweenItsNeighboursInProportion() {
    Percentiles some = new Percentiles(40, 10, 20);
    assertThat(some.at(25)).isEqualTo(10);
    assertThat(some.at(50)).isEqualTo(20);
    assertThat(some.at(62.5)).isEqualTo(30);
  }

  @Test
  void staysWithinTheValues() {
    Percentiles some = new Percentiles(40, 10, 20);
    assertThat(some.at(0)).isEqualTo(10);
    assertThat(some.at(24)).isEqualTo(10);
    assertThat(some.at(100)).isEqualTo(40);
    assertThat(new Percentiles(7).at(50)).isEqualTo(7);
  }

  @Test
  void leavesTheValuesAsTheyAre() {
    double[] values = {3, 1, 2};
    assertThat(new Percentiles(values).at(50)).isEqualTo(2);
    assertThat(values).containsExactly(3, 1, 2);
  }

  @Test
  void refusesNothingAndMoreThanAll() {
    assertThatThrownBy(Percentiles::new).hasMessageContaining("at least one");
    assertThatThrownBy(() -> new Percentiles(1).at(101)).hasMessageContaining("percent is 101.0");
  }
}
