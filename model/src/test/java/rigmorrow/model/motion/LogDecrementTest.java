package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.outside.OutsideCheck;

class LogDecrementTest {

  @ParameterizedTest
  @MethodSource("rigmorrow.model.motion.MotionChecks#decrement")
  void matchesTheTextbookProblem(OutsideCheck check) {
    check.verify();
  }

  @Test
  void isZeroWhereNothingDecays() {
    assertThat(LogDecrement.fromAmplitudes(3, 3, 5)).isZero();
    assertThat(LogDecrement.toDampingRatio(0)).isZero();
  }

  @Test
  void isNearlyTheDampingRatioTimesTwoPiWhereDampingIsSmall() {
    assertThat(LogDecrement.toDampingRatio(0.0204)).isCloseTo(0.0204 / (2 * Math.PI), within(1e-7));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 0.003, 0.05, 0.5, 0.99})
  void comesBackFromTheDampingRatio(double dampingRatio) {
    double decrement = LogDecrement.fromDampingRatio(dampingRatio);
    assertThat(LogDecrement.toDampingRatio(decrement)).isCloseTo(dampingRatio, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, 1, first amplitude",
    "1, 0, 1, later amplitude",
    "1, 2, 1, later amplitude",
    "2, 1, 0, cycles"
  })
  void refusesAmplitudesThatDoNotDecay(double first, double later, int cycles, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LogDecrement.fromAmplitudes(first, later, cycles))
        .withMessageStartingWith(name + " is ");
  }

  @Test
  void refusesRatiosAndDecrementsOutsideTheirBounds() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LogDecrement.toDampingRatio(-0.1))
        .withMessageStartingWith("logarithmic decrement is ");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LogDecrement.fromDampingRatio(1))
        .withMessageStartingWith("damping ratio is ");
  }
}
