package rigmorrow.model.recipe;

import rigmorrow.model.check.Require;

/**
 * One row of a spin: the frames taken at one camera elevation while the item turns.
 *
 * @param elevationDeg camera elevation, 0 (level) to 90 (straight down)
 * @param frames pictures in the row, at least 1
 * @param sweepDeg how far the item turns for the row, above 0 to 360
 * @param turning true when pictures are taken while the plate turns, false for stop-and-go
 */
public record FrameRow(double elevationDeg, int frames, double sweepDeg, boolean turning) {
  public FrameRow {
    Require.between("row.elevationDeg", elevationDeg, 0, 90);
    Require.atLeast("row.frames", frames, 1);
    Require.positive("row.sweepDeg", sweepDeg);
    Require.between("row.sweepDeg", sweepDeg, 0, 360);
  }
}
