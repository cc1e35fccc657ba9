package rigmorrow.model.motion;

/**
 * What a move may not exceed, in one unit of position (radians for a plate, millimetres for an
 * arm).
 *
 * @param speed highest speed, unit/s; above 0, finite
 * @param acceleration highest acceleration and deceleration, unit/s2; above 0, infinity for no
 *     limit
 * @param jerk highest change of acceleration, unit/s3; above 0, infinity for no limit
 */
public record MoveLimits(double speed, double acceleration, double jerk) {

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if a limit is outside its bounds
   */
  public MoveLimits {
    Bounds.positive("speed limit", speed);
    Bounds.positiveOrInfinite("acceleration limit", acceleration);
    Bounds.positiveOrInfinite("jerk limit", jerk);
  }

  /**
   * Returns the tighter of each pair of limits: what holds when the machine and the item each have
   * their own.
   */
  public MoveLimits tightestWith(MoveLimits other) {
    return new MoveLimits(
        Math.min(speed, other.speed),
        Math.min(acceleration, other.acceleration),
        Math.min(jerk, other.jerk));
  }
}
