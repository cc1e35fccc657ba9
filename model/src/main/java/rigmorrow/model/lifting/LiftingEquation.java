package rigmorrow.model.lifting;

/**
 * The revised lifting equation, metric form: {@code RWL = LC HM VM DM AM FM CM} and {@code LI = L /
 * RWL}.
 *
 * <p>Source: Waters, Putz-Anderson, Garg, Applications Manual for the Revised NIOSH Lifting
 * Equation, DHHS (NIOSH) Publication No. 94-110, revised September 2021, sections 1.3 and 2.3 and
 * Tables 5 and 7; public domain. The formulas govern where the manual's rounded tables differ.
 * Nothing is rounded here.
 *
 * <p>The manual says where the equation does not apply: one hand, seated or kneeling, cramped
 * space, unstable loads, carrying, pushing or pulling, fast lifts, slippery floors, more than eight
 * hours, heat or cold. Nor is it meant for several people at one load.
 */
public final class LiftingEquation {

  /** LC: the limit under the best of conditions. */
  public static final double LOAD_CONSTANT_KG = 23;

  private static final double LEAST_HORIZONTAL_CM = 25;
  private static final double MOST_HORIZONTAL_CM = 63;
  private static final double BEST_VERTICAL_CM = 75;
  private static final double MOST_VERTICAL_CM = 175;
  private static final double LEAST_TRAVEL_CM = 25;
  private static final double MOST_TRAVEL_CM = 175;
  private static final double MOST_ASYMMETRY_DEGREES = 135;

  private LiftingEquation() {}

  /**
   * Returns the result that counts for a lift: that of the origin, or with controlled placement the
   * one of the end with the lower limit.
   *
   * @param loadKg mass that is lifted; above 0
   * @throws IllegalArgumentException if the load is outside its bounds
   */
  public static LiftingResult assess(LiftingTask task, double loadKg) {
    LiftingResult origin = assessAt(task, task.origin(), loadKg);
    if (!task.controlledPlacement()) {
      return origin;
    }
    LiftingResult destination = assessAt(task, task.destination(), loadKg);
    boolean destinationIsWorse =
        destination.recommendedWeightLimitKg() < origin.recommendedWeightLimitKg();
    return destinationIsWorse ? destination : origin;
  }

  /**
   * Assesses one end of the lift; only the frequency multiplier always looks at the origin (section
   * 1.3.5.4).
   */
  private static LiftingResult assessAt(LiftingTask task, HandPosition hands, double loadKg) {
    return new LiftingResult(
        loadKg,
        horizontalMultiplier(hands.horizontalCm()),
        verticalMultiplier(hands.verticalCm()),
        distanceMultiplier(task.travelCm()),
        asymmetricMultiplier(hands.asymmetryDegrees()),
        FrequencyTable.multiplier(
            task.liftsPerMinute(), task.duration(), task.origin().verticalCm()),
        task.coupling().multiplier(hands.verticalCm()));
  }

  /** HM: 25/H, at most 1; 0 beyond 63 cm. */
  static double horizontalMultiplier(double horizontalCm) {
    return horizontalCm > MOST_HORIZONTAL_CM
        ? 0
        : LEAST_HORIZONTAL_CM / Math.max(LEAST_HORIZONTAL_CM, horizontalCm);
  }

  /** VM: 1 - 0.003 |V - 75|; 0 beyond 175 cm. */
  static double verticalMultiplier(double verticalCm) {
    return verticalCm > MOST_VERTICAL_CM ? 0 : 1 - 0.003 * Math.abs(verticalCm - BEST_VERTICAL_CM);
  }

  /** DM: 0.82 + 4.5/D, with D at least 25 cm; 0 beyond 175 cm. */
  static double distanceMultiplier(double travelCm) {
    return travelCm > MOST_TRAVEL_CM ? 0 : 0.82 + 4.5 / Math.max(LEAST_TRAVEL_CM, travelCm);
  }

  /** AM: 1 - 0.0032 A; 0 beyond 135 degrees. */
  static double asymmetricMultiplier(double asymmetryDegrees) {
    return asymmetryDegrees > MOST_ASYMMETRY_DEGREES ? 0 : 1 - 0.0032 * asymmetryDegrees;
  }
}
