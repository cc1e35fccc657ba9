package rigmorrow.model.motion;

/**
 * Motion blur of an item photographed while the plate turns.
 *
 * <p>A point at radius r moves {@code w r t} during an exposure of t seconds; where it moves across
 * the view (the front and the back of the item), that many millimetres times the scale of the
 * picture are smeared over the pixels. The formula is plain geometry; it takes the arc instead of
 * the chord and the whole motion as across the view, so it never promises a sharper picture than
 * there will be. With strobe light the exposure is the flash duration.
 */
public final class MotionBlur {

  private MotionBlur() {}

  /**
   * Returns the highest speed of a continuous turn that keeps the blur at the item's edge within so
   * many pixels.
   *
   * @param allowedPixels blur that is still accepted; above 0
   * @param pixelsPerMm scale of the picture at the item; above 0
   * @param exposureSeconds exposure, or flash duration; above 0
   * @param edgeRadiusMm radius of the item's outermost point; above 0
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public static double maximumTurnRadPerSecond(
      double allowedPixels, double pixelsPerMm, double exposureSeconds, double edgeRadiusMm) {
    Bounds.positive("allowed blur in pixels", allowedPixels);
    return allowedPixels / pixelsPerTurnSpeed(pixelsPerMm, exposureSeconds, edgeRadiusMm);
  }

  /**
   * Returns the blur in pixels at the item's edge.
   *
   * @param turnRadPerSecond speed of the turn; 0 or more
   * @param pixelsPerMm scale of the picture at the item; above 0
   * @param exposureSeconds exposure, or flash duration; above 0
   * @param edgeRadiusMm radius of the item's outermost point; above 0
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public static double blurPixels(
      double turnRadPerSecond, double pixelsPerMm, double exposureSeconds, double edgeRadiusMm) {
    Bounds.notNegative("turn speed in rad/s", turnRadPerSecond);
    return turnRadPerSecond * pixelsPerTurnSpeed(pixelsPerMm, exposureSeconds, edgeRadiusMm);
  }

  /** Pixels of blur per rad/s of turn speed. */
  private static double pixelsPerTurnSpeed(
      double pixelsPerMm, double exposureSeconds, double edgeRadiusMm) {
    return Bounds.positive("scale in pixels per mm", pixelsPerMm)
        * Bounds.positive("exposure in seconds", exposureSeconds)
        * Bounds.positive("edge radius in mm", edgeRadiusMm);
  }
}
