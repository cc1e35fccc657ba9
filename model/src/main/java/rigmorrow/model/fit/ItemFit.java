package rigmorrow.model.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.Item;
import rigmorrow.model.work.ItemGeometry;

/** Whether an item's size and mass suit a rig's plate, camera, light and background. */
final class ItemFit {
  private static final int MOST_DIGITS = 3;

  private final Rig rig;
  private final Recipe recipe;
  private final Item item;
  private final ItemGeometry geometry;
  private final List<FitReason> reasons = new ArrayList<>();

  ItemFit(Rig rig, Recipe recipe, Item item) {
    this.rig = rig;
    this.recipe = recipe;
    this.item = item;
    this.geometry = ItemGeometry.of(item);
  }

  List<FitReason> reasons() {
    plate();
    camera();
    return reasons;
  }

  private void plate() {
    PlateSize size = rig.size();
    double mass = item.massKg() == null ? 0 : item.massKg();
    double onPlate = (item.hangsFree() ? 0 : mass) + item.holderMassKg();
    atMost(FitRule.PLATE_PAYLOAD, onPlate, size.platePayloadKg(), "kg");
    Hanging hanging = item.hanging();
    if (hanging != null) {
      atMost(FitRule.HANGING_PAYLOAD, hanging.hangingMassKg(), size.hangingPayloadKg(), "kg");
    }
    double usable = size.plateDiameterMm() - 2.0 * size.edgeMarginMm();
    atMost(FitRule.BASE_ON_PLATE, geometry.standingDiagonalMm(), usable, "mm");
    atMost(FitRule.CLEAR_CIRCLE, geometry.sweptDiameterMm(), size.clearDiameterMm(), "mm");
    atMost(FitRule.ITEM_HEIGHT, heightMm(), size.itemHeightMm(), "mm");
  }

  private void camera() {
    CameraReach camera = rig.camera();
    double middle = heightMm() / 2.0;
    if (middle < camera.armLowMm() || middle > camera.armHighMm()) {
      double away = Math.max(camera.armLowMm() - middle, middle - camera.armHighMm());
      add(
          FitRule.CAMERA_HEIGHT,
          figure(middle, "mm"),
          camera.armLowMm() + " to " + camera.armHighMm() + " mm",
          away / Math.max(1, middle));
    }
    // Straight down is a matter for an overhead frame where the arm does not go there.
    DoubleStream.concat(
            recipe.rows().stream().mapToDouble(row -> row.elevationDeg()),
            recipe.stills().stream().mapToDouble(still -> still.elevationDeg()))
        .filter(elevation -> elevation < 90)
        .max()
        .ifPresent(
            steepest -> atMost(FitRule.ELEVATION, steepest, camera.maxElevationDeg(), "deg"));
    if (recipe.lighting() == Lighting.STROBE && camera.strobeRecycleSeconds() == null) {
      add(FitRule.LIGHTING, "strobe", "continuous light only", 1);
    }
    if (recipe.lighting() == Lighting.CONTINUOUS && !camera.continuousLight()) {
      add(FitRule.LIGHTING, "continuous light", "strobe only", 1);
    }
    double background = geometry.sweptDiameterMm() + 2.0 * recipe.backgroundMarginMm();
    atMost(FitRule.BACKGROUND, background, camera.backgroundWidthMm(), "mm");
  }

  private int heightMm() {
    return item.heightMm() == null ? 0 : item.heightMm();
  }

  private void atMost(FitRule rule, double needed, double offered, String unit) {
    if (needed > offered) {
      int digits = 1;
      while (digits < MOST_DIGITS && rounded(needed, digits) <= rounded(offered, digits)) {
        digits++;
      }
      add(rule, figure(needed, unit, digits), figure(offered, unit, digits), 1 - offered / needed);
    }
  }

  /** A little too much must not look like just enough. */
  private static double rounded(double value, int digits) {
    double unit = Math.pow(10, digits);
    return Math.round(value * unit) / unit;
  }

  private void add(FitRule rule, String needed, String offered, double shortfall) {
    reasons.add(new FitReason(rule, needed, offered, shortfall));
  }

  private static String figure(double value, String unit) {
    return figure(value, unit, 1);
  }

  private static String figure(double value, String unit, int digits) {
    return String.format(
        Locale.ROOT, "%." + (value == Math.rint(value) ? 0 : digits) + "f %s", value, unit);
  }
}
