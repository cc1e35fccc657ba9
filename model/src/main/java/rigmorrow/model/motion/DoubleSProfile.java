package rigmorrow.model.motion;

/**
 * The quickest move over a distance under limits on speed, acceleration and jerk, without
 * acceleration at either end: the double-S or seven-segment profile. One ramp up to a peak speed,
 * perhaps a stretch at that speed, one ramp down.
 *
 * <p>Source: Biagiotti and Melchiorri, Trajectory Planning for Automatic Machines and Robots, 2008,
 * section 3.4. Where neither the speed limit nor, in one of the ramps, the acceleration limit is
 * reached, the book lowers the acceleration limit step by step and says itself that the result is
 * not the quickest move; here it is.
 *
 * <p>Positions and speeds count in the direction of the move, so both boundary speeds are zero or
 * more; a move that must first run backwards is outside this class. An infinite jerk limit gives
 * the trapezoidal profile; with an infinite acceleration limit as well, speeds change at once.
 */
public final class DoubleSProfile {

  /**
   * Below this share of the distance, what the two ramps leave over is rounding and not a stretch
   * of the move.
   */
  private static final double ROUNDING = 1e-12;

  private final double distance;
  private final SpeedRamp up;
  private final double cruiseSeconds;
  private final SpeedRamp down;

  private DoubleSProfile(double distance, SpeedRamp up, double cruiseSeconds, SpeedRamp down) {
    this.distance = distance;
    this.up = up;
    this.cruiseSeconds = cruiseSeconds;
    this.down = down;
  }

  /**
   * Returns the quickest move that starts and ends at rest.
   *
   * @param distance how far, in the unit of position; 0 or more (0 takes no time)
   * @param speed highest speed, unit/s; above 0, finite
   * @param acceleration highest acceleration, unit/s2; above 0, may be infinite
   * @param jerk highest jerk, unit/s3; above 0, may be infinite
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public static DoubleSProfile restToRest(
      double distance, double speed, double acceleration, double jerk) {
    return restToRest(distance, new MoveLimits(speed, acceleration, jerk));
  }

  /**
   * Returns the quickest move that starts and ends at rest.
   *
   * @param distance how far, in the unit of position; 0 or more (0 takes no time)
   * @throws IllegalArgumentException if the distance is outside its bounds
   */
  public static DoubleSProfile restToRest(double distance, MoveLimits limits) {
    return between(distance, 0, 0, limits);
  }

  /**
   * Returns the quickest move between two speeds.
   *
   * @param distance how far, in the unit of position; 0 or more
   * @param startSpeed speed before, unit/s; from 0 to the speed limit
   * @param endSpeed speed after, unit/s; from 0 to the speed limit
   * @throws IllegalArgumentException if a number is outside its bounds, or if the distance is too
   *     short to change the speed as asked (equation 3.18); the message gives the distance needed
   */
  public static DoubleSProfile between(
      double distance, double startSpeed, double endSpeed, MoveLimits limits) {
    Bounds.notNegative("distance", distance);
    checkBoundarySpeed("start speed", startSpeed, limits);
    checkBoundarySpeed("end speed", endSpeed, limits);
    checkFeasible(distance, startSpeed, endSpeed, limits);
    double peak = new PeakSpeed(distance, startSpeed, endSpeed, limits).value();
    SpeedRamp up = SpeedRamp.between(startSpeed, peak, limits);
    SpeedRamp down = SpeedRamp.between(peak, endSpeed, limits);
    double left = distance - up.distance() - down.distance();
    double cruiseSeconds = left > ROUNDING * distance ? left / peak : 0;
    return new DoubleSProfile(distance, up, cruiseSeconds, down);
  }

  private static void checkBoundarySpeed(String name, double value, MoveLimits limits) {
    Bounds.notNegative(name, value);
    if (value > limits.speed()) {
      throw new IllegalArgumentException(
          name + " is " + value + "; accepted: 0 to the speed limit of " + limits.speed());
    }
  }

  private static void checkFeasible(
      double distance, double startSpeed, double endSpeed, MoveLimits limits) {
    double needed = SpeedRamp.between(startSpeed, endSpeed, limits).distance();
    if (distance < needed * (1 - ROUNDING)) {
      throw new IllegalArgumentException(
          "distance is %s; accepted: at least %s, which a change from speed %s to %s needs at acceleration %s and jerk %s"
              .formatted(
                  distance, needed, startSpeed, endSpeed, limits.acceleration(), limits.jerk()));
    }
  }

  /** Distance covered, in the unit of position. */
  public double distance() {
    return distance;
  }

  /** Duration of the whole move: Ta + Tv + Td of the book. */
  public double durationSeconds() {
    return up.seconds() + cruiseSeconds + down.seconds();
  }

  /** Duration of the ramp up, Ta of the book; 0 where the move only slows down. */
  public double accelerationSeconds() {
    return up.seconds();
  }

  /** Duration at the peak speed, Tv of the book; 0 where the speed limit is not reached. */
  public double cruiseSeconds() {
    return cruiseSeconds;
  }

  /** Duration of the ramp down, Td of the book; 0 where the move only speeds up. */
  public double decelerationSeconds() {
    return down.seconds();
  }

  /** Duration of each stretch of jerk while speeding up, Tj1 of the book. */
  public double accelerationJerkSeconds() {
    return up.jerkSeconds();
  }

  /** Duration of each stretch of jerk while slowing down, Tj2 of the book. */
  public double decelerationJerkSeconds() {
    return down.jerkSeconds();
  }

  /** Highest speed of the move, unit/s. */
  public double peakSpeed() {
    return up.toSpeed();
  }

  /**
   * Highest acceleration while speeding up, unit/s2; 0 or more, infinite where the speed changes at
   * once.
   */
  public double peakAcceleration() {
    return up.peakAcceleration();
  }

  /**
   * Highest deceleration while slowing down, unit/s2, as a positive number; infinite where the
   * speed changes at once.
   */
  public double peakDeceleration() {
    return Math.abs(down.peakAcceleration());
  }

  /**
   * Position after so many seconds, from 0 to the distance; at and after the end the distance
   * itself.
   */
  public double positionAt(double second) {
    if (second <= 0) {
      return 0;
    }
    if (second < up.seconds()) {
      return up.positionAt(second);
    }
    double slowingFrom = up.seconds() + cruiseSeconds;
    if (second < slowingFrom) {
      return up.distance() + peakSpeed() * (second - up.seconds());
    }
    if (second < durationSeconds()) {
      return distance - down.distance() + down.positionAt(second - slowingFrom);
    }
    return distance;
  }

  /**
   * Speed after so many seconds, unit/s; before the move the start speed, after it the end speed.
   */
  public double speedAt(double second) {
    if (second <= 0) {
      return up.fromSpeed();
    }
    if (second < up.seconds()) {
      return up.speedAt(second);
    }
    double slowingFrom = up.seconds() + cruiseSeconds;
    if (second < slowingFrom) {
      return peakSpeed();
    }
    return second < durationSeconds() ? down.speedAt(second - slowingFrom) : down.toSpeed();
  }

  /**
   * Acceleration after so many seconds, unit/s2, negative while slowing down; 0 before and after
   * the move.
   */
  public double accelerationAt(double second) {
    if (second <= 0 || second >= durationSeconds()) {
      return 0;
    }
    if (second < up.seconds()) {
      return up.accelerationAt(second);
    }
    double slowingFrom = up.seconds() + cruiseSeconds;
    return second < slowingFrom ? 0 : down.accelerationAt(second - slowingFrom);
  }
}
