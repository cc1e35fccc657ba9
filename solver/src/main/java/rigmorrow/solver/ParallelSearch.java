package rigmorrow.solver;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.solver.search.Searcher;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** Runs searches side by side, each by itself, and keeps the best plan of all. */
final class ParallelSearch {
  /** What ended a search that somebody asked to stop. */
  static final String INTERRUPTED = "interrupted";

  private static final long POLL_MILLIS = 50;
  private static final long TELL_NANOS = 100_000_000;

  private final CompiledBatch batch;
  private final SolverSettings settings;
  private final SolveListener listener;
  private final long begin;
  private final Timeline figuresTimeline;
  private final PlanWriter figures;
  private @Nullable Sequences best;
  private long told;
  private boolean timeUp;
  private boolean interrupted;
  private boolean threadInterrupted;

  /**
   * @param begin {@link System#nanoTime()} at which the time limit began to run
   */
  ParallelSearch(CompiledBatch batch, SolverSettings settings, SolveListener listener, long begin) {
    this.batch = batch;
    this.settings = settings;
    this.listener = listener;
    this.begin = begin;
    this.figuresTimeline = new Timeline(batch);
    this.figures = new PlanWriter(batch, figuresTimeline);
  }

  /** Searches from a first plan; never returns a worse one. */
  Sequences run(Sequences first) {
    best = first;
    tell(first, true);
    Duration limit = settings.timeLimit();
    if (batch.jobCount() == 0 || (limit != null && elapsed().compareTo(limit) >= 0)) {
      timeUp = limit != null;
      return first;
    }
    List<Searcher> searchers = new ArrayList<>();
    for (int i = 0; i < settings.solvers(); i++) {
      searchers.add(
          new Searcher(batch, first, settings.seed() * settings.solvers() + i, this::better));
    }
    ExecutorService threads = Executors.newFixedThreadPool(settings.solvers());
    try {
      List<Future<Sequences>> ends = new ArrayList<>();
      for (Searcher searcher : searchers) {
        ends.add(threads.submit(() -> searcher.run(begin, limit, settings.stepLimit())));
      }
      Sequences found = first;
      for (Future<Sequences> end : ends) {
        Sequences one = await(end, searchers);
        found = one.betterThan(found) ? one : found;
      }
      timeUp = limit != null && elapsed().compareTo(limit) >= 0;
      return found;
    } finally {
      threads.shutdownNow();
      if (threadInterrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** True when somebody asked it to stop. */
  boolean interrupted() {
    return interrupted;
  }

  /** What ended the search: "interrupted", "time" or "steps". */
  String stopped() {
    if (interrupted) {
      return INTERRUPTED;
    }
    return timeUp ? "time" : "steps";
  }

  private Duration elapsed() {
    return Duration.ofNanos(System.nanoTime() - begin);
  }

  private Sequences await(Future<Sequences> end, List<Searcher> searchers) {
    while (true) {
      try {
        return end.get(POLL_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException stillRunning) {
        if (interrupted || listener.stopRequested()) {
          stop(searchers);
        }
      } catch (InterruptedException asked) {
        threadInterrupted = true;
        stop(searchers);
      } catch (ExecutionException failed) {
        stop(searchers);
        throw new IllegalStateException("a search failed", failed.getCause());
      }
    }
  }

  private void stop(List<Searcher> searchers) {
    interrupted = true;
    searchers.forEach(Searcher::stop);
  }

  private synchronized void better(Sequences one) {
    if (best == null || one.betterThan(best)) {
      best = one;
      tell(one, false);
    }
  }

  private void tell(Sequences one, boolean always) {
    long now = System.nanoTime();
    if (always || now - told > TELL_NANOS) {
      told = now;
      one.decode(figuresTimeline);
      PlanFigures known = figures.figures(one.backlog());
      listener.improved(Duration.ofNanos(now - begin), known);
    }
  }
}
