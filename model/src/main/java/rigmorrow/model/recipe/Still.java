package rigmorrow.model.recipe;

import rigmorrow.model.check.Require;

/**
 * A single picture.
 *
 * @param elevationDeg camera elevation, 0 (level) to 90 (straight down)
 * @param angleDeg how far the item is turned, 0 to 360
 */
public record Still(double elevationDeg, double angleDeg) {
  public Still {
    Require.between("still.elevationDeg", elevationDeg, 0, 90);
    Require.between("still.angleDeg", angleDeg, 0, 360);
  }
}
