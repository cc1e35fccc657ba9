package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrapezoidalProfileTest {

  @Test
  void cruisesWhereTheSpeedLimitIsReached() {
    TrapezoidalProfile move = new TrapezoidalProfile(10, 2, 4);
    assertThat(move.accelerationSeconds()).isEqualTo(0.5);
    assertThat(move.cruiseSeconds()).isEqualTo(4.5);
    assertThat(move.durationSeconds()).isEqualTo(5.5);
    assertThat(move.speedAt(3)).isEqualTo(2);
  }

  @Test
  void isATriangleWhereTheSpeedLimitIsNotReached() {
    TrapezoidalProfile move = new TrapezoidalProfile(1, 5, 4);
    assertThat(move.peakSpeed()).isEqualTo(2);
    assertThat(move.cruiseSeconds()).isZero();
    assertThat(move.durationSeconds()).isEqualTo(1);
    assertThat(move.positionAt(0.5)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void takesNoTimeForNoDistance() {
    assertThat(new TrapezoidalProfile(0, 5, 4).durationSeconds()).isZero();
  }

  @Test
  void restsBeforeAndAfterTheMove() {
    TrapezoidalProfile move = new TrapezoidalProfile(10, 2, 4);
    assertThat(move.speedAt(-1)).isZero();
    assertThat(move.positionAt(-1)).isZero();
    assertThat(move.speedAt(99)).isZero();
    assertThat(move.positionAt(99)).isEqualTo(10);
  }

  @Test
  void coversItsDistanceWhenTheSpeedIsIntegrated() {
    Random random = new Random(2008);
    for (int move = 0; move < 500; move++) {
      TrapezoidalProfile profile =
          new TrapezoidalProfile(
              Move.logUniform(random, 1e-3, 1e3),
              Move.logUniform(random, 0.1, 100),
              Move.logUniform(random, 0.1, 100));
      double peak = profile.peakSpeed();
      double integral = peak * profile.accelerationSeconds() + peak * profile.cruiseSeconds();
      assertThat(peak).isLessThanOrEqualTo(profile.speedLimit());
      assertThat(integral)
          .as("%s", profile)
          .isCloseTo(profile.distance(), within(1e-9 * profile.distance()));
      assertThat(profile.positionAt(profile.durationSeconds() / 2))
          .as("%s", profile)
          .isCloseTo(profile.distance() / 2, within(1e-9 * profile.distance()));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-1, 1, 1, distance",
    "1, 0, 1, speed limit",
    "1, 1, 0, acceleration limit",
    "1, 1, Infinity, acceleration limit"
  })
  void refusesNumbersOutsideTheirBounds(
      double distance, double speed, double acceleration, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TrapezoidalProfile(distance, speed, acceleration))
        .withMessageStartingWith(name + " is ");
  }
}
