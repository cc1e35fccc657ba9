package rigmorrow.app.cli;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import rigmorrow.app.cli.options.Bounds;
import rigmorrow.solver.SolverSettings;

/** How long and how to search. */
final class SearchOptions {
  private static final int USUAL_SECONDS = 10;
  private static final int MOST_SECONDS = 24 * 60 * 60;
  private static final int MOST_SOLVERS = 64;

  @Option(
      names = "--time",
      paramLabel = "SECONDS",
      description = "How long to search. Default: 10, or no limit where --steps is given.")
  @Nullable Integer seconds;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description = "Steps of each search. The same seed and steps give the same plan.")
  long steps;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the search. Default: ${DEFAULT-VALUE}.")
  long seed;

  @Option(
      names = "--solvers",
      paramLabel = "N",
      description =
          "Searches side by side. Default: one for each processor; 1 where only --steps is given.")
  @Nullable Integer solvers;

  @Option(
      names = "--first-only",
      description = "Only the plan that dispatch rules give, without a search.")
  boolean firstOnly;

  /**
   * The settings.
   *
   * @throws picocli.CommandLine.ParameterException when a number is outside its bounds
   */
  SolverSettings settings(CommandSpec spec) {
    Bounds bounds = new Bounds(spec);
    if (seconds != null) {
      bounds.between("--time", seconds, 1, MOST_SECONDS);
    }
    bounds.between("--steps", steps, 0, Long.MAX_VALUE);
    int processors = Runtime.getRuntime().availableProcessors();
    boolean repeatable = steps > 0 && seconds == null;
    int usual = repeatable ? 1 : Math.min(MOST_SOLVERS, processors);
    int count = solvers == null ? usual : solvers;
    bounds.between("--solvers", count, 1, MOST_SOLVERS);
    Duration limit =
        seconds != null
            ? Duration.ofSeconds(seconds)
            : steps > 0 ? null : Duration.ofSeconds(USUAL_SECONDS);
    return new SolverSettings(limit, steps, seed, count);
  }
}
