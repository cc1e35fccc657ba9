package rigmorrow.model.floor;

import rigmorrow.model.check.Require;

/**
 * What a plan is judged by, in whole points. Any of the first three may be 0, so that a single goal
 * can be planned for.
 *
 * @param latenessPerMinute points for each minute after a promise, times the job's weight
 * @param changeoverPerMinute points for each hands-on minute of changeover work
 * @param finishingPerMinute points for each minute from the floor's first opening to the end of the
 *     last job
 * @param mustFactor how many times as much a job with a hard promise counts when it is left out, at
 *     least 1
 */
public record Weights(
    int latenessPerMinute, int changeoverPerMinute, int finishingPerMinute, int mustFactor) {
  /** 10 per late minute, 4 per changeover minute, 1 per minute of finishing time, must ten-fold. */
  public static final Weights DEFAULT = new Weights(10, 4, 1, 10);

  public Weights {
    Require.atLeast("weights.latenessPerMinute", latenessPerMinute, 0);
    Require.atLeast("weights.changeoverPerMinute", changeoverPerMinute, 0);
    Require.atLeast("weights.finishingPerMinute", finishingPerMinute, 0);
    Require.atLeast("weights.mustFactor", mustFactor, 1);
  }
}
