package rigmorrow.solver.search;

import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** One search, run by the planning library. */
public final class Searcher {
  private final FloorSchedule start;
  private final long seed;
  private final Consumer<Sequences> onBetter;
  private volatile boolean stopped;
  private long judged;

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
   * @param begin {@link System#nanoTime()} at which the time began to run
   * @param time wall time; null for none
   * @param decodes 0 for none
   */
  public Sequences run(long begin, @Nullable Duration time, long decodes) {
    Annealing annealing = new Annealing(begin, time, decodes, seed, () -> stopped, onBetter);
    try {
      return SolverFactory.<FloorSchedule>create(config(annealing, EnvironmentMode.REPRODUCIBLE))
          .buildSolver()
          .solve(start)
          .sequences();
    } finally {
      judged = annealing.judged();
    }
  }

  static SolverConfig config(Annealing annealing, EnvironmentMode mode) {
    return new SolverConfig()
        .withSolutionClass(FloorSchedule.class)
        .withEntityClasses(RigQueue.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(ScheduleScore.class))
        .withEnvironmentMode(mode)
        .withPhaseList(
            List.of(new CustomPhaseConfig().withCustomPhaseCommandList(List.of(annealing))));
  }

  /** Number of changes that the last run judged. */
  public long judged() {
    return judged;
  }

  /** Ends the search soon, with the best plan so far. May be called from any thread. */
  public void stop() {
    stopped = true;
  }
}
