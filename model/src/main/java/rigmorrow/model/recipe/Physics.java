package rigmorrow.model.recipe;

import rigmorrow.model.check.Require;

/**
 * Figures behind the capture model and the lifting check. None of them is a property of nature:
 * they are the studio's own choices or measurements, and stand in the floor file.
 *
 * @param frictionCoefficient static friction between item and plate where the plate surface gives
 *     none, above 0
 * @param safetyFactor on sliding and tipping, at least 1
 * @param placementOffsetMm how far from the plate's centre an item's centre of mass may sit, level,
 *     when the shot list does not say, 0 or more
 * @param slowestTurnDegPerS slowest turn a rig is ever run at, above 0
 * @param slowestTurnDegPerS2 gentlest acceleration a rig is ever run at, above 0
 * @param swingLogDecrement logarithmic decrement of a hanging item's swing per period, above 0
 * @param swingFraction to which part a swing must decay before a picture, 0 to 1, both exclusive
 * @param blurPixels most motion blur at the item's edge, above 0
 * @param topViewClearanceMm room needed between an item and the overhead frame, 0 or more
 * @param lift how items are lifted on to a plate
 */
public record Physics(
    double frictionCoefficient,
    double safetyFactor,
    int placementOffsetMm,
    double slowestTurnDegPerS,
    double slowestTurnDegPerS2,
    double swingLogDecrement,
    double swingFraction,
    double blurPixels,
    int topViewClearanceMm,
    LiftGeometry lift) {
  public Physics {
    Require.positive("physics.frictionCoefficient", frictionCoefficient);
    Require.atLeast("physics.safetyFactor", safetyFactor, 1.0);
    Require.atLeast("physics.placementOffsetMm", placementOffsetMm, 0);
    Require.positive("physics.slowestTurnDegPerS", slowestTurnDegPerS);
    Require.positive("physics.slowestTurnDegPerS2", slowestTurnDegPerS2);
    Require.positive("physics.swingLogDecrement", swingLogDecrement);
    Require.that(
        swingFraction > 0 && swingFraction < 1,
        "physics.swingFraction",
        swingFraction,
        "a number above 0 and below 1");
    Require.positive("physics.blurPixels", blurPixels);
    Require.atLeast("physics.topViewClearanceMm", topViewClearanceMm, 0);
  }
}
