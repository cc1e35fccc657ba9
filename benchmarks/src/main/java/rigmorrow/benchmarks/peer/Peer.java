package rigmorrow.benchmarks.peer;

import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/**
 * A way of planning a batch. Whatever a peer believes of its plans, what counts is how the one
 * decoder times its sequences.
 */
public interface Peer {
  /** What tables and charts call it; one or two plain words. */
  String name();

  /**
   * Plans a batch; never takes longer than allowed by more than what starting up takes.
   *
   * @param settings time and seed; the number of solvers is the number of cores it may use
   * @param listener told of each better plan, as decoded
   */
  Plan plan(Batch batch, SolverSettings settings, SolveListener listener);
}
