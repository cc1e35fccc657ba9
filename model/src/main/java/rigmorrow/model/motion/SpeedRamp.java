package rigmorrow.model.motion;

/**
 * The quickest change from one speed to another under limits on acceleration and jerk, without
 * acceleration at either end: jerk one way, perhaps a stretch of constant acceleration, jerk the
 * other way.
 *
 * <p>Source: Biagiotti and Melchiorri, Trajectory Planning for Automatic Machines and Robots, 2008,
 * equations 3.19 to 3.24 (durations) and 3.30 (course).
 *
 * @param fromSpeed speed before, unit/s
 * @param toSpeed speed after, unit/s
 * @param seconds duration
 * @param jerkSeconds duration of each of the two stretches of jerk; at most half of {@code seconds}
 */
record SpeedRamp(double fromSpeed, double toSpeed, double seconds, double jerkSeconds) {

  static SpeedRamp between(double fromSpeed, double toSpeed, MoveLimits limits) {
    double change = Math.abs(toSpeed - fromSpeed);
    double acceleration = limits.acceleration();
    double jerk = limits.jerk();
    if (change == 0) {
      return new SpeedRamp(fromSpeed, toSpeed, 0, 0);
    }
    if (Double.isInfinite(jerk)) {
      return new SpeedRamp(fromSpeed, toSpeed, change / acceleration, 0);
    }
    if (change * jerk < acceleration * acceleration) {
      double jerkSeconds = Math.sqrt(change / jerk);
      return new SpeedRamp(fromSpeed, toSpeed, 2 * jerkSeconds, jerkSeconds);
    }
    double jerkSeconds = acceleration / jerk;
    return new SpeedRamp(fromSpeed, toSpeed, jerkSeconds + change / acceleration, jerkSeconds);
  }

  /**
   * Distance covered; the course of the speed is symmetric about its middle, so the mean speed is
   * the mean of both.
   */
  double distance() {
    return (fromSpeed + toSpeed) / 2 * seconds;
  }

  /**
   * Largest acceleration, negative when slowing down; infinite for a change in no time, 0 for no
   * change.
   */
  double peakAcceleration() {
    double change = toSpeed - fromSpeed;
    return change == 0 ? 0 : change / (seconds - jerkSeconds);
  }

  double accelerationAt(double second) {
    if (second < jerkSeconds) {
      return peakAcceleration() * second / jerkSeconds;
    }
    double left = seconds - second;
    if (left < jerkSeconds) {
      return peakAcceleration() * left / jerkSeconds;
    }
    return peakAcceleration();
  }

  double speedAt(double second) {
    double peak = peakAcceleration();
    if (second < jerkSeconds) {
      return fromSpeed + peak * second * second / (2 * jerkSeconds);
    }
    double left = seconds - second;
    if (left < jerkSeconds) {
      return toSpeed - peak * left * left / (2 * jerkSeconds);
    }
    return fromSpeed + peak * (second - jerkSeconds / 2);
  }

  double positionAt(double second) {
    double peak = peakAcceleration();
    if (second < jerkSeconds) {
      return fromSpeed * second + peak * second * second * second / (6 * jerkSeconds);
    }
    double left = seconds - second;
    if (left < jerkSeconds) {
      return distance() - toSpeed * left + peak * left * left * left / (6 * jerkSeconds);
    }
    return fromSpeed * second
        + peak / 6 * (3 * second * second - 3 * jerkSeconds * second + jerkSeconds * jerkSeconds);
  }
}
