package rigmorrow.model.motion;

/**
 * A round plate of one material.
 *
 * @param diameterMm diameter; above 0
 * @param thicknessMm thickness; above 0
 * @param densityKgPerCubicMetre density of the material; above 0, for glass about 2,500
 */
public record Disc(double diameterMm, double thicknessMm, double densityKgPerCubicMetre) {

  private static final double CUBIC_MM_PER_CUBIC_METRE = 1e9;

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public Disc {
    Bounds.positive("diameter in mm", diameterMm);
    Bounds.positive("thickness in mm", thicknessMm);
    Bounds.positive("density in kg/m3", densityKgPerCubicMetre);
  }

  /** Mass: volume of a cylinder times density. */
  public double massKg() {
    double cubicMm = Math.PI / 4 * diameterMm * diameterMm * thicknessMm;
    return cubicMm / CUBIC_MM_PER_CUBIC_METRE * densityKgPerCubicMetre;
  }
}
