package rigmorrow.solver.search;

import rigmorrow.solver.timeline.RigWalk;

/** What the walks of all rigs come to together. */
final class Walked {
  private final int[] endOf;
  private final int[] setupOf;
  private final long[] lateOf;
  private final long[] lateWaitingOf;
  private final long[] hardOf;

  long hard;
  long lateWeighted;

  /** The same if every job waits as it did in the plan that was kept last. */
  long lateWeightedWaiting;

  long setupSeconds;

  /** Sum of the rigs' ends. */
  long ends;

  int lastEnd;

  Walked(int rigs) {
    endOf = new int[rigs];
    setupOf = new int[rigs];
    lateOf = new long[rigs];
    lateWaitingOf = new long[rigs];
    hardOf = new long[rigs];
  }

  void copy(Walked other) {
    int rigs = endOf.length;
    System.arraycopy(other.endOf, 0, endOf, 0, rigs);
    System.arraycopy(other.setupOf, 0, setupOf, 0, rigs);
    System.arraycopy(other.lateOf, 0, lateOf, 0, rigs);
    System.arraycopy(other.lateWaitingOf, 0, lateWaitingOf, 0, rigs);
    System.arraycopy(other.hardOf, 0, hardOf, 0, rigs);
    hard = other.hard;
    lateWeighted = other.lateWeighted;
    lateWeightedWaiting = other.lateWeightedWaiting;
    setupSeconds = other.setupSeconds;
    ends = other.ends;
    lastEnd = other.lastEnd;
  }

  /** Puts a rig's new walk in the place of its old one. */
  void put(int rig, RigWalk walk) {
    hard += walk.hard() - hardOf[rig];
    lateWeighted += walk.lateWeighted() - lateOf[rig];
    lateWeightedWaiting += walk.lateWeightedWaiting() - lateWaitingOf[rig];
    setupSeconds += walk.setupSeconds() - setupOf[rig];
    ends += walk.end() - endOf[rig];
    hardOf[rig] = walk.hard();
    lateOf[rig] = walk.lateWeighted();
    lateWaitingOf[rig] = walk.lateWeightedWaiting();
    setupOf[rig] = walk.setupSeconds();
    endOf[rig] = walk.end();
    lastEnd = 0;
    for (int end : endOf) {
      lastEnd = Math.max(lastEnd, end);
    }
  }

  /** Every rig is late as it was in the plan that was kept last. */
  void keepWaits(RigWalk walk) {
    lateWeightedWaiting = 0;
    for (int rig = 0; rig < lateWaitingOf.length; rig++) {
      lateWaitingOf[rig] = walk.keptLateWeighted(rig);
      lateWeightedWaiting += lateWaitingOf[rig];
    }
  }
}
