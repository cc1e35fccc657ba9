package rigmorrow.solver;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.bound.LowerBound;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.explain.Explainer;
import rigmorrow.solver.explain.PlanWaits;
import rigmorrow.solver.hand.GivenStart;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;
import rigmorrow.solver.whatif.Arm;
import rigmorrow.solver.whatif.Past;
import rigmorrow.solver.whatif.WhatIf;

/** The door of the solver: from a batch to a plan. */
public final class FloorSolver {
  /** Dispatch rules may take so long, on long searches a tenth of the time. */
  private static final Duration DISPATCH_LIMIT = Duration.ofMillis(1500);

  private static final int DISPATCH_PART = 10;

  private FloorSolver() {}

  /** A first plan by dispatch rules alone: quick, workable, far from the best. */
  public static Plan dispatch(Batch batch) {
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences first = new Dispatcher(compiled).best(() -> false);
    return plan(compiled, first, new PlanOrigin("dispatch", 0, 1, 0, "done"));
  }

  /**
   * Searches for a good plan, and tells below what none can be where the plan is workable. The
   * bounds are worked out when the search is over, outside of its time limit: about half a second
   * for a day of 150 jobs, 8 s for 1,000 jobs of as many setups. A search that was asked to stop
   * ends without them.
   *
   * @param batch to plan; may be empty
   * @param settings how hard to search
   * @param listener told of progress; may end the search
   */
  public static Plan solve(Batch batch, SolverSettings settings, SolveListener listener) {
    return solve(batch, settings, listener, true);
  }

  /**
   * Compares scenarios over batches. Every cell is searched with the same limits on one core,
   * without bounds.
   *
   * @param arms what to compare, the floor as it is first
   * @param batches that were; names differ
   * @param seeds how many, counted from 1
   * @param cores cells that are planned at the same time
   * @param limits of each cell; its seed and number of solvers do not matter
   * @param pay what operators are paid for
   */
  public static WhatIf whatIf(
      List<Arm> arms,
      List<Past> batches,
      int seeds,
      int cores,
      SolverSettings limits,
      CrewPay pay) {
    return new WhatIf(
        arms, batches, seeds, cores, pay, (batch, seed, stop) -> cell(batch, limits, seed, stop));
  }

  private static Optional<Plan> cell(
      Batch batch, SolverSettings limits, long seed, BooleanSupplier stop) {
    SolverSettings settings = new SolverSettings(limits.timeLimit(), limits.stepLimit(), seed, 1);
    Plan plan = solve(batch, settings, SolveListener.stoppedBy(stop), false);
    return plan.origin().stopped().equals(ParallelSearch.INTERRUPTED)
        ? Optional.empty()
        : Optional.of(plan);
  }

  private static Plan solve(
      Batch batch, SolverSettings settings, SolveListener listener, boolean withBounds) {
    long begin = System.nanoTime();
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences first = new Dispatcher(compiled).best(enough(settings, begin));
    return searched(compiled, first, settings, listener, begin, withBounds);
  }

  /**
   * The same from a plan that there is: for planning again around what was pinned, moved or left
   * out by hand. Never ends with a worse plan. Where the plan breaks hard rules, the search starts
   * from the best of it, of what is left of it without what offends, and of one by dispatch rules.
   *
   * @param orders of the plan there is; jobs that cannot be where they are count as left out
   */
  public static Plan improve(
      Batch batch, Orders orders, SolverSettings settings, SolveListener listener) {
    long begin = System.nanoTime();
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences first = new GivenStart(compiled).from(orders, enough(settings, begin));
    return searched(compiled, first, settings, listener, begin, true);
  }

  private static Plan searched(
      CompiledBatch compiled,
      Sequences first,
      SolverSettings settings,
      SolveListener listener,
      long begin,
      boolean withBounds) {
    ParallelSearch search = new ParallelSearch(compiled, settings, listener, begin);
    Sequences best = search.run(first);
    PlanOrigin origin =
        new PlanOrigin(
            "search", settings.seed(), settings.solvers(), settings.stepLimit(), search.stopped());
    Plan plan = plan(compiled, best, origin);
    return search.interrupted() || !withBounds ? plan : bounded(compiled, plan);
  }

  /**
   * A workable plan with what none can be below that leaves out no more; any other plan as it is.
   *
   * @param batch that was planned
   */
  public static Plan withBounds(Batch batch, Plan plan) {
    return bounded(CompiledBatch.of(batch), plan);
  }

  /**
   * Explains what a plan does with one job. Who asks about several takes an {@link Explainer}.
   *
   * @throws IllegalArgumentException when the plan is not of the batch or there is no such job
   */
  public static Explanation explain(Batch batch, Plan plan, String job) {
    return new Explainer(batch, plan).explain(job);
  }

  /**
   * For what rigs wait in a plan, by job.
   *
   * @return empty where decoding the plan's orders does not come to its times
   */
  public static Map<String, List<Wait>> waits(Batch batch, Plan plan) {
    return PlanWaits.of(batch, plan);
  }

  /** The clock may cut the dispatch grid short, but only where the clock limits the search too. */
  private static BooleanSupplier enough(SolverSettings settings, long begin) {
    Duration limit = settings.timeLimit();
    if (limit == null) {
      return () -> false;
    }
    long most =
        Math.min(
            Math.max(DISPATCH_LIMIT.toNanos(), limit.toNanos() / DISPATCH_PART),
            limit.toNanos() / 3);
    return () -> System.nanoTime() - begin > most;
  }

  private static Plan bounded(CompiledBatch compiled, Plan plan) {
    return plan.figures().hard() == 0
        ? plan.withBounds(LowerBound.of(compiled).among(plan.figures().leftOutPoints()))
        : plan;
  }

  private static Plan plan(CompiledBatch compiled, Sequences sequences, PlanOrigin origin) {
    return new PlanWriter(compiled, new Timeline(compiled)).write(sequences, origin);
  }
}
