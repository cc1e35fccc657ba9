package rigmorrow.model.plan;

import java.util.OptionalLong;
import rigmorrow.model.check.Require;

/**
 * What no workable plan of the same batch can be below. The bound on left-out points holds for
 * every workable plan, the others for those that leave out no more points than the plan that the
 * bounds stand beside. Whole points, rounded as those of {@link PlanFigures}.
 *
 * @param leftOutPoints weights of the jobs left out, at least 0
 * @param latenessPoints points for minutes after promises, at least 0
 * @param changeoverPoints points for changeover minutes, at least 0
 * @param finishingPoints points for the finishing time, at least 0
 */
public record PlanBounds(
    long leftOutPoints, long latenessPoints, long changeoverPoints, long finishingPoints) {
  /** A bound that is below this part of the plan's value tells too little to be shown. */
  private static final int USEFUL_PART = 2;

  public PlanBounds {
    Require.that(leftOutPoints >= 0, "bounds.leftOutPoints", leftOutPoints, "0 or more");
    Require.that(latenessPoints >= 0, "bounds.latenessPoints", latenessPoints, "0 or more");
    Require.that(changeoverPoints >= 0, "bounds.changeoverPoints", changeoverPoints, "0 or more");
    Require.that(finishingPoints >= 0, "bounds.finishingPoints", finishingPoints, "0 or more");
  }

  /** Bound on the sum of the soft parts: each part's own, added up. */
  public long softPoints() {
    return latenessPoints + changeoverPoints + finishingPoints;
  }

  /** True when a value is at most twice its bound; the bound is useful then. */
  public static boolean useful(long value, long bound) {
    return value <= USEFUL_PART * bound;
  }

  /**
   * By how many per cent at most a value is above the best possible, rounded up.
   *
   * @return nothing where the bound is not {@link #useful}
   */
  public static OptionalLong percentAbove(long value, long bound) {
    if (!useful(value, bound)) {
      return OptionalLong.empty();
    }
    return OptionalLong.of(bound == 0 ? 0 : -Math.floorDiv(-100 * (value - bound), bound));
  }
}
