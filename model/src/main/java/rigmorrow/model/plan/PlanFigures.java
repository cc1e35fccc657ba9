package rigmorrow.model.plan;

/**
 * What a plan comes to. Points are whole; each soft part is weight times seconds, divided by 60 and
 * rounded up.
 *
 * @param hard sum of what breaks hard rules, mostly seconds; 0 for a workable plan
 * @param leftOutPoints weights of the jobs left out
 * @param latenessPoints points for minutes after promises
 * @param changeoverPoints points for changeover minutes
 * @param finishingPoints points for the finishing time
 * @param planned number of jobs with times
 * @param leftOut number of jobs left out
 * @param lateJobs number of planned jobs after their promise
 * @param lateSeconds sum of seconds after promises, not weighted
 * @param changeoverSeconds hands-on changeover time of all rigs
 * @param finishedAt second at which the last job ends; 0 for an empty plan
 */
public record PlanFigures(
    long hard,
    long leftOutPoints,
    long latenessPoints,
    long changeoverPoints,
    long finishingPoints,
    int planned,
    int leftOut,
    int lateJobs,
    long lateSeconds,
    long changeoverSeconds,
    int finishedAt) {
  /** Sum of the soft parts. */
  public long softPoints() {
    return latenessPoints + changeoverPoints + finishingPoints;
  }
}
