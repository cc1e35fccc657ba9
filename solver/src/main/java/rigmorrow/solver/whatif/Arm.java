package rigmorrow.solver.whatif;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.check.Require;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;

/**
 * One of the things that are compared: a scenario under a demand.
 *
 * @param scenario name
 * @param demandPercent jobs more than there were, 0 for those there were
 * @param changes all that is otherwise
 * @param seedShift added to every seed; 0 unless luck itself is to be measured
 */
public record Arm(
    String scenario, double demandPercent, List<ScenarioChange> changes, long seedShift) {
  private static final long OTHER_SEEDS = 1_000_000;

  public Arm {
    Require.text("arm.scenario", scenario);
    changes = List.copyOf(changes);
  }

  /** A scenario under the demand of the batches. */
  public static Arm of(Scenario scenario) {
    return of(scenario, 0);
  }

  /** A scenario under a demand; the same jobs are drawn for every scenario. */
  public static Arm of(Scenario scenario, double demandPercent) {
    List<ScenarioChange> changes = new ArrayList<>();
    if (demandPercent != 0) {
      changes.add(new DemandChange.MoreJobs(demandPercent, 1));
    }
    changes.addAll(scenario.changes());
    return new Arm(scenario.name(), demandPercent, changes, 0);
  }

  /** The floor as it is with other seeds: what it differs from the base by is luck. */
  public static Arm again() {
    return new Arm(Scenario.AGAIN, 0, List.of(), OTHER_SEEDS);
  }
}
