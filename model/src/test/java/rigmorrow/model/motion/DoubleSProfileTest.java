package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DoubleSProfileTest {

  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  @Test
  void takesNoTimeForNoDistance() {
    DoubleSProfile move = DoubleSProfile.restToRest(0, 1, 1, 1);
    assertThat(move.durationSeconds()).isZero();
    assertThat(move.peakSpeed()).isZero();
    assertThat(move.positionAt(0)).isZero();
  }

  @Test
  void takesNoTimeForNoDistanceAtOneSpeed() {
    DoubleSProfile move = DoubleSProfile.between(0, 1, 1, new MoveLimits(2, 1, 1));
    assertThat(move.durationSeconds()).isZero();
    assertThat(move.peakSpeed()).isEqualTo(1);
  }

  @Test
  void keepsTheLimitSpeedWhenItStartsAndEndsThere() {
    DoubleSProfile move = DoubleSProfile.between(6, 2, 2, new MoveLimits(2, 1, 1));
    assertThat(move.accelerationSeconds()).isZero();
    assertThat(move.decelerationSeconds()).isZero();
    assertThat(move.cruiseSeconds()).isEqualTo(3);
    assertThat(move.positionAt(1.5)).isCloseTo(3, within(1e-12));
  }

  @Test
  void holdsTheStartAndEndStateOutsideTheMove() {
    DoubleSProfile move = DoubleSProfile.between(10, 1, 2, new MoveLimits(5, 10, 30));
    assertThat(move.positionAt(-1)).isZero();
    assertThat(move.speedAt(-1)).isEqualTo(1);
    assertThat(move.accelerationAt(-1)).isZero();
    assertThat(move.positionAt(99)).isEqualTo(10);
    assertThat(move.speedAt(99)).isEqualTo(2);
    assertThat(move.accelerationAt(99)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"0.001, 2, 3", "4, 2, 3", "1.333333, 2, 3", "1000, 0.5, 7"})
  void isTheTrapezoidWithoutAJerkLimit(double distance, double speed, double acceleration) {
    DoubleSProfile move = DoubleSProfile.restToRest(distance, speed, acceleration, NO_LIMIT);
    TrapezoidalProfile trapezoid = new TrapezoidalProfile(distance, speed, acceleration);
    assertThat(move.durationSeconds()).isCloseTo(trapezoid.durationSeconds(), within(1e-9));
    assertThat(move.cruiseSeconds()).isCloseTo(trapezoid.cruiseSeconds(), within(1e-9));
    assertThat(move.peakSpeed()).isCloseTo(trapezoid.peakSpeed(), within(1e-9));
    for (int step = 0; step <= 20; step++) {
      double second = step / 20.0 * trapezoid.durationSeconds();
      assertThat(move.positionAt(second)).isCloseTo(trapezoid.positionAt(second), within(1e-9));
      assertThat(move.speedAt(second)).isCloseTo(trapezoid.speedAt(second), within(1e-9));
    }
  }

  @Test
  void runsAtTheSpeedLimitWithoutAnyOtherLimit() {
    DoubleSProfile move = DoubleSProfile.restToRest(10, 4, NO_LIMIT, NO_LIMIT);
    assertThat(move.durationSeconds()).isEqualTo(2.5);
    assertThat(move.positionAt(1)).isEqualTo(4);
    assertThat(move.peakAcceleration()).isInfinite();
  }

  @Test
  void isHeldBackByJerkAloneWithoutAnAccelerationLimit() {
    DoubleSProfile move = DoubleSProfile.restToRest(1, 100, NO_LIMIT, 1);
    assertThat(move.durationSeconds()).isCloseTo(4 * Math.cbrt(0.5), within(1e-12));
    DoubleSProfile moving = DoubleSProfile.between(5, 1, 2, new MoveLimits(100, NO_LIMIT, 1));
    DoubleSProfile neverThatFast = DoubleSProfile.between(5, 1, 2, new MoveLimits(100, 1e6, 1));
    assertThat(moving.durationSeconds()).isCloseTo(neverThatFast.durationSeconds(), within(1e-9));
  }

  /**
   * From the trapezoid, a jerk limit costs exactly the time to build up the acceleration once,
   * while it cruises.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e2, 1e3, 1e4, 1e6, 1e9})
  void tendsToTheTrapezoidAsTheJerkLimitGrows(double jerk) {
    double trapezoid = new TrapezoidalProfile(10, 2, 5).durationSeconds();
    double move = DoubleSProfile.restToRest(10, 2, 5, jerk).durationSeconds();
    assertThat(move - trapezoid).isCloseTo(5 / jerk, within(1e-12));
  }

  /**
   * Section 3.4.3 gives Tj + sqrt(Tj^2 + 4 h / a) against 2 sqrt(h / a): between one and two Tj
   * more.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e2, 1e3, 1e4, 1e6, 1e9})
  void tendsToTheTriangleAsTheJerkLimitGrows(double jerk) {
    double triangle = new TrapezoidalProfile(0.1, 2, 5).durationSeconds();
    double move = DoubleSProfile.restToRest(0.1, 2, 5, jerk).durationSeconds();
    assertThat(move - triangle).isBetween(5 / jerk - 1e-12, 2 * 5 / jerk + 1e-12);
  }

  @Test
  void refusesADistanceTooShortForTheChangeOfSpeed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DoubleSProfile.between(4, 7.5, 0, new MoveLimits(10, 10, 30)))
        .withMessageContainingAll("distance is 4.0", "at least 4.0625", "7.5", "10.0", "30.0");
  }

  @Test
  void acceptsADistanceJustLongEnoughForTheChangeOfSpeed() {
    DoubleSProfile move = DoubleSProfile.between(4.0625, 7.5, 0, new MoveLimits(10, 10, 30));
    assertThat(move.accelerationSeconds()).isZero();
    assertThat(move.durationSeconds()).isCloseTo(1.0 / 3 + 0.75, within(1e-12));
  }

  @Test
  void refusesABoundarySpeedAboveTheLimit() {
    MoveLimits limits = new MoveLimits(2, 1, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DoubleSProfile.between(10, 2.5, 0, limits))
        .withMessage("start speed is 2.5; accepted: 0 to the speed limit of 2.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DoubleSProfile.between(10, 0, 2.5, limits))
        .withMessage("end speed is 2.5; accepted: 0 to the speed limit of 2.0");
  }

  @ParameterizedTest
  @CsvSource({
    "-1, 0, 0, distance",
    "NaN, 0, 0, distance",
    "Infinity, 0, 0, distance",
    "1, -0.1, 0, start speed",
    "1, NaN, 0, start speed",
    "1, 0, -0.1, end speed"
  })
  void refusesNumbersOutsideTheirBounds(
      double distance, double startSpeed, double endSpeed, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> DoubleSProfile.between(distance, startSpeed, endSpeed, new MoveLimits(1, 1, 1)))
        .withMessageStartingWith(name + " is ");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, 1, speed limit",
    "-1, 1, 1, speed limit",
    "Infinity, 1, 1, speed limit",
    "1, 0, 1, acceleration limit",
    "1, NaN, 1, acceleration limit",
    "1, 1, 0, jerk limit"
  })
  void refusesLimitsOutsideTheirBounds(
      double speed, double acceleration, double jerk, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MoveLimits(speed, acceleration, jerk))
        .withMessageStartingWith(name + " is ");
  }

  @Test
  void takesTheTighterOfEachPairOfLimits() {
    MoveLimits machine = new MoveLimits(3, 10, 30);
    MoveLimits item = new MoveLimits(5, 2, NO_LIMIT);
    assertThat(machine.tightestWith(item)).isEqualTo(new MoveLimits(3, 2, 30));
  }
}
