package rigmorrow.model.shot;

import rigmorrow.model.check.Require;

/**
 * What hangs of an item: all of it, or only its straps while it stands on the plate.
 *
 * @param hangingMassKg mass that hangs, above 0
 * @param dropMm from the point of suspension to the lowest hanging point, at least 1
 * @param stands true when the item stands on the plate and only its straps hang
 */
public record Hanging(double hangingMassKg, int dropMm, boolean stands) {
  public Hanging {
    Require.positive("hangingMassKg", hangingMassKg);
    Require.atLeast("dropMm", dropMm, 1);
  }
}
