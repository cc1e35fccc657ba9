package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.plan.KitUse;

/**
 * Where each piece of kit stands before each job that uses it, by the order of the jobs' starts.
 */
final class KitPlaces {
  /** By run, then by unit; two runs are never the same one, whatever a broken plan says of them. */
  private final Map<PlannedRun, Map<String, String>> placesBefore = new IdentityHashMap<>();

  KitPlaces(Floor floor, List<PlannedRun> runs) {
    Map<String, String> places = new HashMap<>();
    for (Kit kit : floor.kits()) {
      for (KitUnit unit : kit.units()) {
        places.put(unit.id(), unit.place());
      }
    }
    List<PlannedRun> byStart = new ArrayList<>(runs);
    byStart.sort(
        Comparator.<PlannedRun>comparingInt(run -> run.whole().start())
            .thenComparingInt(run -> run.whole().end()));
    for (PlannedRun run : byStart) {
      for (KitUse use : run.planned().kit()) {
        String place = places.put(use.unit(), run.rigId());
        if (place != null) {
          placesBefore.computeIfAbsent(run, key -> new HashMap<>()).put(use.unit(), place);
        }
      }
    }
  }

  /** The place a unit is fetched from for a job; null when the unit is unknown. */
  @Nullable String before(PlannedRun run, String unit) {
    return placesBefore.getOrDefault(run, Map.of()).get(unit);
  }
}
