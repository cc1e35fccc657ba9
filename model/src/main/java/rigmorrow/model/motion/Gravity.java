package rigmorrow.model.motion;

/** The pull of the earth. */
public final class Gravity {

  /**
   * Standard gravity in m/s2, by convention exactly this (3rd General Conference on Weights and
   * Measures, 1901).
   */
  public static final double STANDARD_METRES_PER_SECOND_SQUARED = 9.80665;

  private Gravity() {}
}
