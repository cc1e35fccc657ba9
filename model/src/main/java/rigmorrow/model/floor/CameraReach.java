package rigmorrow.model.floor;

import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * What a rig's camera, arm and lights can do.
 *
 * @param armLowMm lowest camera height above the plate
 * @param armHighMm highest camera height above the plate, at least the lowest
 * @param maxElevationDeg steepest view of the arm, 0 to 90; steeper needs an overhead frame
 * @param backgroundWidthMm usable width of the background behind the item, above 0
 * @param cameraWriteSeconds from the end of an exposure until the next can start, 0 or more
 * @param strobeRecycleSeconds until the strobes are ready again, 0 or more; null without strobes
 * @param continuousLight true when the rig has continuous light
 * @param pixelsPerMm image scale at the item, above 0
 */
public record CameraReach(
    int armLowMm,
    int armHighMm,
    double maxElevationDeg,
    int backgroundWidthMm,
    double cameraWriteSeconds,
    @Nullable Double strobeRecycleSeconds,
    boolean continuousLight,
    double pixelsPerMm) {
  public CameraReach {
    Require.that(armHighMm >= armLowMm, "armHighMm", armHighMm, "at least armLowMm " + armLowMm);
    Require.between("maxElevationDeg", maxElevationDeg, 0, 90);
    Require.atLeast("backgroundWidthMm", backgroundWidthMm, 1);
    Require.atLeast("cameraWriteSeconds", cameraWriteSeconds, 0);
    if (strobeRecycleSeconds != null) {
      Require.atLeast("strobeRecycleSeconds", strobeRecycleSeconds, 0);
    }
    Require.positive("pixelsPerMm", pixelsPerMm);
  }
}
