package rigmorrow.solver;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * How hard to search. At least one of the limits must be set.
 *
 * @param timeLimit wall time, above 0; null for none
 * @param stepLimit decodes for each solver, 0 for none; what else judging 16 changes costs counts
 *     as one more. With a step limit alone the same seed gives the same plan on any machine.
 * @param seed of the random numbers
 * @param solvers searches side by side, each with a seed of its own; at least 1
 */
public record SolverSettings(@Nullable Duration timeLimit, long stepLimit, long seed, int solvers) {
  public SolverSettings {
    Require.that(
        timeLimit == null || timeLimit.toMillis() > 0,
        "timeLimit",
        String.valueOf(timeLimit),
        "a time above 0");
    Require.that(stepLimit >= 0, "stepLimit", stepLimit, "0 for none, or more");
    Require.that(
        timeLimit != null || stepLimit > 0, "stepLimit", stepLimit, "a limit in time or steps");
    Require.atLeast("solvers", solvers, 1);
  }

  /** Stops by time, with one solver for each core. */
  public static SolverSettings seconds(long seconds, long seed) {
    int cores = Runtime.getRuntime().availableProcessors();
    return new SolverSettings(Duration.ofSeconds(seconds), 0, seed, cores);
  }

  /** Stops by steps, so that the result can be made again; one solver. */
  public static SolverSettings steps(long steps, long seed) {
    return new SolverSettings(null, steps, seed, 1);
  }
}
