package rigmorrow.benchmarks.run;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.instance.Instance;
import rigmorrow.model.check.Require;

/**
 * What every cell of a run is allowed.
 *
 * @param time for each plan; null for the usual one of each instance
 * @param steps decodes of each search in place of time; 0 for time
 * @param seeds how many, counted from 1
 * @param cores each peer may use
 */
public record RunSettings(@Nullable Duration time, long steps, int seeds, int cores) {
  private static final Duration USUAL = Duration.ofSeconds(10);

  public RunSettings {
    Require.that(steps >= 0, "steps", steps, "0 for time, or more");
    Require.atLeast("seeds", seeds, 1);
    Require.atLeast("cores", cores, 1);
  }

  /** What one instance allows. */
  Cell.Effort effort(Instance instance) {
    return new Cell.Effort(steps > 0 ? 0 : limit(instance).toMillis(), steps, cores);
  }

  private Duration limit(Instance instance) {
    if (time != null) {
      return time;
    }
    Duration usual = instance.limit();
    return usual == null ? USUAL : usual;
  }
}
