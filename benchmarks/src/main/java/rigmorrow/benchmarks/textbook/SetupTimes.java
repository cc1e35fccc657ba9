package rigmorrow.benchmarks.textbook;

import rigmorrow.model.check.Require;

/**
 * Setup times that depend on what comes before: from family to family, for each rig by itself. A
 * unit of time is a second.
 */
public final class SetupTimes {
  /** No setups at all. */
  public static final SetupTimes NONE = new SetupTimes(new int[0][][], 0, 0);

  private final int[][][] seconds;
  private final int families;
  private final int initial;

  private SetupTimes(int[][][] seconds, int families, int initial) {
    this.seconds = seconds;
    this.families = families;
    this.initial = initial;
  }

  /**
   * @param seconds by rig, family before and family after; square, each 0 or more; the diagonal is
   *     not used
   * @param initial family that every rig is set up for at the start
   */
  public static SetupTimes of(int[][][] seconds, int initial) {
    Require.that(seconds.length > 0, "setups", "empty", "a matrix for each rig");
    int families = seconds[0].length;
    Require.between("initial", initial, 0, families - 1);
    int[][][] copy = new int[seconds.length][families][];
    for (int rig = 0; rig < seconds.length; rig++) {
      Require.that(
          seconds[rig].length == families, "setups", seconds[rig].length, families + " rows");
      for (int from = 0; from < families; from++) {
        copy[rig][from] = seconds[rig][from].clone();
        Require.that(
            copy[rig][from].length == families,
            "setups",
            copy[rig][from].length,
            families + " columns");
        for (int to = 0; to < families; to++) {
          Require.that(
              from == to || copy[rig][from][to] >= 0,
              "setups",
              copy[rig][from][to],
              "a whole number of at least 0");
        }
      }
    }
    return new SetupTimes(copy, families, initial);
  }

  /**
   * Setups by job, where the first job of a rig needs none: job j is family j, and a family of its
   * own behind them stands for the start.
   *
   * @param seconds by rig, job before and job after
   */
  public static SetupTimes freeFirst(int[][][] seconds) {
    int jobs = seconds[0].length;
    int[][][] wider = new int[seconds.length][jobs + 1][jobs + 1];
    for (int rig = 0; rig < seconds.length; rig++) {
      for (int from = 0; from < jobs; from++) {
        System.arraycopy(seconds[rig][from], 0, wider[rig][from], 0, jobs);
      }
    }
    return of(wider, jobs);
  }

  /** Number of families, 0 where there are no setups. */
  public int families() {
    return families;
  }

  /** Family that every rig is set up for at the start. */
  public int initial() {
    return initial;
  }

  /** Number of rigs, 0 where there are no setups. */
  public int rigs() {
    return seconds.length;
  }

  /** Seconds from one family to another on a rig; 0 from a family to itself. */
  public int seconds(int rig, int from, int to) {
    return from == to ? 0 : seconds[rig][from][to];
  }

  /** The longest setup there is, 0 where there are none. */
  public int longest() {
    int longest = 0;
    for (int rig = 0; rig < seconds.length; rig++) {
      for (int from = 0; from < families; from++) {
        for (int to = 0; to < families; to++) {
          longest = Math.max(longest, seconds(rig, from, to));
        }
      }
    }
    return longest;
  }
}
