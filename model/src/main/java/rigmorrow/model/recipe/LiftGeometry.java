package rigmorrow.model.recipe;

import rigmorrow.model.check.Require;

/**
 * How items are lifted on to a plate, for the lifting check.
 *
 * @param originHeightMm height of the hands at the trolley or shelf, 0 or more
 * @param horizontalMm from the ankles to the hands for a small item, 0 or more; half the depth of a
 *     deep item is added
 * @param asymmetryDeg twist of the body, 0 to 135
 * @param liftsPerMinute over the shift, 0 or more
 * @param teamFactor each person's share in a two-person lift counts this much more, at least 1: a
 *     planning rule, not a published figure
 */
public record LiftGeometry(
    int originHeightMm,
    int horizontalMm,
    double asymmetryDeg,
    double liftsPerMinute,
    double teamFactor) {
  public LiftGeometry {
    Require.atLeast("lift.originHeightMm", originHeightMm, 0);
    Require.atLeast("lift.horizontalMm", horizontalMm, 0);
    Require.between("lift.asymmetryDeg", asymmetryDeg, 0, 135);
    Require.atLeast("lift.liftsPerMinute", liftsPerMinute, 0);
    Require.atLeast("lift.teamFactor", teamFactor, 1.0);
  }
}
