package rigmorrow.model.lifting;

/**
 * Where the hands are at one end of a lift (NIOSH 94-110, sections 1.3.1 to 1.3.4).
 *
 * @param horizontalCm H: from the middle between the ankles to the point below the middle of the
 *     hands; 0 or more. Up to 25 counts as 25; above 63 nothing may be lifted
 * @param verticalCm V: height of the hands above the floor; 0 or more. Above 175 nothing may be
 *     lifted
 * @param asymmetryDegrees A: angle between straight ahead and the load; 0 or more. Above 135
 *     nothing may be lifted
 */
public record HandPosition(double horizontalCm, double verticalCm, double asymmetryDegrees) {

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if a number is negative or not finite
   */
  public HandPosition {
    Bounds.notNegative("horizontal distance of the hands in cm", horizontalCm);
    Bounds.notNegative("height of the hands in cm", verticalCm);
    Bounds.notNegative("asymmetry in degrees", asymmetryDegrees);
  }
}
