package rigmorrow.model.motion;

/**
 * What a free-standing item on a turning plate bears before it slides or tips.
 *
 * <p>Turning at speed w and angular acceleration b, a point at radius r feels a centripetal
 * acceleration {@code w^2 r} and, at a right angle to it, a tangential one {@code b r}; the
 * resultant is {@code sqrt((w^2 r)^2 + (b r)^2)}. The item slides when that exceeds {@code mu g}
 * (dry friction) and tips over the edge of its base when it exceeds {@code g * half base / height
 * of the centre of mass} (moments about that edge). Both are rigid-body statics as in any textbook
 * of engineering mechanics; they leave out that an item may rock or creep below the limit, which is
 * what the safety factor is for.
 *
 * <p>For a rigid item, r is the radius of its centre of mass; the radius of its outermost point is
 * the cautious choice for soft or loosely stacked items. An item centred on the axis has radius 0
 * and would bear any speed on paper: give the distance by which it may have been set down beside
 * the axis instead.
 *
 * @param frictionCoefficient static friction between item and plate; above 0. A measured or sourced
 *     figure, never a guess
 * @param halfBaseWidthMm shortest distance from the foot of the centre of mass to the edge of the
 *     base; above 0
 * @param centreOfMassHeightMm height of the centre of mass above the plate; above 0
 * @param safetyFactor what the limits are divided by; 1 or more
 * @param gravityMetresPerSecondSquared gravity; above 0, normally {@link
 *     Gravity#STANDARD_METRES_PER_SECOND_SQUARED}
 */
public record ItemLimits(
    double frictionCoefficient,
    double halfBaseWidthMm,
    double centreOfMassHeightMm,
    double safetyFactor,
    double gravityMetresPerSecondSquared) {

  /**
   * Share of the allowance kept for the tangential acceleration unless the caller chooses another.
   * With one half, the centripetal part keeps sqrt(3)/2, about 87 %: starting and stopping get
   * their part at little cost in speed.
   */
  public static final double DEFAULT_TANGENTIAL_SHARE = 0.5;

  private static final double MM_PER_METRE = 1000;

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public ItemLimits {
    Bounds.positive("friction coefficient", frictionCoefficient);
    Bounds.positive("half base width in mm", halfBaseWidthMm);
    Bounds.positive("height of the centre of mass in mm", centreOfMassHeightMm);
    Bounds.atLeast1("safety factor", safetyFactor);
    Bounds.positive("gravity in m/s2", gravityMetresPerSecondSquared);
  }

  /**
   * Limits under standard gravity.
   *
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public ItemLimits(
      double frictionCoefficient,
      double halfBaseWidthMm,
      double centreOfMassHeightMm,
      double safetyFactor) {
    this(
        frictionCoefficient,
        halfBaseWidthMm,
        centreOfMassHeightMm,
        safetyFactor,
        Gravity.STANDARD_METRES_PER_SECOND_SQUARED);
  }

  /** The resultant horizontal acceleration at which the item would slide, without safety factor. */
  public double slidingMetresPerSecondSquared() {
    return frictionCoefficient * gravityMetresPerSecondSquared;
  }

  /** The resultant horizontal acceleration at which the item would tip, without safety factor. */
  public double tippingMetresPerSecondSquared() {
    return gravityMetresPerSecondSquared * halfBaseWidthMm / centreOfMassHeightMm;
  }

  /**
   * The resultant horizontal acceleration allowed: the lower of sliding and tipping, divided by the
   * safety factor.
   */
  public double allowedMetresPerSecondSquared() {
    return Math.min(slidingMetresPerSecondSquared(), tippingMetresPerSecondSquared())
        / safetyFactor;
  }

  /**
   * Returns the highest turn speed while the plate speeds up or slows down.
   *
   * @param radiusMm radius of the item on the plate; above 0, see above for a centred item
   * @param tangentialMetresPerSecondSquared tangential acceleration at that radius; 0 for a steady
   *     turn, at most {@link #allowedMetresPerSecondSquared()}
   * @throws IllegalArgumentException if a number is outside its bounds; the tangential acceleration
   *     alone may already be more than the item bears
   */
  public double maximumSpeedRadPerSecond(double radiusMm, double tangentialMetresPerSecondSquared) {
    Bounds.positive("radius in mm", radiusMm);
    Bounds.notNegative("tangential acceleration in m/s2", tangentialMetresPerSecondSquared);
    double allowed = allowedMetresPerSecondSquared();
    if (tangentialMetresPerSecondSquared > allowed) {
      throw new IllegalArgumentException(
          "tangential acceleration in m/s2 is "
              + tangentialMetresPerSecondSquared
              + "; accepted: 0 to the item's allowance of "
              + allowed);
    }
    double centripetal =
        Math.sqrt(
            (allowed - tangentialMetresPerSecondSquared)
                * (allowed + tangentialMetresPerSecondSquared));
    return Math.sqrt(centripetal / (radiusMm / MM_PER_METRE));
  }

  /**
   * Returns limits for a move of the plate under which the item stays put at every moment, with
   * {@link #DEFAULT_TANGENTIAL_SHARE}.
   *
   * @param radiusMm radius of the item on the plate; above 0
   * @throws IllegalArgumentException if the radius is outside its bounds
   */
  public MoveLimits turnLimits(double radiusMm) {
    return turnLimits(radiusMm, DEFAULT_TANGENTIAL_SHARE);
  }

  /**
   * Returns limits for a move of the plate under which the item stays put at every moment: a fixed
   * share of the allowance goes to the tangential acceleration, the speed gets what is then left of
   * the resultant. So even the highest speed and the highest acceleration together stay within the
   * allowance.
   *
   * @param radiusMm radius of the item on the plate; above 0
   * @param tangentialShare share of the allowance for the tangential acceleration; above 0 and
   *     below 1. More suits short steps, less suits long continuous turns
   * @return speed in rad/s and acceleration in rad/s2; jerk is not limited by the item
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public MoveLimits turnLimits(double radiusMm, double tangentialShare) {
    Bounds.positive("radius in mm", radiusMm);
    Bounds.between0And1("tangential share", tangentialShare);
    double tangential = tangentialShare * allowedMetresPerSecondSquared();
    return new MoveLimits(
        maximumSpeedRadPerSecond(radiusMm, tangential),
        tangential / (radiusMm / MM_PER_METRE),
        Double.POSITIVE_INFINITY);
  }

  /**
   * Returns the resultant horizontal acceleration in m/s2 that an item feels.
   *
   * @param radiusMm radius of the item on the plate; 0 or more
   * @param speedRadPerSecond turn speed; either sign
   * @param accelerationRadPerSecondSquared angular acceleration; either sign
   * @throws IllegalArgumentException if the radius is outside its bounds
   */
  public static double resultantMetresPerSecondSquared(
      double radiusMm, double speedRadPerSecond, double accelerationRadPerSecondSquared) {
    double radiusMetres = Bounds.notNegative("radius in mm", radiusMm) / MM_PER_METRE;
    return radiusMetres
        * Math.hypot(speedRadPerSecond * speedRadPerSecond, accelerationRadPerSecondSquared);
  }
}
