package rigmorrow.benchmarks.peer;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.SatParameters;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.peer.exact.DayModel;
import rigmorrow.benchmarks.peer.exact.Incumbent;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/**
 * A general exact solver, OR-Tools CP-SAT, on a full model of the day: see {@link DayModel}. It
 * starts from the dispatch plan; every solution it finds is decoded, and the best decoded one is
 * the answer.
 */
public final class CpSatPeer implements Peer {
  private static final long POLL_MILLIS = 50;

  /** How many decodes of ours one unit of the solver's deterministic time stands for. */
  private static final double STEPS_A_UNIT = 10_000;

  @Override
  public String name() {
    return "exact";
  }

  @Override
  public Plan plan(Batch batch, SolverSettings settings, SolveListener listener) {
    Loader.loadNativeLibraries();
    long begin = System.nanoTime();
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences first = new Dispatcher(compiled).best(() -> false);
    Incumbent incumbent = new Incumbent(compiled, first, listener, begin);
    String stopped = "done";
    if (compiled.jobCount() > 0) {
      stopped = new Run(compiled, incumbent, settings, listener, begin).run();
    }
    return incumbent.plan(origin(settings, stopped));
  }

  private static PlanOrigin origin(SolverSettings settings, String stopped) {
    return new PlanOrigin(
        "exact", settings.seed(), settings.solvers(), settings.stepLimit(), stopped);
  }

  /** One run of the solver. */
  private static final class Run {
    private final CompiledBatch batch;
    private final Incumbent incumbent;
    private final SolverSettings settings;
    private final SolveListener listener;
    private final long begin;
    private final CpSolver solver = new CpSolver();
    private final AtomicBoolean asked = new AtomicBoolean();

    Run(
        CompiledBatch batch,
        Incumbent incumbent,
        SolverSettings settings,
        SolveListener listener,
        long begin) {
      this.batch = batch;
      this.incumbent = incumbent;
      this.settings = settings;
      this.listener = listener;
      this.begin = begin;
    }

    /** Tells what ended it: "done" when nothing better can be found in the model. */
    String run() {
      BatchFacts facts = new BatchFacts(batch);
      DayModel model = new DayModel(facts, incumbent.best().medium());
      model.hint(incumbent.plan(origin(settings, "")));
      if (!limit()) {
        return "time";
      }
      ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor();
      try {
        watch.scheduleWithFixedDelay(
            this::stopWhenAsked, POLL_MILLIS, POLL_MILLIS, TimeUnit.MILLISECONDS);
        CpSolverStatus status =
            solver.solve(
                model.model(),
                new CpSolverSolutionCallback() {
                  @Override
                  public void onSolutionCallback() {
                    incumbent.offer(model.sequences(this::booleanValue));
                  }
                });
        if (status == CpSolverStatus.OPTIMAL) {
          return "done";
        }
      } finally {
        watch.shutdownNow();
      }
      return asked.get() ? "interrupted" : settings.stepLimit() == 0 ? "time" : "steps";
    }

    private void stopWhenAsked() {
      if (listener.stopRequested()) {
        asked.set(true);
        solver.stopSearch();
      }
    }

    /** False when there is no time left. */
    private boolean limit() {
      SatParameters.Builder parameters = solver.getParameters();
      parameters.setRandomSeed((int) (settings.seed() & Integer.MAX_VALUE));
      parameters.setNumWorkers(settings.solvers());
      parameters.setUseLns(true);
      if (System.getProperty("log") != null) {
        parameters.setLogSearchProgress(true);
      }
      String more = System.getProperty("params");
      if (more != null) {
        try {
          com.google.protobuf.TextFormat.merge(more, parameters);
        } catch (com.google.protobuf.TextFormat.ParseException e) {
          throw new IllegalStateException(e);
        }
      }
      if (settings.stepLimit() > 0) {
        parameters.setMaxDeterministicTime(settings.stepLimit() / STEPS_A_UNIT);
      }
      @Nullable Duration time = settings.timeLimit();
      if (time == null) {
        return true;
      }
      double left = (time.toNanos() - (System.nanoTime() - begin)) / 1e9;
      parameters.setMaxTimeInSeconds(Math.max(0.01, left));
      return left > 0;
    }
  }
}
