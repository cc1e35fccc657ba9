package rigmorrow.model.motion;

import java.util.Random;

/** A move as the random tests ask for it. */
record Move(double distance, double startSpeed, double endSpeed, MoveLimits limits) {

  /** Limits over several orders of magnitude; a move that is always possible. */
  static Move random(Random random, boolean fromRestToRest) {
    MoveLimits limits =
        new MoveLimits(
            logUniform(random, 0.1, 100),
            logUniform(random, 0.1, 1000),
            logUniform(random, 0.1, 10_000));
    double startSpeed = fromRestToRest ? 0 : limits.speed() * boundaryShare(random);
    double endSpeed = fromRestToRest ? 0 : limits.speed() * boundaryShare(random);
    double needed = SpeedRamp.between(startSpeed, endSpeed, limits).distance();
    double distance = needed + logUniform(random, 1e-4, 1e3);
    return new Move(distance, startSpeed, endSpeed, limits);
  }

  /** A move just long enough for its change of speed; there always is one. */
  static Move randomWithoutRoomToSpare(Random random, boolean speedingUp) {
    Move move = random(random, false);
    while (move.startSpeed == move.endSpeed) {
      move = random(random, false);
    }
    double slower = Math.min(move.startSpeed, move.endSpeed);
    double faster = Math.max(move.startSpeed, move.endSpeed);
    double needed = SpeedRamp.between(slower, faster, move.limits).distance();
    return speedingUp
        ? new Move(needed, slower, faster, move.limits)
        : new Move(needed, faster, slower, move.limits);
  }

  DoubleSProfile profile() {
    return DoubleSProfile.between(distance, startSpeed, endSpeed, limits);
  }

  Move withLimits(MoveLimits other) {
    return new Move(distance, startSpeed, endSpeed, other);
  }

  static double logUniform(Random random, double from, double to) {
    return from * Math.exp(random.nextDouble() * Math.log(to / from));
  }

  private static double boundaryShare(Random random) {
    int kind = random.nextInt(4);
    return kind == 0 ? 0 : kind == 1 ? 1 : random.nextDouble();
  }
}
