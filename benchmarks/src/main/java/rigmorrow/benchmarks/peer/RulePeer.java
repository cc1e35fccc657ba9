package rigmorrow.benchmarks.peer;

import java.time.Duration;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Repair;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * One simple rule of the floor: whenever a rig is free it takes the job that comes first by the
 * rule, timed by the decoder as it goes. What breaks a hard rule in the end is left out, as with
 * the dispatch rules of the solver. The same plan whatever the seed; needs no limit.
 */
public final class RulePeer implements Peer {
  private final String name;
  private final RuleChooser.Order order;

  private RulePeer(String name, RuleChooser.Order order) {
    this.name = name;
    this.order = order;
  }

  /** The job whose promise is due soonest; of several, the heaviest. */
  public static Peer dueDate() {
    return new RulePeer("due date", RuleChooser.Order.DUE_DATE);
  }

  /** The job that needs the least changeover now; of several, the one that is due soonest. */
  public static Peer changeover() {
    return new RulePeer("changeover", RuleChooser.Order.CHANGEOVER);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Plan plan(Batch batch, SolverSettings settings, SolveListener listener) {
    long begin = System.nanoTime();
    CompiledBatch compiled = CompiledBatch.of(batch);
    Timeline timeline = new Timeline(compiled);
    timeline.build(new RuleChooser(compiled, order));
    Sequences made = new Repair(compiled, timeline).untilWorkable();
    PlanOrigin origin = new PlanOrigin("dispatch", 0, 1, 0, "done");
    Plan plan = new PlanWriter(compiled, timeline).write(made, origin);
    listener.improved(Duration.ofNanos(System.nanoTime() - begin), plan.figures());
    return plan;
  }
}
