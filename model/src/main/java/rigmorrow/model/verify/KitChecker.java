package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.TakeOff;

/**
 * Whether each job has the kit it needs, each piece is in one place at a time, and the rig it is
 * taken off stands still meanwhile.
 */
final class KitChecker {
  private final Floor floor;
  private final BreachLog log;

  KitChecker(Floor floor, BreachLog log) {
    this.floor = floor;
    this.log = log;
  }

  void check(List<PlannedRun> runs) {
    KitPlaces places = new KitPlaces(floor, runs);
    for (PlannedRun run : runs) {
      JobWork work = run.work();
      if (work != null) {
        needed(run, work.kits());
      }
      for (KitUse use : run.planned().kit()) {
        unit(run, use, places);
      }
      for (TakeOff off : TakeOff.of(floor, run.rigId(), run.planned())) {
        standsStill(run, off, runs);
      }
    }
    oneJobAtATime(runs.stream().filter(run -> !run.planned().kit().isEmpty()).toList());
  }

  private void needed(PlannedRun run, List<String> needed) {
    List<String> used = run.planned().kit().stream().map(KitUse::kit).toList();
    Set<String> all = new LinkedHashSet<>(needed);
    all.addAll(used);
    for (String kit : all) {
      int times = Collections.frequency(used, kit);
      int wanted = Collections.frequency(needed, kit);
      log.add(
          FloorRule.KIT_ONE_PLACE,
          run.id(),
          Math.abs((long) times - wanted),
          "Job " + run.id() + " uses " + times + " of kit " + kit + " instead of " + wanted + ".");
    }
  }

  private void unit(PlannedRun run, KitUse use, KitPlaces places) {
    boolean known =
        floor.kit(use.kit()).stream()
            .flatMap(kit -> kit.units().stream())
            .map(KitUnit::id)
            .anyMatch(use.unit()::equals);
    if (!known) {
      log.add(
          FloorRule.KIT_ONE_PLACE,
          use.unit(),
          1,
          "Job " + run.id() + " uses " + use.unit() + ", which is no unit of " + use.kit() + ".");
      return;
    }
    String place = places.before(run, use.unit());
    if (!use.from().equals(place)) {
      log.add(
          FloorRule.KIT_ONE_PLACE,
          use.unit(),
          1,
          "Job "
              + run.id()
              + " fetches "
              + use.unit()
              + " from "
              + use.from()
              + " at "
              + log.time(run.whole().start())
              + ", when it is at "
              + place
              + ".");
    }
  }

  /** A job there that uses the piece itself is told of as using it at the same time. */
  private void standsStill(PlannedRun run, TakeOff off, List<PlannedRun> runs) {
    for (PlannedRun other : runs) {
      if (other.rigId().equals(off.use().from()) && !units(other).contains(off.use().unit())) {
        int shared = PlannedRun.sharedSeconds(off.span(), other.whole());
        log.add(
            FloorRule.KIT_TAKEN_OFF,
            other.rigId(),
            shared,
            () ->
                "Unit "
                    + off.use().unit()
                    + " is taken off rig "
                    + other.rigId()
                    + " for "
                    + run.id()
                    + " from "
                    + log.times(off.span())
                    + ", while "
                    + other.id()
                    + " is there from "
                    + log.times(other.whole())
                    + ", "
                    + shared
                    + " s at once.");
      }
    }
  }

  private void oneJobAtATime(List<PlannedRun> runs) {
    List<PlannedRun> earlier = new ArrayList<>();
    for (PlannedRun run : runs) {
      for (PlannedRun other : earlier) {
        Set<String> common = units(run);
        common.retainAll(units(other));
        for (String unit : common) {
          int shared = run.sharedSeconds(other);
          log.add(
              FloorRule.KIT_ONE_PLACE,
              unit,
              shared,
              () ->
                  "Unit "
                      + unit
                      + " is used by "
                      + other.id()
                      + " from "
                      + log.times(other.whole())
                      + " and by "
                      + run.id()
                      + " from "
                      + log.times(run.whole())
                      + ", "
                      + shared
                      + " s at once.");
        }
      }
      earlier.add(run);
    }
  }

  private static Set<String> units(PlannedRun run) {
    Set<String> units = new LinkedHashSet<>();
    run.planned().kit().forEach(use -> units.add(use.unit()));
    return units;
  }
}
