package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.SatParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * Searches with the exact solver until a limit: a small day by its full model, to proof if it can;
 * a big one in {@link Rounds}, one for each worker.
 */
public final class ExactSearch {
  /** Jobs times jobs times rigs up to which the full model is solved in one go. */
  private static final long SMALL_ARCS = Long.getLong("arcs", 6_000);

  private final BatchFacts facts;
  private final Incumbent incumbent;
  private final long seed;
  private final int workers;
  private final long until;
  private final double units;
  private final List<Rounds> rounds = new ArrayList<>();
  private final CpSolver solver = new CpSolver();

  /**
   * @param batch to plan
   * @param incumbent the plan to start from, and where better ones go
   * @param seed of the random numbers
   * @param workers threads
   * @param until {@link System#nanoTime()} at which to end
   * @param units of the solver's deterministic time, for each worker
   */
  public ExactSearch(
      CompiledBatch batch, Incumbent incumbent, long seed, int workers, long until, double units) {
    this.facts = new BatchFacts(batch);
    this.incumbent = incumbent;
    this.seed = seed;
    this.workers = workers;
    this.until = until;
    this.units = units;
    for (int i = 0; i < workers && !small(); i++) {
      rounds.add(new Rounds(facts, incumbent, seed * workers + i));
    }
  }

  private boolean small() {
    long arcs = 0;
    CompiledBatch batch = facts.batch();
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      long fitting = 0;
      for (int job = 0; job < batch.jobCount(); job++) {
        fitting += batch.fits(job, rig) ? 1 : 0;
      }
      arcs += fitting * fitting;
    }
    return arcs <= SMALL_ARCS;
  }

  /** Ends soon. May be called from any thread, more than once. */
  public void stop() {
    rounds.forEach(Rounds::stop);
    solver.stopSearch();
  }

  /** Searches; true when it is proven that the model has no better solution. */
  public boolean run() {
    if (rounds.isEmpty()) {
      return solveWhole();
    }
    ExecutorService threads = Executors.newFixedThreadPool(rounds.size());
    try {
      List<Future<?>> ends = new ArrayList<>();
      for (Rounds one : rounds) {
        ends.add(threads.submit(() -> one.run(until, units)));
      }
      for (Future<?> end : ends) {
        end.get();
      }
    } catch (InterruptedException asked) {
      stop();
      Thread.currentThread().interrupt();
    } catch (ExecutionException failed) {
      stop();
      throw new IllegalStateException("the exact solver failed", failed.getCause());
    } finally {
      threads.shutdownNow();
    }
    return false;
  }

  private boolean solveWhole() {
    DayModel model = new DayModel(facts, incumbent.best().medium());
    model.hint(incumbent.plan(new PlanOrigin("exact", seed, workers, 0, "")));
    SatParameters.Builder parameters = Tuning.quick(solver.getParameters());
    parameters.setRandomSeed((int) (seed & Integer.MAX_VALUE));
    parameters.setNumWorkers(workers);
    parameters.setUseLns(true);
    if (units < Double.MAX_VALUE) {
      parameters.setMaxDeterministicTime(units);
    }
    limitSeconds(parameters, until, Double.MAX_VALUE);
    if (System.getProperty("log") != null) {
      parameters.setLogSearchProgress(true);
    }
    return solver.solve(model.model(), new Decoding(model, incumbent)) == CpSolverStatus.OPTIMAL;
  }

  /** Sets a limit in wall time where there is one. */
  static void limitSeconds(SatParameters.Builder parameters, long until, double most) {
    double left = until == Long.MAX_VALUE ? most : (until - System.nanoTime()) / 1e9;
    if (Math.min(left, most) < Double.MAX_VALUE) {
      parameters.setMaxTimeInSeconds(Math.max(0.01, Math.min(left, most)));
    }
  }
}
