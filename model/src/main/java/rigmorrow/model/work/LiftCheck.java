package rigmorrow.model.work;

import rigmorrow.model.floor.Rig;
import rigmorrow.model.lifting.Coupling;
import rigmorrow.model.lifting.HandPosition;
import rigmorrow.model.lifting.LiftAdvice;
import rigmorrow.model.lifting.LiftDuration;
import rigmorrow.model.lifting.LiftingTask;
import rigmorrow.model.recipe.LiftGeometry;
import rigmorrow.model.shot.Item;

/**
 * The lift of one item on to one rig, judged with the revised NIOSH lifting equation (NIOSH
 * publication 94-110).
 */
public final class LiftCheck {
  /**
   * Below this mass a lift is outside the scope of the usual standards and one person does it: ISO
   * 11228-1 covers objects of 3 kg or more (from memory).
   */
  static final double LIGHTEST_LIFT_KG = 3;

  private static final double MM_PER_CM = 10;

  private LiftCheck() {}

  /**
   * Advice for lifting a measured item from the trolley to where it stands or hangs.
   *
   * @throws IllegalArgumentException when the item's mass or size is not known
   */
  public static LiftAdvice of(LiftGeometry lift, Item item, Rig rig) {
    Double mass = item.massKg();
    Integer length = item.lengthMm();
    Integer width = item.widthMm();
    if (mass == null || length == null || width == null) {
      throw new IllegalArgumentException("item without mass, length or width");
    }
    // Held across its narrower side, an item stands off the body by half that side.
    double horizontalCm = (lift.horizontalMm() + Math.min(length, width) / 2.0) / MM_PER_CM;
    LiftingTask task =
        new LiftingTask(
            new HandPosition(horizontalCm, lift.originHeightMm() / MM_PER_CM, lift.asymmetryDeg()),
            new HandPosition(
                horizontalCm, rig.size().plateHeightMm() / MM_PER_CM, lift.asymmetryDeg()),
            true,
            lift.liftsPerMinute(),
            LiftDuration.OVER_2_TO_8_HOURS,
            Coupling.FAIR);
    return LiftAdvice.of(task, mass, lift.teamFactor());
  }

  /** True when the item is light enough to be outside the lifting check. */
  public static boolean light(Item item) {
    return item.massKg() != null && item.massKg() < LIGHTEST_LIFT_KG;
  }
}
