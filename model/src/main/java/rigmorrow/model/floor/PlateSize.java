package rigmorrow.model.floor;

import rigmorrow.model.check.Require;

/**
 * The room a rig has for an item.
 *
 * @param plateDiameterMm of the turning plate, above 0
 * @param edgeMarginMm kept free at the plate's edge, 0 or more
 * @param clearDiameterMm widest circle that can turn without touching the rig, above 0
 * @param platePayloadKg most mass on the plate, above 0
 * @param hangingPayloadKg most mass the rig's structure lets hang, 0 or more
 * @param itemHeightMm tallest item, above 0
 * @param plateHeightMm of the plate's top above the floor, 0 or more: how far to lift
 */
public record PlateSize(
    int plateDiameterMm,
    int edgeMarginMm,
    int clearDiameterMm,
    double platePayloadKg,
    double hangingPayloadKg,
    int itemHeightMm,
    int plateHeightMm) {
  public PlateSize {
    Require.atLeast("plateDiameterMm", plateDiameterMm, 1);
    Require.atLeast("edgeMarginMm", edgeMarginMm, 0);
    Require.that(
        2 * edgeMarginMm < plateDiameterMm,
        "edgeMarginMm",
        edgeMarginMm,
        "less than half of plateDiameterMm " + plateDiameterMm);
    Require.atLeast("clearDiameterMm", clearDiameterMm, 1);
    Require.positive("platePayloadKg", platePayloadKg);
    Require.atLeast("hangingPayloadKg", hangingPayloadKg, 0);
    Require.atLeast("itemHeightMm", itemHeightMm, 1);
    Require.atLeast("plateHeightMm", plateHeightMm, 0);
  }
}
