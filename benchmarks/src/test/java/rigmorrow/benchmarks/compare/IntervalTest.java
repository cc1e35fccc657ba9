package rigmorrow.benchmarks.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class IntervalTest {
  @Test
  void ofAConstantIsThatConstant() {
    Interval interval = Interval.of(Collections.nCopies(7, 0.4));
    assertThat(interval.mean()).isCloseTo(0.4, within(1e-12));
    assertThat(interval.low()).isCloseTo(0.4, within(1e-12));
    assertThat(interval.high()).isCloseTo(0.4, within(1e-12));
    assertThat(interval.count()).isEqualTo(7);
  }

  /** Of two ratios a quarter of the draws has only the one, a quarter only the other. */
  @Test
  void ofTwoGoesFromTheOneToTheOther() {
    Interval interval = Interval.of(List.of(1.0, 4.0));
    assertThat(interval.mean()).isCloseTo(2, within(1e-12));
    assertThat(interval.low()).isCloseTo(1, within(1e-12));
    assertThat(interval.high()).isCloseTo(4, within(1e-12));
  }

  /**
   * Forty logarithms, half -1 and half 1: the mean of a draw has the deviation 1 / sqrt(40), so the
   * normal interval is plus and minus 1.96 / sqrt(40).
   */
  @Test
  void ofManyComesNearTheNormalOne() {
    List<Double> ratios = new java.util.ArrayList<>(Collections.nCopies(20, Math.exp(-1)));
    ratios.addAll(Collections.nCopies(20, Math.exp(1)));
    Interval interval = Interval.of(ratios);
    assertThat(Math.log(interval.low())).isCloseTo(-1.96 / Math.sqrt(40), within(0.03));
    assertThat(Math.log(interval.high())).isCloseTo(1.96 / Math.sqrt(40), within(0.03));
  }

  @Test
  void isTheSameEveryTime() {
    List<Double> ratios = List.of(0.3, 0.9, 1.4, 0.7);
    assertThat(Interval.of(ratios)).isEqualTo(Interval.of(ratios));
  }

  @Test
  void refusesNothingAndZero() {
    assertThatThrownBy(() -> Interval.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Interval.of(List.of(0.0)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
