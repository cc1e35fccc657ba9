package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What must hold for every move, over 500 seeded random ones of each shape. */
class DoubleSPropertiesTest {

  private static final int MOVES = 500;
  private static final int SAMPLES = 100;
  private static final double RELATIVE = 1e-9;

  @ParameterizedTest
  @EnumSource
  void staysWithinItsLimits(MoveCase shape) {
    for (Move move : shape.randomMoves(MOVES)) {
      DoubleSProfile profile = move.profile();
      MoveLimits limits = move.limits();
      double slowest = Math.min(move.startSpeed(), move.endSpeed());
      double step = profile.durationSeconds() / SAMPLES;
      double accelerationBefore = 0;
      double positionBefore = 0;
      for (int sample = 0; sample <= SAMPLES; sample++) {
        double second = sample * step;
        double acceleration = profile.accelerationAt(second);
        double jerk = (acceleration - accelerationBefore) / step;
        assertThat(profile.speedAt(second))
            .as("speed of %s at %s s", move, second)
            .isBetween(slowest - RELATIVE * limits.speed(), limits.speed() * (1 + RELATIVE));
        assertThat(Math.abs(acceleration))
            .as("acceleration of %s at %s s", move, second)
            .isLessThanOrEqualTo(limits.acceleration() * (1 + RELATIVE));
        assertThat(Math.abs(jerk))
            .as("jerk of %s before %s s", move, second)
            .isLessThanOrEqualTo(limits.jerk() * (1 + 1e-6));
        assertThat(profile.positionAt(second))
            .as("position of %s at %s s", move, second)
            .isBetween(positionBefore - RELATIVE * move.distance(), move.distance());
        accelerationBefore = acceleration;
        positionBefore = profile.positionAt(second);
      }
    }
  }

  /** Speed is quadratic in each of the seven segments, so Simpson's rule over each is exact. */
  @ParameterizedTest
  @EnumSource
  void coversItsDistanceWhenTheSpeedIsIntegrated(MoveCase shape) {
    for (Move move : shape.randomMoves(MOVES)) {
      DoubleSProfile profile = move.profile();
      double position = 0;
      double second = 0;
      for (double length : segmentSeconds(profile)) {
        double end = second + length;
        double middle = second + length / 2;
        position +=
            length
                / 6
                * (profile.speedAt(second) + 4 * profile.speedAt(middle) + profile.speedAt(end));
        second = end;
        assertThat(profile.positionAt(second))
            .as("position of %s at %s s", move, second)
            .isCloseTo(position, within(RELATIVE * move.distance()));
      }
      assertThat(position)
          .as("end of %s", move)
          .isCloseTo(move.distance(), within(RELATIVE * move.distance()));
    }
  }

  /** Plays the durations back as nothing but full jerk, none, and full jerk the other way. */
  @ParameterizedTest
  @EnumSource
  void arrivesWhenItsDurationsArePlayedBackWithFullJerk(MoveCase shape) {
    double[] directions = {1, 0, -1, 0, -1, 0, 1};
    for (Move move : shape.randomMoves(MOVES)) {
      double[] seconds = segmentSeconds(move.profile());
      double position = 0;
      double speed = move.startSpeed();
      double acceleration = 0;
      for (int segment = 0; segment < seconds.length; segment++) {
        double t = seconds[segment];
        double jerk = directions[segment] * move.limits().jerk();
        position += t * (speed + t * (acceleration / 2 + t * jerk / 6));
        speed += t * (acceleration + t * jerk / 2);
        acceleration += t * jerk;
      }
      assertThat(position)
          .as("distance of %s", move)
          .isCloseTo(move.distance(), within(1e-7 * move.distance()));
      assertThat(speed)
          .as("end speed of %s", move)
          .isCloseTo(move.endSpeed(), within(1e-7 * move.limits().speed()));
      assertThat(acceleration)
          .as("end acceleration of %s", move)
          .isCloseTo(0, within(1e-7 * move.limits().acceleration()));
    }
  }

  @ParameterizedTest
  @EnumSource
  void isNeverSlowerWithAHigherLimit(MoveCase shape) {
    Random random = new Random(34);
    for (Move move : shape.randomMoves(MOVES)) {
      double duration = move.profile().durationSeconds();
      double factor = 1 + 10 * random.nextDouble();
      MoveLimits limits = move.limits();
      MoveLimits[] raised = {
        new MoveLimits(limits.speed() * factor, limits.acceleration(), limits.jerk()),
        new MoveLimits(limits.speed(), limits.acceleration() * factor, limits.jerk()),
        new MoveLimits(limits.speed(), limits.acceleration(), limits.jerk() * factor),
        new MoveLimits(limits.speed(), limits.acceleration(), Double.POSITIVE_INFINITY)
      };
      for (MoveLimits higher : raised) {
        assertThat(move.withLimits(higher).profile().durationSeconds())
            .as("%s under %s", move, higher)
            .isLessThanOrEqualTo(duration * (1 + RELATIVE));
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void isAsLongBackwardsInTime(MoveCase shape) {
    for (Move move : shape.randomMoves(MOVES)) {
      Move backwards = new Move(move.distance(), move.endSpeed(), move.startSpeed(), move.limits());
      double duration = move.profile().durationSeconds();
      assertThat(backwards.profile().durationSeconds())
          .as("%s", backwards)
          .isCloseTo(duration, within(RELATIVE * duration));
    }
  }

  private static double[] segmentSeconds(DoubleSProfile profile) {
    double jerkUp = profile.accelerationJerkSeconds();
    double jerkDown = profile.decelerationJerkSeconds();
    return new double[] {
      jerkUp,
      profile.accelerationSeconds() - 2 * jerkUp,
      jerkUp,
      profile.cruiseSeconds(),
      jerkDown,
      profile.decelerationSeconds() - 2 * jerkDown,
      jerkDown
    };
  }
}
