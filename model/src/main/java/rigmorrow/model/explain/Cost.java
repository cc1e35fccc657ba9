package rigmorrow.model.explain;

import java.util.Comparator;

/**
 * What a whole plan costs, decoded. Judged level by level: what breaks hard rules, then the weight
 * left out, then points.
 *
 * @param hard what breaks hard rules, mostly seconds; 0 for a workable plan
 * @param leftOutWeight weights of the jobs left out, must-promises times the floor's factor
 * @param softSixtieths points times 60, so that nothing is rounded
 * @param lateWeightedSeconds sum of seconds after promises times the job's weight
 * @param lateSeconds sum of seconds after promises
 * @param lateJobs number of planned jobs after their promise
 * @param leftOutJobs number of jobs left out
 * @param changeoverSeconds hands-on changeover time of all rigs
 * @param finishedAtSecond second at which the last job ends; 0 for an empty plan
 */
public record Cost(
    long hard,
    long leftOutWeight,
    long softSixtieths,
    long lateWeightedSeconds,
    long lateSeconds,
    int lateJobs,
    int leftOutJobs,
    long changeoverSeconds,
    int finishedAtSecond) {
  /** The order in which plans are judged. */
  public static final Comparator<Cost> CHEAPEST =
      Comparator.comparingLong(Cost::hard)
          .thenComparingLong(Cost::leftOutWeight)
          .thenComparingLong(Cost::softSixtieths);

  private static final double SIXTY = 60;

  /** How this cost stands against another, in the order in which plans are judged. */
  public Standing against(Cost other) {
    int order = CHEAPEST.compare(this, other);
    return order < 0 ? Standing.BETTER : order > 0 ? Standing.WORSE : Standing.EQUAL;
  }

  /** Points, not rounded. */
  public double softPoints() {
    return softSixtieths / SIXTY;
  }
}
