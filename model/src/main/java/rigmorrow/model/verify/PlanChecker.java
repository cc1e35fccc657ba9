package rigmorrow.model.verify;

import java.util.List;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;

/**
 * Holds a finished plan against every hard rule of the floor. It is slow and plain on purpose and
 * works nothing out the way the timeline does, so that a mistake there shows here.
 */
public final class PlanChecker {
  private PlanChecker() {}

  /**
   * Every breach of a hard rule, in the order of the checks; empty for a plan that can be worked.
   *
   * @throws IllegalArgumentException when the plan is of another floor, day or length than the
   *     batch, so that its seconds mean something else
   */
  public static List<Breach> check(Batch batch, Plan plan) {
    plan.requireDaysOf(batch);
    BreachLog log = new BreachLog(PlanClock.of(batch));
    List<PlannedRun> runs = PlannedRun.of(batch, plan);
    new CoverageChecker(batch, log).check(plan, runs);
    new PartChecker(batch.floor(), log).check(runs);
    new ChangeoverChecker(batch.floor(), log).check(runs);
    new RigChecker(batch, log).check(runs);
    new CrewChecker(batch, log).check(runs);
    new KitChecker(batch.floor(), log).check(runs);
    new SampleChecker(log).check(runs);
    new PromiseChecker(batch, log).check(runs);
    new FigureChecker(batch, log).check(plan, runs);
    return log.breaches();
  }
}
