package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Figures printed in Biagiotti and Melchiorri, Trajectory Planning for Automatic Machines and
 * Robots, 2008, section 3.4 (four decimals), and in the tests of the Ruckig library
 * (test/test_target.cpp, MIT licence).
 */
class DoubleSPublishedExamplesTest {

  private static final Offset<Double> PRINTED = within(0.5e-4 + 1e-9);

  @Test
  void matchesExample39WhereTheSpeedLimitIsReached() {
    DoubleSProfile move = DoubleSProfile.between(10, 1, 0, new MoveLimits(5, 10, 30));
    assertThat(move.accelerationSeconds()).isCloseTo(0.7333, PRINTED);
    assertThat(move.cruiseSeconds()).isCloseTo(1.1433, PRINTED);
    assertThat(move.decelerationSeconds()).isCloseTo(0.8333, PRINTED);
    assertThat(move.accelerationJerkSeconds()).isCloseTo(0.3333, PRINTED);
    assertThat(move.decelerationJerkSeconds()).isCloseTo(0.3333, PRINTED);
    assertThat(move.peakSpeed()).isEqualTo(5);
  }

  @Test
  void matchesExample310WhereTheSpeedLimitIsNotReached() {
    DoubleSProfile move = DoubleSProfile.between(10, 1, 0, new MoveLimits(10, 10, 30));
    assertThat(move.accelerationSeconds()).isCloseTo(1.0747, PRINTED);
    assertThat(move.cruiseSeconds()).isZero();
    assertThat(move.decelerationSeconds()).isCloseTo(1.1747, PRINTED);
    assertThat(move.accelerationJerkSeconds()).isCloseTo(0.3333, PRINTED);
    assertThat(move.decelerationJerkSeconds()).isCloseTo(0.3333, PRINTED);
    assertThat(move.peakSpeed()).isCloseTo(8.4136, PRINTED);
  }

  /**
   * The book lowers the acceleration limit by 1 % at a time; its example is the quickest move under
   * that lower limit.
   */
  @Test
  void matchesExample311UnderTheAccelerationLimitTheBookArrivesAt() {
    double lowered = accelerationLoweredAsInTheBook(10, 7, 0, 10, 30);
    DoubleSProfile move = DoubleSProfile.between(10, 7, 0, new MoveLimits(10, lowered, 30));
    assertThat(move.accelerationSeconds()).isCloseTo(0.4666, PRINTED);
    assertThat(move.cruiseSeconds()).isZero();
    assertThat(move.decelerationSeconds()).isCloseTo(1.4718, PRINTED);
    assertThat(move.accelerationJerkSeconds()).isCloseTo(0.2321, PRINTED);
    assertThat(move.decelerationJerkSeconds()).isCloseTo(0.2321, PRINTED);
    assertThat(move.peakSpeed()).isCloseTo(8.6329, PRINTED);
  }

  @Test
  void beatsTheDurationOfExample311UnderItsOwnLimits() {
    DoubleSProfile move = DoubleSProfile.between(10, 7, 0, new MoveLimits(10, 10, 30));
    assertThat(move.durationSeconds()).isLessThan(0.4666 + 1.4718);
  }

  /**
   * The book ends up with a single, gentle deceleration; 3.28 gives its stretch of jerk and so its
   * acceleration.
   */
  @Test
  void matchesExample312UnderTheAccelerationLimitTheBookArrivesAt() {
    double speeds = 7.5;
    double jerkSeconds =
        (30 * 10 - Math.sqrt(30 * (30 * 10 * 10 - speeds * speeds * 7.5))) / (30 * speeds);
    DoubleSProfile move =
        DoubleSProfile.between(10, 7.5, 0, new MoveLimits(10, 30 * jerkSeconds, 30));
    assertThat(move.accelerationSeconds()).isZero();
    assertThat(move.cruiseSeconds()).isZero();
    assertThat(move.decelerationSeconds()).isCloseTo(2.6667, PRINTED);
    assertThat(move.accelerationJerkSeconds()).isZero();
    assertThat(move.decelerationJerkSeconds()).isCloseTo(0.0973, PRINTED);
    assertThat(move.peakSpeed()).isEqualTo(7.5);
  }

  @Test
  void beatsTheDurationOfExample312UnderItsOwnLimits() {
    DoubleSProfile move = DoubleSProfile.between(10, 7.5, 0, new MoveLimits(10, 10, 30));
    assertThat(move.durationSeconds()).isLessThan(2.6667);
  }

  /**
   * The printed peak speed of this example, 8.6329, is that of example 3.11 and contradicts the
   * printed Tj: 30 * 0.5503^2 is 9.085. It is not used.
   */
  @Test
  void matchesExample313FromRestToRest() {
    DoubleSProfile move = DoubleSProfile.restToRest(10, 10, 20, 30);
    assertThat(move.accelerationJerkSeconds()).isCloseTo(0.5503, PRINTED);
    assertThat(move.decelerationJerkSeconds()).isCloseTo(0.5503, PRINTED);
    assertThat(move.accelerationSeconds()).isCloseTo(1.1006, PRINTED);
    assertThat(move.decelerationSeconds()).isCloseTo(1.1006, PRINTED);
    assertThat(move.cruiseSeconds()).isZero();
    assertThat(move.peakSpeed()).isCloseTo(30 * 0.5503 * 0.5503, within(2e-3));
  }

  @Test
  void matchesRuckigOverDistanceOneWithAllLimitsOne() {
    DoubleSProfile move = DoubleSProfile.restToRest(1, 1, 1, 1);
    assertThat(move.durationSeconds()).isCloseTo(3.1748021039, within(1e-10));
    assertThat(move.positionAt(3.1748 / 2)).isCloseTo(0.5, within(1e-5));
  }

  @Test
  void matchesRuckigOverDistanceTwoWithAllLimitsOne() {
    DoubleSProfile move = DoubleSProfile.restToRest(2, 1, 1, 1);
    assertThat(move.durationSeconds()).isCloseTo(4.0, within(1e-12));
    assertThat(move.positionAt(2.0)).isCloseTo(1.0, within(1e-12));
    assertThat(move.positionAt(0.6694329501)).isCloseTo(0.05, within(1e-10));
  }

  /**
   * Equations 3.26 under a shrinking acceleration limit, as section 3.4 of the book describes it.
   */
  private static double accelerationLoweredAsInTheBook(
      double distance, double startSpeed, double endSpeed, double acceleration, double jerk) {
    double lowered = acceleration;
    while (true) {
      double jerkSeconds = lowered / jerk;
      double discriminant =
          Math.pow(lowered, 4) / (jerk * jerk)
              + 2 * (startSpeed * startSpeed + endSpeed * endSpeed)
              + lowered * (4 * distance - 2 * jerkSeconds * (startSpeed + endSpeed));
      double root = Math.sqrt(discriminant);
      double up = (lowered * jerkSeconds - 2 * startSpeed + root) / (2 * lowered);
      double down = (lowered * jerkSeconds - 2 * endSpeed + root) / (2 * lowered);
      if (up > 2 * jerkSeconds && down > 2 * jerkSeconds) {
        return lowered;
      }
      lowered *= 0.99;
    }
  }
}
