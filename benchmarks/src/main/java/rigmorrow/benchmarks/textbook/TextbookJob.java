package rigmorrow.benchmarks.textbook;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * One job of a textbook problem; a unit of time is a second.
 *
 * @param seconds processing time on each rig, at least one rig, each 0 or more
 * @param family number of the setup it asks for; 0 where the problem has no setups
 * @param weight how much it counts when it is late or left out, 1 to 1000
 * @param dueSecond second from the plan's start at which it is due; null when it never is
 * @param must true when being late is not allowed
 * @param place 0 for the first job of the first rig; null when the search may choose
 */
public record TextbookJob(
    List<Integer> seconds,
    int family,
    int weight,
    @Nullable Integer dueSecond,
    boolean must,
    @Nullable Integer place) {
  public TextbookJob {
    seconds = List.copyOf(seconds);
    Require.that(!seconds.isEmpty(), "seconds", "empty", "one for each rig");
    Require.atLeast("family", family, 0);
    Require.that(!must || dueSecond != null, "must", must, "false for a job without a due time");
  }

  /** A job that only has to be done, whenever. */
  public static TextbookJob of(List<Integer> seconds) {
    return new TextbookJob(seconds, 0, 1, null, false, null);
  }

  /** A job for a single rig. */
  public static TextbookJob of(int seconds) {
    return of(List.of(seconds));
  }

  /** The same job with another setup. */
  public TextbookJob withFamily(int other) {
    return new TextbookJob(seconds, other, weight, dueSecond, must, place);
  }

  /** The same job with another weight. */
  public TextbookJob withWeight(int other) {
    return new TextbookJob(seconds, family, other, dueSecond, must, place);
  }

  /** The same job, counted by how late it is. */
  public TextbookJob shouldBy(int second) {
    return new TextbookJob(seconds, family, weight, second, false, place);
  }

  /** The same job, never late. */
  public TextbookJob mustBy(int second) {
    return new TextbookJob(seconds, family, weight, second, true, place);
  }

  /** The same job, held at a place of the first rig. */
  public TextbookJob at(int other) {
    return new TextbookJob(seconds, family, weight, dueSecond, must, other);
  }
}
