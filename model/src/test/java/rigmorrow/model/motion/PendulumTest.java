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

class PendulumTest {

  @ParameterizedTest
  @MethodSource("rigmorrow.model.motion.MotionChecks#pendulum")
  void swingsAsLongAsTheSecondsPendulum(OutsideCheck check) {
    check.verify();
  }

  @Test
  void swingsTwiceAsSlowlyAtFourTimesTheLength() {
    assertThat(new Pendulum(2000, 0.01).periodSeconds())
        .isCloseTo(2 * new Pendulum(500, 0.01).periodSeconds(), within(1e-12));
  }

  @Test
  void usesTheGravityItIsGiven() {
    assertThat(new Pendulum(1000, 0.01, 4 * Math.PI * Math.PI).periodSeconds())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void settlesAfterTheCyclesThatItsDecrementWasMeasuredOver() {
    double decrement = LogDecrement.fromAmplitudes(100, 13, 100);
    Pendulum pendulum = new Pendulum(800, LogDecrement.toDampingRatio(decrement));
    assertThat(pendulum.cyclesToDecayTo(0.13)).isCloseTo(100, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.05, 0.3, 0.9})
  void settlesAfterAsManyDampedPeriodsAsCycles(double dampingRatio) {
    Pendulum pendulum = new Pendulum(600, dampingRatio);
    double seconds = pendulum.secondsToDecayTo(0.02);
    assertThat(pendulum.cyclesToDecayTo(0.02) * pendulum.dampedPeriodSeconds())
        .isCloseTo(seconds, within(1e-9 * seconds));
  }

  /**
   * Follows the equation of motion by small steps: at the computed time the energy has shrunk by
   * the square.
   */
  @Test
  void settlesWhenTheSimulatedSwingHasDecayed() {
    double dampingRatio = 0.02;
    Pendulum pendulum = new Pendulum(500, dampingRatio);
    double frequency = pendulum.naturalFrequencyRadPerSecond();
    double cycles = 20;
    double fraction = Math.exp(-cycles * LogDecrement.fromDampingRatio(dampingRatio));
    int steps = 400_000;
    double step = pendulum.secondsToDecayTo(fraction) / steps;
    double angle = 1;
    double speed = 0;
    for (int i = 0; i < steps; i++) {
      speed += step * (-2 * dampingRatio * frequency * speed - frequency * frequency * angle);
      angle += step * speed;
    }
    assertThat(angle).isCloseTo(fraction, within(1e-3 * fraction));
  }

  @Test
  void takesNoTimeToStayAsItIs() {
    assertThat(new Pendulum(500, 0.02).secondsToDecayTo(1)).isZero();
    assertThat(new Pendulum(500, 0.02).cyclesToDecayTo(1)).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.1, Double.NaN})
  void refusesAFractionThatIsNone(double fraction) {
    Pendulum pendulum = new Pendulum(500, 0.02);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> pendulum.secondsToDecayTo(fraction))
        .withMessageStartingWith("fraction is ");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> pendulum.cyclesToDecayTo(fraction))
        .withMessageStartingWith("fraction is ");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0.1, 9.8, pendulum length",
    "100, 0, 9.8, damping ratio",
    "100, 1, 9.8, damping ratio",
    "100, 0.1, -9.8, gravity"
  })
  void refusesNumbersOutsideTheirBounds(
      double lengthMm, double dampingRatio, double gravity, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Pendulum(lengthMm, dampingRatio, gravity))
        .withMessageStartingWith(name);
  }
}
