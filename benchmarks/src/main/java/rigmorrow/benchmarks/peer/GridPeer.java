package rigmorrow.benchmarks.peer;

import java.time.Duration;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/**
 * The best of a small grid of ATCS rules (apparent tardiness cost with setups): the plan from which
 * ours starts. Needs no limit.
 */
public final class GridPeer implements Peer {
  @Override
  public String name() {
    return "ATCS";
  }

  @Override
  public Plan plan(Batch batch, SolverSettings settings, SolveListener listener) {
    long begin = System.nanoTime();
    Plan plan = FloorSolver.dispatch(batch);
    listener.improved(Duration.ofNanos(System.nanoTime() - begin), plan.figures());
    return plan;
  }
}
