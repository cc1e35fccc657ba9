package rigmorrow.solver.timeline;

/**
 * Where a decode that has become too bad is given up. One object is used again and again by the one
 * search that owns it.
 */
public final class Limit {
  private long hard = Long.MAX_VALUE;
  private long soft = Long.MAX_VALUE;
  private long leastChangeoverSeconds;
  private int leastEnd;

  /**
   * @param mostHard most that may break hard rules
   * @param mostSoft most that {@link CompiledBatch#softSeconds} may come to
   * @param leastSetupSeconds known to be needed in all, so that the end is foreseen sooner; 0 when
   *     nothing is known
   * @param leastEndSecond before which the last job is known not to end; 0 when nothing is known
   */
  public void set(long mostHard, long mostSoft, long leastSetupSeconds, int leastEndSecond) {
    hard = mostHard;
    soft = mostSoft;
    leastChangeoverSeconds = leastSetupSeconds;
    leastEnd = leastEndSecond;
  }

  /** True when a decode that has come so far can only end worse than allowed. */
  boolean passedBy(Moment now, CompiledBatch batch) {
    return now.hard > hard
        || batch.softSeconds(
                now.lateWeighted,
                Math.max(now.changeoverSeconds, leastChangeoverSeconds),
                Math.max(now.finishedAt, leastEnd))
            > soft;
  }
}
