package rigmorrow.app.whatif;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.report.Counted;
import rigmorrow.solver.SolverSettings;

/**
 * How scenarios are compared.
 *
 * @param time for each plan; null where steps stop it
 * @param steps of each plan; 0 where time stops it
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
  public RunSettings {
    demandPercents = List.copyOf(demandPercents);
  }

  /** What every cell is allowed. */
  SolverSettings limits() {
    return new SolverSettings(time, steps, 0, 1);
  }

  /** What every plan gets, in words. */
  public String effort() {
    return (time == null ? Counted.of(steps, "step") : seconds() + " s") + " on one core";
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

  private String seconds() {
    Duration each = time;
    long millis = each == null ? 0 : each.toMillis();
    return millis % 1000 == 0 ? "" + millis / 1000 : "" + millis / 1000.0;
  }
}
