package rigmorrow.model.motion;

/**
 * The highest speed of the quickest double-S move. The distance that the two ramps need grows with
 * the peak speed, so there is exactly one.
 *
 * <p>Source: Biagiotti and Melchiorri, Trajectory Planning for Automatic Machines and Robots, 2008,
 * section 3.4. Below the speed limit there is a closed form where both ramps reach the acceleration
 * limit (equations 3.26 and 3.27) and, from rest to rest, where neither does (section 3.4.3). What
 * remains is found by bisection, down to neighbouring floating-point numbers.
 *
 * @param distance distance of the move; enough to get from the start to the end speed
 * @param startSpeed speed before
 * @param endSpeed speed after
 */
record PeakSpeed(double distance, double startSpeed, double endSpeed, MoveLimits limits) {

  double value() {
    double fastestEnd = Math.max(startSpeed, endSpeed);
    if (distance == 0) {
      return fastestEnd;
    }
    if (distanceVia(limits.speed()) <= distance) {
      return limits.speed();
    }
    double atFullAcceleration = atFullAcceleration();
    if (atFullAcceleration - fastestEnd >= leastChangeAtFullAcceleration()) {
      return Math.min(atFullAcceleration, limits.speed());
    }
    return fastestEnd == 0 ? fromRestByJerkAlone() : byBisection(fastestEnd, limits.speed());
  }

  /**
   * The smallest change of speed in which a ramp reaches the acceleration limit; infinite if there
   * is no limit.
   */
  private double leastChangeAtFullAcceleration() {
    return limits.acceleration() * (limits.acceleration() / limits.jerk());
  }

  /**
   * Equations 3.26 and 3.27; not a number without an acceleration limit, where they do not apply.
   */
  private double atFullAcceleration() {
    double leastChange = leastChangeAtFullAcceleration();
    double discriminant =
        leastChange * leastChange
            + 2 * (startSpeed * startSpeed + endSpeed * endSpeed)
            + 4 * limits.acceleration() * distance
            - 2 * leastChange * (startSpeed + endSpeed);
    return (Math.sqrt(discriminant) - leastChange) / 2;
  }

  private double fromRestByJerkAlone() {
    double jerkSeconds = Math.cbrt(distance / (2 * limits.jerk()));
    return limits.jerk() * jerkSeconds * jerkSeconds;
  }

  private double byBisection(double reachable, double tooFast) {
    double low = reachable;
    double high = tooFast;
    double middle = low + (high - low) / 2;
    while (middle > low && middle < high) {
      if (distanceVia(middle) <= distance) {
        low = middle;
      } else {
        high = middle;
      }
      middle = low + (high - low) / 2;
    }
    return low;
  }

  private double distanceVia(double peak) {
    return SpeedRamp.between(startSpeed, peak, limits).distance()
        + SpeedRamp.between(peak, endSpeed, limits).distance();
  }
}
