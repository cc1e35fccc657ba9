package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.SatParameters;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.solver.timeline.BatchFacts;

/**
 * Large neighbourhood search for a day whose full model is too big to be improved in one go: each
 * round frees some jobs of the best decoded plan and lets the solver place them anew. One worker.
 */
public final class Rounds {
  private static final PlanOrigin ORIGIN = new PlanOrigin("exact", 0, 1, 0, "");
  private static final int FEWEST = 6;
  private static final double ROUND_UNITS = Double.parseDouble(System.getProperty("units", "1.0"));

  private static final double ROUND_SECONDS = Double.parseDouble(System.getProperty("secs", "1.5"));
  private final BatchFacts facts;
  private final List<SetupCosts> costs;
  private final Incumbent incumbent;
  private final Random random;
  private double size = Double.parseDouble(System.getProperty("size", "12"));
  private volatile boolean stopped;
  private volatile @Nullable CpSolver running;
  private int rounds;

  /**
   * @param facts of the batch
   * @param incumbent where to take plans from and give them to
   * @param seed of the neighbourhoods
   */
  public Rounds(BatchFacts facts, Incumbent incumbent, long seed) {
    this.facts = facts;
    this.costs = SetupCosts.ofAll(facts);
    this.incumbent = incumbent;
    this.random = new Random(seed);
  }

  /** Ends soon. May be called from any thread. */
  public void stop() {
    stopped = true;
    CpSolver solver = running;
    if (solver != null) {
      solver.stopSearch();
    }
  }

  /**
   * Goes on until a limit is reached.
   *
   * @param until {@link System#nanoTime()} at which to end
   * @param units of the solver's deterministic time
   */
  public void run(long until, double units) {
    double left = units;
    while (!stopped && left > 0 && System.nanoTime() < until) {
      left -= round(until, Math.min(left, ROUND_UNITS));
      rounds++;
    }
    if (System.getProperty("log") != null) {
      System.out.println("rounds " + rounds + " size " + size);
    }
  }

  private double round(long until, double units) {
    Plan plan = incumbent.plan(ORIGIN);
    KnownPlan known = new KnownPlan(facts, plan);
    Neighbourhood free = Neighbourhood.draw(facts, known, (int) size, random);
    long t0 = System.nanoTime();
    DayModel model = new DayModel(facts, costs, free, incumbent.best().medium());
    model.hint(known, plan.figures().finishedAt());
    CpSolver solver = new CpSolver();
    SatParameters.Builder parameters = Tuning.quick(solver.getParameters());
    parameters.setNumWorkers(1);
    parameters.setRandomSeed(random.nextInt(Integer.MAX_VALUE));
    parameters.setMaxDeterministicTime(units);
    // Where the clock counts, a round that is stuck must not take it all.
    ExactSearch.limitSeconds(
        parameters, until, until == Long.MAX_VALUE ? Double.MAX_VALUE : ROUND_SECONDS);
    running = solver;
    if (stopped) {
      return units;
    }
    long t1 = System.nanoTime();
    CpSolverStatus status = solver.solve(model.model(), new Decoding(model, incumbent));
    // What is proven soon may be bigger; what is not must be smaller.
    boolean proven = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
    if (System.getProperty("log") != null && rounds < 40) {
      System.out.printf(
          "round %d size %.1f build %d solve %d %s dt %.2f%n",
          rounds,
          size,
          (t1 - t0) / 1000000,
          (System.nanoTime() - t1) / 1000000,
          status,
          solver.response().getDeterministicTime());
    }
    size = proven ? Math.min(facts.batch().jobCount(), size * 1.05) : Math.max(FEWEST, size * 0.9);
    return Math.max(1e-3, solver.response().getDeterministicTime());
  }
}
