package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.SatParameters;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/** One run of the exact solver on the full model, from the best plan so far until a limit. */
public final class ExactSearch {
  /** Arcs up to which the model is small enough for all that the solver does by default. */
  private static final int SMALL_ARCS = 6_000;

  private final BatchFacts facts;
  private final Incumbent incumbent;
  private final long seed;
  private final int workers;
  private final CpSolver solver = new CpSolver();

  /**
   * @param batch to plan
   * @param incumbent the plan to start from, and where better ones go
   * @param seed of the random numbers
   * @param workers threads
   */
  public ExactSearch(CompiledBatch batch, Incumbent incumbent, long seed, int workers) {
    this.facts = new BatchFacts(batch);
    this.incumbent = incumbent;
    this.seed = seed;
    this.workers = workers;
  }

  /** Ends soon. May be called from any thread, more than once. */
  public void stop() {
    solver.stopSearch();
  }

  /**
   * Builds the model and searches; true when it is proven that the model has no better solution.
   *
   * @param until {@link System#nanoTime()} at which to end, or {@link Long#MAX_VALUE}
   * @param units of the solver's deterministic time, or {@link Double#MAX_VALUE}
   */
  public boolean run(long until, double units) {
    DayModel model = new DayModel(facts, incumbent.best().medium());
    model.hint(incumbent.plan(new PlanOrigin("exact", seed, workers, 0, "")));
    SatParameters.Builder parameters = solver.getParameters();
    parameters.setRandomSeed((int) (seed & Integer.MAX_VALUE));
    parameters.setNumWorkers(workers);
    parameters.setUseLns(true);
    if (model.arcs() > SMALL_ARCS) {
      lessPresolve(parameters);
    }
    if (units < Double.MAX_VALUE) {
      parameters.setMaxDeterministicTime(units);
    }
    if (until < Long.MAX_VALUE) {
      double left = (until - System.nanoTime()) / 1e9;
      if (left <= 0) {
        return false;
      }
      parameters.setMaxTimeInSeconds(left);
    }
    CpSolverSolutionCallback decode =
        new CpSolverSolutionCallback() {
          @Override
          public void onSolutionCallback() {
            incumbent.offer(model.sequences(this::booleanValue));
          }
        };
    return solver.solve(model.model(), decode) == CpSolverStatus.OPTIMAL;
  }

  /**
   * With 52,000 arcs the default presolve takes 20 s, this 2 s; the linear relaxation of so many
   * arcs finds nothing in a minute that the search does not find without it.
   */
  private static void lessPresolve(SatParameters.Builder parameters) {
    parameters.setCpModelProbingLevel(0).setMaxPresolveIterations(1).setSymmetryLevel(0);
    parameters.setLinearizationLevel(0);
  }
}
