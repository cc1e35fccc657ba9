package rigmorrow.model.motion;

/**
 * A hanging item as a damped pendulum that swings through small angles.
 *
 * <p>Source: textbooks of mechanical vibration: period {@code 2 pi sqrt(L/g)}, natural frequency
 * {@code w = sqrt(g/L)}, envelope of the damped swing {@code exp(-zeta w t)}. The small-angle
 * period is short by about 1 % at 23 degrees; a swing that must settle is far below that.
 *
 * @param lengthMm from the hinge to the centre of mass of the item; above 0
 * @param dampingRatio share of critical damping; above 0 and below 1. Measure it: see {@link
 *     LogDecrement}
 * @param gravityMetresPerSecondSquared gravity; above 0, normally {@link
 *     Gravity#STANDARD_METRES_PER_SECOND_SQUARED}
 */
public record Pendulum(double lengthMm, double dampingRatio, double gravityMetresPerSecondSquared) {

  private static final double MM_PER_METRE = 1000;

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public Pendulum {
    Bounds.positive("pendulum length in mm", lengthMm);
    Bounds.between0And1("damping ratio", dampingRatio);
    Bounds.positive("gravity in m/s2", gravityMetresPerSecondSquared);
  }

  /**
   * A pendulum under standard gravity.
   *
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public Pendulum(double lengthMm, double dampingRatio) {
    this(lengthMm, dampingRatio, Gravity.STANDARD_METRES_PER_SECOND_SQUARED);
  }

  /** Time of one swing to and fro without damping. */
  public double periodSeconds() {
    return 2 * Math.PI / naturalFrequencyRadPerSecond();
  }

  /** Time of one swing to and fro with damping; a little longer than without. */
  public double dampedPeriodSeconds() {
    return periodSeconds() / Math.sqrt((1 - dampingRatio) * (1 + dampingRatio));
  }

  /** Undamped angular frequency. */
  public double naturalFrequencyRadPerSecond() {
    return Math.sqrt(gravityMetresPerSecondSquared / (lengthMm / MM_PER_METRE));
  }

  /**
   * Returns the time until the envelope of the swing has shrunk to a share of its start: {@code
   * ln(1/fraction) / (zeta w)}.
   *
   * @param fraction share of the first amplitude that no longer matters; above 0, at most 1 (which
   *     takes no time)
   * @throws IllegalArgumentException if the fraction is outside its bounds
   */
  public double secondsToDecayTo(double fraction) {
    return lnOfInverse(fraction) / (dampingRatio * naturalFrequencyRadPerSecond());
  }

  /**
   * Returns the number of damped cycles until the envelope of the swing has shrunk to a share of
   * its start: {@code ln(1/fraction) / delta}. Not rounded.
   *
   * @param fraction share of the first amplitude that no longer matters; above 0, at most 1
   * @throws IllegalArgumentException if the fraction is outside its bounds
   */
  public double cyclesToDecayTo(double fraction) {
    return lnOfInverse(fraction) / LogDecrement.fromDampingRatio(dampingRatio);
  }

  private static double lnOfInverse(double fraction) {
    if (!(fraction > 0 && fraction <= 1)) {
      throw new IllegalArgumentException(
          "fraction is " + fraction + "; accepted: a number above 0, at most 1");
    }
    return 0 - Math.log(fraction);
  }
}
