package rigmorrow.solver.whatif;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import rigmorrow.model.change.ScenarioBatch;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.check.Require;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.Outcome;
import rigmorrow.model.plan.Plan;

/**
 * Plans every arm on every batch and seed, one cell on each core.
 *
 * <p>No arm may look better because it was lucky: all get the same effort and, for one batch and
 * seed, the same seed of the search. All arms of a batch and seed follow one another, and which
 * comes first changes from one to the next, so that a machine that gets slower hits all alike.
 */
public final class WhatIf {
  private static final double NANOS_PER_MILLI = 1e6;
  private static final long WARM_UP_NANOS = 1_000_000_000L;

  private final List<Arm> arms;
  private final List<Past> batches;
  private final int seeds;
  private final int cores;
  private final CrewPay pay;
  private final CellPlanner planner;
  private volatile boolean failed;
  private int done;
  private int doneBefore;
  private long begin;

  /**
   * @param arms at least one, the floor as it is first
   * @param batches names differ
   * @param seeds how many, counted from 1
   * @param cores cells that are planned at the same time, at least 1
   * @param pay what operators are paid for
   * @param planner gives every cell the same effort
   */
  public WhatIf(
      List<Arm> arms, List<Past> batches, int seeds, int cores, CrewPay pay, CellPlanner planner) {
    this.arms = List.copyOf(arms);
    this.batches = List.copyOf(batches);
    this.seeds = Require.atLeast("seeds", seeds, 1);
    this.cores = Require.atLeast("cores", cores, 1);
    this.pay = pay;
    this.planner = planner;
    Require.distinct("batches", batches, Past::name);
    Require.distinct("arms", arms, arm -> arm.scenario() + " " + arm.demandPercent());
  }

  /** Keys of all cells, in the order they are planned. */
  public List<Cell.Key> keys() {
    return tasks().stream().map(CellTask::key).toList();
  }

  /** All cells, in the order they are planned. */
  public List<CellTask> tasks() {
    List<CellTask> tasks = new ArrayList<>();
    for (int number = 0; number < batches.size(); number++) {
      for (int seed = 1; seed <= seeds; seed++) {
        for (int turn = 0; turn < arms.size(); turn++) {
          Arm arm = arms.get((turn + number + seed - 1) % arms.size());
          tasks.add(new CellTask(arm, batches.get(number), seed));
        }
      }
    }
    return tasks;
  }

  /**
   * Plans the cells that are not there yet.
   *
   * @param known cells of earlier runs with the same effort
   * @return true when all cells are there, false when the listener ended it
   */
  public boolean run(Set<Cell.Key> known, WhatIfListener listener) {
    List<CellTask> tasks = tasks();
    Queue<CellTask> waiting = new ConcurrentLinkedQueue<>();
    tasks.stream().filter(task -> !known.contains(task.key())).forEach(waiting::add);
    doneBefore = tasks.size() - waiting.size();
    done = doneBefore;
    begin = System.nanoTime();
    int threads = Math.min(cores, waiting.size());
    if (threads > 0) {
      ExecutorService pool = Executors.newFixedThreadPool(threads);
      List<Future<?>> workers = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        workers.add(pool.submit(() -> work(waiting, tasks.size(), listener)));
      }
      try {
        await(workers);
      } finally {
        pool.shutdownNow();
      }
    }
    return done == tasks.size();
  }

  /**
   * Plans for a second on each core and forgets it, so that the first cells are not planned cold.
   */
  public void warmUp(WhatIfListener listener) {
    long start = System.nanoTime();
    BooleanSupplier stop =
        () -> listener.stopRequested() || System.nanoTime() - start > WARM_UP_NANOS;
    ExecutorService pool = Executors.newFixedThreadPool(cores);
    List<Future<?>> workers = new ArrayList<>();
    for (int i = 0; i < cores; i++) {
      Past past = batches.get(i % batches.size());
      workers.add(pool.submit(() -> planner.plan(past.batch(), 0, stop)));
    }
    try {
      await(workers);
    } finally {
      pool.shutdownNow();
    }
  }

  private void work(Queue<CellTask> waiting, int all, WhatIfListener listener) {
    try {
      CellTask task = waiting.poll();
      while (task != null && !failed && !listener.stopRequested()) {
        plan(task, all, listener);
        task = waiting.poll();
      }
    } catch (RuntimeException | Error e) {
      failed = true;
      throw e;
    }
  }

  private void plan(CellTask task, int all, WhatIfListener listener) {
    long start = System.nanoTime();
    ScenarioBatch made = ScenarioMaker.of(task.past().batch(), task.arm().changes());
    if (!made.problems().isEmpty()) {
      throw new IllegalArgumentException(
          task.arm().scenario() + " on " + task.past().name() + ": " + made.problems());
    }
    Optional<Plan> plan =
        planner.plan(made.batch(), task.searchSeed(), () -> failed || listener.stopRequested());
    if (plan.isPresent()) {
      Outcome outcome = Outcome.of(made, plan.get(), pay);
      long millis = Math.round((System.nanoTime() - start) / NANOS_PER_MILLI);
      finish(new Cell(task.key(), outcome, millis), all, listener);
    }
  }

  private synchronized void finish(Cell cell, int all, WhatIfListener listener) {
    done++;
    long each = (System.nanoTime() - begin) / (done - doneBefore);
    Duration left = Duration.ofNanos(each * (all - done));
    listener.finished(cell, new WhatIfListener.Progress(done, all, left));
  }

  private void await(List<Future<?>> workers) {
    boolean interrupted = false;
    for (Future<?> worker : workers) {
      boolean over = false;
      while (!over) {
        try {
          worker.get();
          over = true;
        } catch (InterruptedException asked) {
          interrupted = true;
          failed = true;
        } catch (ExecutionException e) {
          failed = true;
          throw new IllegalStateException("planning a cell failed", e.getCause());
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
