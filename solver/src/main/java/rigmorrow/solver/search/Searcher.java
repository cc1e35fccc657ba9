package rigmorrow.solver.search;

import java.time.Duration;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** One independent search: a few rounds of annealing, each cooler and from the best so far. */
public final class Searcher {
  /** Share of a round's effort and its heat, as a part of the mean loss of a move. */
  private record Round(double share, double heat) {}

  private static final Round[] ROUNDS = {new Round(0.8, 0.06), new Round(0.2, 0.015)};

  private final FloorSchedule start;
  private final long seed;
  private final Consumer<Sequences> onBetter;
  private volatile boolean stopped;
  private volatile @Nullable Solver<FloorSchedule> running;

  /**
   * @param batch to plan
   * @param from plan to start from
   * @param seed of the random numbers
   * @param onBetter told of every better plan, on the thread of {@link #run}
   */
  public Searcher(CompiledBatch batch, Sequences from, long seed, Consumer<Sequences> onBetter) {
    this.start = FloorSchedule.of(batch, from);
    this.seed = seed;
    this.onBetter = onBetter;
  }

  /**
   * Searches until a limit is reached or {@link #stop} is called.
   *
   * @param time wall time; null for none
   * @param decodes 0 for none
   */
  public Sequences run(@Nullable Duration time, long decodes) {
    FloorSchedule best = start;
    double loss = StartTemperature.meanLoss(start, seed);
    for (int round = 0; round < ROUNDS.length && !stopped; round++) {
      Duration share =
          time == null
              ? null
              : Duration.ofMillis(Math.max(1, (long) (time.toMillis() * ROUNDS[round].share)));
      Solver<FloorSchedule> solver =
          SolverFactory.<FloorSchedule>create(
                  Annealing.config(
                      loss * ROUNDS[round].heat,
                      share,
                      decodes == 0 ? 0 : Math.max(1, (long) (decodes * ROUNDS[round].share)),
                      seed * ROUNDS.length + round,
                      false))
              .buildSolver();
      solver.addEventListener(event -> tell(event.getNewBestSolution()));
      running = solver;
      if (stopped) {
        break;
      }
      best = solver.solve(best);
    }
    return best.sequences();
  }

  /** Ends the search soon, with the best plan so far. May be called from any thread. */
  public void stop() {
    stopped = true;
    Solver<FloorSchedule> solver = running;
    if (solver != null) {
      solver.terminateEarly();
    }
  }

  private void tell(FloorSchedule better) {
    onBetter.accept(better.sequencesAsScored());
  }
}
