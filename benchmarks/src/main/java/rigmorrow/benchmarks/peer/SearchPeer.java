package rigmorrow.benchmarks.peer;

import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/** Ours: what {@code rigmorrow plan} does. */
public final class SearchPeer implements Peer {
  @Override
  public String name() {
    return "ours";
  }

  @Override
  public Plan plan(Batch batch, SolverSettings settings, SolveListener listener) {
    return FloorSolver.solve(batch, settings, listener);
  }
}
