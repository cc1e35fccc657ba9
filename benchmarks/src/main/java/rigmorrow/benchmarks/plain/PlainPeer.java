package rigmorrow.benchmarks.plain;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import rigmorrow.benchmarks.peer.Peer;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * OptaPlanner without what we added to it: its default local search with its default moves for list
 * variables, scored by the one decoder. Starts from the dispatch plan as ours does, which serves it
 * better than its own construction heuristic. As many independent solvers as cores; the best
 * counts.
 */
public final class PlainPeer implements Peer {
  private static final long POLL_MILLIS = 50;
  private static final Duration DISPATCH_LIMIT = Duration.ofMillis(1500);

  @Override
  public String name() {
    return "plain";
  }

  @Override
  public Plan plan(Batch batch, SolverSettings settings, SolveListener listener) {
    long begin = System.nanoTime();
    CompiledBatch compiled = CompiledBatch.of(batch);
    BestSoFar best = new BestSoFar(compiled, listener, begin);
    Sequences first = dispatch(compiled, settings, begin);
    best.offer(first);
    if (compiled.jobCount() > 0) {
      search(compiled, first, settings, begin, listener, best);
    }
    PlanOrigin origin =
        new PlanOrigin(
            "search",
            settings.seed(),
            settings.solvers(),
            settings.stepLimit(),
            settings.stepLimit() == 0 ? "time" : "steps");
    return new PlanWriter(compiled, new Timeline(compiled))
        .write(Objects.requireNonNull(best.best()), origin);
  }

  /** The clock may cut the grid short as it does for ours. */
  private static Sequences dispatch(CompiledBatch batch, SolverSettings settings, long begin) {
    Duration limit = settings.timeLimit();
    long most =
        limit == null ? Long.MAX_VALUE : Math.min(DISPATCH_LIMIT.toNanos(), limit.toNanos() / 3);
    return new Dispatcher(batch).best(() -> System.nanoTime() - begin > most);
  }

  private static void search(
      CompiledBatch batch,
      Sequences first,
      SolverSettings settings,
      long begin,
      SolveListener listener,
      BestSoFar best) {
    List<Solver<PlainSchedule>> solvers = new ArrayList<>();
    List<Future<Sequences>> ends = new ArrayList<>();
    ExecutorService threads = Executors.newFixedThreadPool(settings.solvers());
    try {
      for (int i = 0; i < settings.solvers(); i++) {
        PlainSchedule schedule = PlainSchedule.of(batch, first);
        long seed = settings.seed() * settings.solvers() + i;
        Solver<PlainSchedule> solver =
            SolverFactory.<PlainSchedule>create(config(settings, begin, seed)).buildSolver();
        solver.addEventListener(event -> best.offer(event.getNewBestSolution().sequences()));
        solvers.add(solver);
        ends.add(threads.submit(() -> solver.solve(schedule).sequences()));
      }
      for (Future<Sequences> end : ends) {
        best.offer(await(end, solvers, listener));
      }
    } finally {
      threads.shutdownNow();
    }
  }

  private static Sequences await(
      Future<Sequences> end, List<Solver<PlainSchedule>> solvers, SolveListener listener) {
    while (true) {
      try {
        return end.get(POLL_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException stillRunning) {
        if (listener.stopRequested()) {
          solvers.forEach(Solver::terminateEarly);
        }
      } catch (InterruptedException asked) {
        solvers.forEach(Solver::terminateEarly);
        Thread.currentThread().interrupt();
        throw new IllegalStateException("the search was interrupted", asked);
      } catch (ExecutionException failed) {
        throw new IllegalStateException("a search failed", failed.getCause());
      }
    }
  }

  private static SolverConfig config(SolverSettings settings, long begin, long seed) {
    TerminationConfig termination = new TerminationConfig();
    Duration limit = settings.timeLimit();
    if (limit != null) {
      long left = limit.minusNanos(System.nanoTime() - begin).toMillis();
      termination.setMillisecondsSpentLimit(Math.max(1, left));
    }
    if (settings.stepLimit() > 0) {
      termination.setScoreCalculationCountLimit(settings.stepLimit());
    }
    return new SolverConfig()
        .withSolutionClass(PlainSchedule.class)
        .withEntityClasses(PlainQueue.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(PlainScore.class))
        .withRandomSeed(seed)
        .withTerminationConfig(termination)
        .withPhases(new LocalSearchPhaseConfig());
  }
}
