package rigmorrow.model.motion;

/**
 * The quickest move from rest to rest under limits on speed and acceleration alone: constant
 * acceleration, perhaps a stretch at the speed limit, constant deceleration; a triangle where the
 * speed limit is not reached.
 *
 * <p>Source: Biagiotti and Melchiorri, Trajectory Planning for Automatic Machines and Robots, 2008,
 * section 3.2 (number of the section from memory). Acceleration jumps, so this is a floor for what
 * a machine with limited jerk can do; see {@link DoubleSProfile}.
 *
 * @param distance how far, in one unit of position; 0 or more (0 takes no time)
 * @param speedLimit highest speed, unit/s; above 0, finite
 * @param accelerationLimit highest acceleration and deceleration, unit/s2; above 0, finite
 */
public record TrapezoidalProfile(double distance, double speedLimit, double accelerationLimit) {

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public TrapezoidalProfile {
    Bounds.notNegative("distance", distance);
    Bounds.positive("speed limit", speedLimit);
    Bounds.positive("acceleration limit", accelerationLimit);
  }

  /** Highest speed of the move, unit/s. */
  public double peakSpeed() {
    return Math.min(speedLimit, Math.sqrt(distance * accelerationLimit));
  }

  /** Duration of the acceleration, and again of the deceleration. */
  public double accelerationSeconds() {
    return peakSpeed() / accelerationLimit;
  }

  /** Duration at the speed limit; 0 where it is not reached. */
  public double cruiseSeconds() {
    double left = distance - peakSpeed() * accelerationSeconds();
    return peakSpeed() < speedLimit ? 0 : Math.max(0, left / speedLimit);
  }

  /** Duration of the whole move. */
  public double durationSeconds() {
    return 2 * accelerationSeconds() + cruiseSeconds();
  }

  /** Speed after so many seconds, unit/s; 0 before and after the move. */
  public double speedAt(double second) {
    double fromNearerEnd = Math.min(second, durationSeconds() - second);
    return Math.max(0, Math.min(peakSpeed(), accelerationLimit * fromNearerEnd));
  }

  /** Position after so many seconds, from 0 to the distance. */
  public double positionAt(double second) {
    if (second > durationSeconds() / 2) {
      return distance - travelled(durationSeconds() - second);
    }
    return travelled(second);
  }

  private double travelled(double secondInFirstHalf) {
    double second = Math.max(0, secondInFirstHalf);
    double speedingUp = Math.min(second, accelerationSeconds());
    return accelerationLimit * speedingUp * speedingUp / 2 + peakSpeed() * (second - speedingUp);
  }
}
