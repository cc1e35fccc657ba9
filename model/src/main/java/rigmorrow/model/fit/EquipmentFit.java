package rigmorrow.model.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.lifting.LiftCrew;
import rigmorrow.model.motion.ItemLimits;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.EquipmentChoice;
import rigmorrow.model.work.LiftCheck;
import rigmorrow.model.work.SetupRequests;
import rigmorrow.model.work.WorkModel;

/** Whether a rig has or can get the equipment, and whether the item stands safely on it. */
final class EquipmentFit {
  private final Floor floor;
  private final Rig rig;
  private final Recipe recipe;
  private final ShotJob job;

  EquipmentFit(Floor floor, Rig rig, Recipe recipe, ShotJob job) {
    this.floor = floor;
    this.rig = rig;
    this.recipe = recipe;
    this.job = job;
  }

  List<FitReason> reasons() {
    List<FitReason> reasons = new ArrayList<>();
    Item item = job.item();
    boolean aid =
        !LiftCheck.light(item)
            && LiftCheck.of(floor.physics().lift(), item, rig).crew() == LiftCrew.LIFTING_AID;
    EquipmentChoice choice = EquipmentChoice.of(floor, job, recipe, rig, aid);
    new TreeMap<>(choice.lacks())
        .forEach(
            (kind, lack) ->
                reasons.add(
                    new FitReason(
                        FitRule.EQUIPMENT, lack.needed(), lack.offered(), lack.shortfall())));
    ItemLimits limits = WorkModel.limits(floor, rig, item, SetupRequests.of(floor, job));
    FitReason unstable = stability(limits, item);
    if (unstable != null) {
      reasons.add(unstable);
    }
    return reasons;
  }

  /** At the slowest turn the resultant acceleration must stay within what the item bears. */
  private @Nullable FitReason stability(@Nullable ItemLimits limits, Item item) {
    if (limits == null) {
      return null;
    }
    Physics physics = floor.physics();
    int offset = item.offsetMm() == null ? physics.placementOffsetMm() : item.offsetMm();
    double needed =
        ItemLimits.resultantMetresPerSecondSquared(
            Math.max(1, offset),
            Math.toRadians(physics.slowestTurnDegPerS()),
            Math.toRadians(physics.slowestTurnDegPerS2()));
    double allowed = limits.allowedMetresPerSecondSquared();
    return needed <= allowed
        ? null
        : new FitReason(
            FitRule.STABILITY,
            String.format(Locale.ROOT, "%.3f m/s2 at the slowest turn, or a holder", needed),
            String.format(Locale.ROOT, "%.3f m/s2 before it slides or tips", allowed),
            1 - allowed / needed);
  }
}
