package rigmorrow.benchmarks.peer;

import com.google.ortools.Loader;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.peer.exact.ExactSearch;
import rigmorrow.benchmarks.peer.exact.Incumbent;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/**
 * A general exact solver, OR-Tools CP-SAT, on a full model of the day: see {@link
 * rigmorrow.benchmarks.peer.exact.DayModel}. It starts from the dispatch plan; every solution it
 * finds is decoded, and the best decoded one is the answer.
 */
public final class CpSatPeer implements Peer {
  private static final long POLL_MILLIS = 50;

  /** How many decodes of ours one unit of the solver's deterministic time stands for. */
  private static final double STEPS_A_UNIT = 10_000;

  @Override
  public String name() {
    return "exact";
  }

  /**
   * {@inheritDoc}
   *
   * @param settings a step limit is turned into the solver's deterministic time, 10,000 steps a
   *     unit; with it alone and one solver the same seed gives the same plan
   */
  @Override
  public Plan plan(Batch batch, SolverSettings settings, SolveListener listener) {
    Loader.loadNativeLibraries();
    long begin = System.nanoTime();
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences first = new Dispatcher(compiled).best(() -> false);
    Incumbent incumbent = new Incumbent(compiled, first, listener, begin);
    String stopped =
        compiled.jobCount() == 0 ? "done" : run(compiled, settings, listener, incumbent, begin);
    return incumbent.plan(
        new PlanOrigin(
            "exact", settings.seed(), settings.solvers(), settings.stepLimit(), stopped));
  }

  private static String run(
      CompiledBatch batch,
      SolverSettings settings,
      SolveListener listener,
      Incumbent incumbent,
      long begin) {
    @Nullable Duration time = settings.timeLimit();
    long until = time == null ? Long.MAX_VALUE : begin + time.toNanos();
    double units =
        settings.stepLimit() == 0 ? Double.MAX_VALUE : settings.stepLimit() / STEPS_A_UNIT;
    ExactSearch search = new ExactSearch(batch, incumbent, settings.seed(), settings.solvers());
    AtomicBoolean asked = new AtomicBoolean();
    ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor();
    try {
      watch.scheduleWithFixedDelay(
          () -> {
            if (listener.stopRequested()) {
              asked.set(true);
              search.stop();
            }
          },
          POLL_MILLIS,
          POLL_MILLIS,
          TimeUnit.MILLISECONDS);
      if (search.run(until, units)) {
        return "done";
      }
    } finally {
      watch.shutdownNow();
    }
    return asked.get() ? "interrupted" : settings.stepLimit() == 0 ? "time" : "steps";
  }
}
