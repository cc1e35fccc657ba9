package rigmorrow.model.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The shapes a double-S move can take; each random test runs over moves of every shape. */
enum MoveCase {
  REST_SPEED_AND_ACCELERATION_REACHED,
  REST_SPEED_REACHED,
  REST_ACCELERATION_REACHED,
  REST_NEITHER_REACHED,
  CRUISE_BOTH_AT_FULL_ACCELERATION,
  CRUISE_ONE_AT_FULL_ACCELERATION,
  CRUISE_NEITHER_AT_FULL_ACCELERATION,
  NO_CRUISE_BOTH_AT_FULL_ACCELERATION,
  NO_CRUISE_ONE_AT_FULL_ACCELERATION,
  NO_CRUISE_NEITHER_AT_FULL_ACCELERATION,
  ONLY_SPEEDS_UP,
  ONLY_SLOWS_DOWN;

  private static final long SEED = 20_08;
  private static final int MOST_DRAWS = 2_000_000;

  /** Draws moves until enough have this shape. */
  List<Move> randomMoves(int count) {
    Random random = new Random(SEED + ordinal());
    List<Move> moves = new ArrayList<>();
    for (int draw = 0; draw < MOST_DRAWS && moves.size() < count; draw++) {
      Move move = draw(random);
      if (of(move) == this) {
        moves.add(move);
      }
    }
    if (moves.size() < count) {
      throw new IllegalStateException(this + ": only " + moves.size() + " moves drawn");
    }
    return moves;
  }

  private Move draw(Random random) {
    return switch (this) {
      case ONLY_SPEEDS_UP -> Move.randomWithoutRoomToSpare(random, true);
      case ONLY_SLOWS_DOWN -> Move.randomWithoutRoomToSpare(random, false);
      default -> Move.random(random, ordinal() <= REST_NEITHER_REACHED.ordinal());
    };
  }

  private static MoveCase of(Move move) {
    DoubleSProfile profile = move.profile();
    boolean cruises = profile.cruiseSeconds() > 0;
    boolean up = reaches(profile.peakAcceleration(), move.limits().acceleration());
    boolean down = reaches(profile.peakDeceleration(), move.limits().acceleration());
    if (move.startSpeed() == 0 && move.endSpeed() == 0) {
      return cruises
          ? (up ? REST_SPEED_AND_ACCELERATION_REACHED : REST_SPEED_REACHED)
          : (up ? REST_ACCELERATION_REACHED : REST_NEITHER_REACHED);
    }
    if (!cruises && profile.accelerationSeconds() == 0) {
      return ONLY_SLOWS_DOWN;
    }
    if (!cruises && profile.decelerationSeconds() == 0) {
      return ONLY_SPEEDS_UP;
    }
    int reached = (up ? 1 : 0) + (down ? 1 : 0);
    MoveCase bothReached =
        cruises ? CRUISE_BOTH_AT_FULL_ACCELERATION : NO_CRUISE_BOTH_AT_FULL_ACCELERATION;
    return values()[bothReached.ordinal() + 2 - reached];
  }

  private static boolean reaches(double peak, double limit) {
    return peak >= limit * (1 - 1e-9);
  }
}
