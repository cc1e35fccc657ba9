package rigmorrow.model.lifting;

/**
 * What the lifting equation says about one load at one end of a lift, with every multiplier for the
 * record.
 *
 * @param loadKg L: mass of the item with all that is lifted with it; above 0
 * @param horizontalMultiplier HM, 0 to 1
 * @param verticalMultiplier VM, 0 to 1
 * @param distanceMultiplier DM, 0 to 1
 * @param asymmetricMultiplier AM, 0 to 1
 * @param frequencyMultiplier FM, 0 to 1
 * @param couplingMultiplier CM, 0 to 1
 */
public record LiftingResult(
    double loadKg,
    double horizontalMultiplier,
    double verticalMultiplier,
    double distanceMultiplier,
    double asymmetricMultiplier,
    double frequencyMultiplier,
    double couplingMultiplier) {

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if the load is not a finite number above 0 or a multiplier not
   *     within 0 and 1
   */
  public LiftingResult {
    Bounds.positive("load in kg", loadKg);
    Bounds.from0To1("horizontal multiplier", horizontalMultiplier);
    Bounds.from0To1("vertical multiplier", verticalMultiplier);
    Bounds.from0To1("distance multiplier", distanceMultiplier);
    Bounds.from0To1("asymmetric multiplier", asymmetricMultiplier);
    Bounds.from0To1("frequency multiplier", frequencyMultiplier);
    Bounds.from0To1("coupling multiplier", couplingMultiplier);
  }

  /**
   * RWL: what nearly all healthy workers can lift this way; 0 where the equation allows no lifting
   * at all.
   */
  public double recommendedWeightLimitKg() {
    return LiftingEquation.LOAD_CONSTANT_KG
        * horizontalMultiplier
        * verticalMultiplier
        * distanceMultiplier
        * asymmetricMultiplier
        * frequencyMultiplier
        * couplingMultiplier;
  }

  /**
   * LI: load divided by the recommended weight limit; the goal is 1 or less. Infinite where that
   * limit is 0, which the manual leaves open.
   */
  public double liftingIndex() {
    return loadKg / recommendedWeightLimitKg();
  }
}
