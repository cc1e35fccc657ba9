package rigmorrow.app.whatif;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.model.check.Require;
import rigmorrow.solver.SolverSettings;

/**
 * How scenarios are compared.
 *
 * @param time for each plan, whole seconds; null where steps alone stop it
 * @param steps of each plan; 0 where time alone stops it
 * @param seeds how many, counted from 1
 * @param cores plans made at the same time
 * @param demandPercents other demands under which all is planned too; without 0
 * @param again true to plan the floor as it is once more with other seeds
 * @param oneMore true to compare every small change besides
 */
public record RunSettings(
    @Nullable Duration time,
    long steps,
    int seeds,
    int cores,
    List<Double> demandPercents,
    boolean again,
    boolean oneMore) {
  private static final double MILLIS_PER_SECOND = 1000;

  /** Longest time for one plan. */
  public static final int MOST_SECONDS = 3600;

  /** Most seeds. */
  public static final int MOST_SEEDS = 100;

  /** Time for each plan where nothing else is asked for. */
  public static final int USUAL_SECONDS = 2;

  /** What demands may be. */
  public static final String DEMANDS = "-90 to 200, other than 0, each once";

  private static final double LEAST_DEMAND = -90;
  private static final double MOST_DEMAND = 200;

  public RunSettings {
    demandPercents = List.copyOf(demandPercents);
    Duration limit = time;
    Require.that(
        limit == null ? steps > 0 : steps >= 0,
        "steps",
        steps,
        "above 0 where no time stops a plan");
    if (limit != null) {
      double seconds = limit.toMillis() / MILLIS_PER_SECOND;
      Require.that(
          seconds >= 1 && seconds <= MOST_SECONDS && seconds == limit.toSeconds(),
          "seconds",
          seconds,
          "a whole number from 1 to " + MOST_SECONDS);
    }
    Require.that(seeds >= 1 && seeds <= MOST_SEEDS, "seeds", seeds, "1 to " + MOST_SEEDS);
    Require.atLeast("cores", cores, 1);
    Require.that(demands(demandPercents), "demand", demandPercents, DEMANDS);
  }

  /** Two seconds for each plan, one seed, and nothing besides. */
  public static RunSettings usual(int cores) {
    Duration time = Duration.ofSeconds(USUAL_SECONDS);
    return new RunSettings(time, 0, 1, cores, List.of(), false, false);
  }

  /** True where everything can be planned under these demands. */
  public static boolean demands(List<Double> percents) {
    return percents.stream().allMatch(one -> one >= LEAST_DEMAND && one <= MOST_DEMAND && one != 0)
        && new HashSet<>(percents).size() == percents.size();
  }

  /** What every cell is allowed. */
  SolverSettings limits() {
    return new SolverSettings(time, steps, 0, 1);
  }

  /**
   * What every plan gets, in words: all that may stop it, since other efforts are told apart by it.
   */
  public String effort() {
    return stop() + " on one core";
  }

  private String stop() {
    Duration each = time;
    if (each == null) {
      return Counted.of(steps, "step");
    }
    String length = Durations.exact(each.toSeconds());
    return steps == 0
        ? length
        : length + " or " + Counted.of(steps, "step") + ", whichever comes first,";
  }

  /** What makes cells comparable: on a crowded machine a second is worth less. */
  String effortOfRun() {
    return time == null ? effort() : effort() + ", " + cores + " at a time";
  }

  /** Seconds that all cells take, when each takes its time. */
  long wholeSeconds(int cells) {
    Duration each = time;
    return each == null ? 0 : (cells * each.toMillis() / cores + 999) / 1000;
  }
}
