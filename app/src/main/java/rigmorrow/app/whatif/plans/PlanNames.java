package rigmorrow.app.whatif.plans;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import rigmorrow.data.cells.PlanDigest;
import rigmorrow.model.change.ScenarioBatch;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.whatif.CellTask;
import rigmorrow.solver.whatif.Past;

/**
 * Names plans by what they rest on. A name is worked out once for each scenario on each day and
 * remembered as long as this is, since who chooses scenarios asks again and again. May be shared by
 * threads. Not final, so that a test can let something happen while plans are named.
 */
public class PlanNames {
  /** Names that are remembered at most: those of 30 days and a thousand scenarios. */
  private static final int MOST = 30_000;

  private final Map<Past, Map<Change, String>> known = new IdentityHashMap<>();
  private final Map<Floor, String> floors = new HashMap<>();
  private final Map<ShotList, String> lists = new IdentityHashMap<>();
  private int count;

  private record Change(List<ScenarioChange> changes, CrewPay pay) {}

  /**
   * The name of every plan, by its cell, in the order of the cells.
   *
   * @param stop true ends it early, with the names there are by then
   */
  public synchronized Map<Cell.Key, String> of(
      List<CellTask> tasks, CrewPay pay, BooleanSupplier stop) {
    Map<Cell.Key, String> names = new LinkedHashMap<>();
    for (CellTask task : tasks) {
      if (stop.getAsBoolean()) {
        return names;
      }
      Change change = new Change(task.arm().changes(), pay);
      names.put(task.key(), PlanDigest.plan(planned(task.past(), change), task.searchSeed()));
    }
    return names;
  }

  private String planned(Past past, Change change) {
    if (count >= MOST) {
      known.clear();
      floors.clear();
      lists.clear();
      count = 0;
    }
    Map<Change, String> ofDay = known.computeIfAbsent(past, day -> new HashMap<>());
    String name = ofDay.get(change);
    if (name == null) {
      count++;
      name = made(past, change);
      ofDay.put(change, name);
    }
    return name;
  }

  private String made(Past past, Change change) {
    ScenarioBatch made = ScenarioMaker.of(past.batch(), change.changes());
    Floor floor = made.batch().floor();
    ShotList list = made.batch().shotList();
    // Most changes leave a day's list as it is, and most days have the floor of the day before.
    lists.computeIfAbsent(past.batch().shotList(), PlanDigest::list);
    String ofDay = lists.get(list);
    return PlanDigest.planned(
        floors.computeIfAbsent(floor, PlanDigest::floor),
        floors.computeIfAbsent(floor.withCrew(made.regularCrew()), PlanDigest::floor),
        ofDay == null ? PlanDigest.list(list) : ofDay,
        change.pay());
  }
}
