package rigmorrow.model.shot;

import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * Size, mass and nature of a sample. What is not known is null and is never guessed.
 *
 * @param lengthMm longest side in plan, at least 1; null when not measured
 * @param widthMm other side in plan, at least 1; null when not measured
 * @param heightMm as it stands or hangs, at least 1; null when not measured
 * @param massKg above 0; null when not weighed
 * @param baseLengthMm of the standing base; null when the whole length stands
 * @param baseWidthMm of the standing base; null when the whole width stands
 * @param rotationDiameterMm circle the item sweeps when it turns; null for its diagonal in plan
 * @param centreOfMassHeightMm above the plate; null for half the height
 * @param offsetMm level distance from the plate's centre, about which it turns, to the item's
 *     centre of mass once it is placed, 0 or more; it says nothing of where the base stands. Null
 *     for the floor's own
 * @param finish such as matte, glossy, clear; null when it does not matter
 * @param glass true when it may break and cut
 * @param handsNeeded people it takes to place it, 1 to 3, apart from its weight; a holder counts as
 *     one of them
 * @param holder true when it is fixed in a holder
 * @param holderMassKg mass of the holder on the plate, 0 or more
 * @param hanging what hangs; null when nothing
 * @param power what it is supplied with; null when not powered
 * @param heightSource how its height comes to be known
 * @param estimated true when size or mass is the planner's estimate
 */
public record Item(
    @Nullable Integer lengthMm,
    @Nullable Integer widthMm,
    @Nullable Integer heightMm,
    @Nullable Double massKg,
    @Nullable Integer baseLengthMm,
    @Nullable Integer baseWidthMm,
    @Nullable Integer rotationDiameterMm,
    @Nullable Integer centreOfMassHeightMm,
    @Nullable Integer offsetMm,
    @Nullable String finish,
    boolean glass,
    int handsNeeded,
    boolean holder,
    double holderMassKg,
    @Nullable Hanging hanging,
    @Nullable Power power,
    HeightSource heightSource,
    boolean estimated) {
  public Item {
    atLeastOne("lengthMm", lengthMm);
    atLeastOne("widthMm", widthMm);
    atLeastOne("heightMm", heightMm);
    if (massKg != null) {
      Require.positive("massKg", massKg);
    }
    atLeastOne("baseLengthMm", baseLengthMm);
    atLeastOne("baseWidthMm", baseWidthMm);
    atLeastOne("rotationDiameterMm", rotationDiameterMm);
    atLeastOne("centreOfMassHeightMm", centreOfMassHeightMm);
    if (offsetMm != null) {
      Require.atLeast("offsetMm", offsetMm, 0);
    }
    Require.between("handsNeeded", handsNeeded, 1, 3);
    Require.atLeast("holderMassKg", holderMassKg, 0);
  }

  private static void atLeastOne(String field, @Nullable Integer value) {
    if (value != null) {
      Require.atLeast(field, value, 1);
    }
  }

  /** True when length, width, height and mass are all known. */
  public boolean measured() {
    return lengthMm != null && widthMm != null && heightMm != null && massKg != null;
  }

  /** People who place it where its weight asks for no more: a holder counts as one of them. */
  public int peopleToPlace() {
    return Math.max(1, handsNeeded - (holder ? 1 : 0));
  }

  /** True when the whole item hangs and nothing stands on the plate. */
  public boolean hangsFree() {
    return hanging != null && !hanging.stands();
  }
}
