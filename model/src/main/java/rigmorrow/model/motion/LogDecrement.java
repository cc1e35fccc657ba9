package rigmorrow.model.motion;

/**
 * The logarithmic decrement: how much a free swing shrinks from one cycle to the next, read from a
 * measurement.
 *
 * <p>Source: textbooks of mechanical vibration (free vibration of a system with one degree of
 * freedom and viscous damping): {@code delta = (1/n) ln(x0/xn)} and {@code zeta = delta / sqrt(4
 * pi^2 + delta^2)}.
 */
public final class LogDecrement {

  private LogDecrement() {}

  /**
   * Returns the decrement from two amplitudes of one swing.
   *
   * @param firstAmplitude amplitude at the start, in any unit; above 0
   * @param laterAmplitude amplitude so many cycles later, in the same unit; above 0 and not above
   *     the first
   * @param cycles full cycles between the two; 1 or more
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public static double fromAmplitudes(double firstAmplitude, double laterAmplitude, int cycles) {
    Bounds.positive("first amplitude", firstAmplitude);
    Bounds.positive("later amplitude", laterAmplitude);
    Bounds.atLeast1("cycles", cycles);
    if (laterAmplitude > firstAmplitude) {
      throw new IllegalArgumentException(
          "later amplitude is %s; accepted: at most the first amplitude of %s"
              .formatted(laterAmplitude, firstAmplitude));
    }
    return Math.log(firstAmplitude / laterAmplitude) / cycles;
  }

  /**
   * Returns the damping ratio that belongs to a decrement.
   *
   * @param decrement logarithmic decrement; 0 or more, finite
   * @return damping ratio, from 0 to below 1
   * @throws IllegalArgumentException if the decrement is outside its bounds
   */
  public static double toDampingRatio(double decrement) {
    Bounds.notNegative("logarithmic decrement", decrement);
    return decrement / Math.hypot(2 * Math.PI, decrement);
  }

  /**
   * Returns the decrement that belongs to a damping ratio; undoes {@link #toDampingRatio}.
   *
   * @param dampingRatio share of critical damping; above 0 and below 1
   * @throws IllegalArgumentException if the ratio is outside its bounds
   */
  public static double fromDampingRatio(double dampingRatio) {
    Bounds.between0And1("damping ratio", dampingRatio);
    return 2 * Math.PI * dampingRatio / Math.sqrt((1 - dampingRatio) * (1 + dampingRatio));
  }
}
