package rigmorrow.benchmarks.run;

import java.util.Comparator;
import rigmorrow.model.plan.PlanFigures;

/**
 * How plans compare: the first part that differs decides, less is better.
 *
 * @param hard what breaks hard rules, 0 for a workable plan
 * @param leftOut points of the jobs left out
 * @param soft points
 */
public record Score(long hard, long leftOut, long soft) implements Comparable<Score> {
  private static final Comparator<Score> ORDER =
      Comparator.comparingLong(Score::hard)
          .thenComparingLong(Score::leftOut)
          .thenComparingLong(Score::soft);

  /** The score of a plan. */
  public static Score of(PlanFigures figures) {
    return new Score(figures.hard(), figures.leftOutPoints(), figures.softPoints());
  }

  /** Reads what {@link #toString} writes. */
  static Score parse(String text) {
    String[] parts = text.split("/", -1);
    if (parts.length != 3) {
      throw new IllegalArgumentException("'" + text + "' is no score");
    }
    return new Score(Long.parseLong(parts[0]), Long.parseLong(parts[1]), Long.parseLong(parts[2]));
  }

  /** Negative when this is the better one. */
  @Override
  public int compareTo(Score other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return hard + "/" + leftOut + "/" + soft;
  }
}
