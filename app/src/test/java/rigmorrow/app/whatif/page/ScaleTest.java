package rigmorrow.app.whatif.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigmorrow.app.whatif.MoneyText;

class ScaleTest {
  @Test
  void hasRoundNumbersAroundItsValues() {
    Scale scale = Scale.around(-183, 82);
    assertThat(scale.low()).isEqualTo(-200);
    assertThat(scale.high()).isEqualTo(100);
    assertThat(scale.ticks(MoneyText::tick))
        .extracting(Mark::text)
        .containsExactly("-200", "-150", "-100", "-50", "0", "50", "100");
    assertThat(scale.part(-50)).isEqualTo(0.5);
    assertThat(scale.part(500)).isEqualTo(1);
    assertThat(scale.part(-500)).isZero();
  }

  @Test
  void copesWithOneValueAndWithSmallOnes() {
    assertThat(Scale.around(0, 0).high()).isPositive();
    Scale small = Scale.around(0.01, 0.03);
    assertThat(small.low()).isLessThanOrEqualTo(0.01);
    assertThat(small.high()).isGreaterThanOrEqualTo(0.03).isLessThan(0.1);
  }

  @Test
  void countsUpwardsFromBelow() {
    Scale scale = new Scale(0, 4);
    assertThat(scale.ticksUp(value -> "" + value, 2))
        .containsExactly(
            new Mark("0.0", Mark.Side.TOP, 1),
            new Mark("2.0", Mark.Side.TOP, 0.5),
            new Mark("4.0", Mark.Side.TOP, 0));
    assertThat(new Mark("0.0", Mark.Side.TOP, 1).place()).isEqualTo("top: 100.00%");
    assertThat(new Mark("0.0", Mark.Side.LEFT, 1 / 3.0).place()).isEqualTo("left: 33.33%");
  }
}
