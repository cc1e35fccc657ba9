package rigmorrow.solver.timeline;

import java.util.Arrays;

/** Remembers what the decoder decided, for the one decode whose plan is wanted. */
final class Trace {
  private static final int NONE = -1;

  final int[] changeoverStart;
  final int[] changeoverEnd;
  final int[] changeoverCrew;
  final int[] changeoverLead;
  final boolean[] ringServiced;
  final int[] closesAt;
  final int[] warmedUpAt;
  final int[] loadStart;
  final int[] loadEnd;
  final int[] loadCrew;
  final int[] loadLead;
  final int[] captureStart;
  final int[] captureEnd;
  final int[] unloadStart;
  final int[] unloadEnd;
  final int[] unloadCrew;
  final int[] unloadLead;

  /** State the rig was in before a job's changeover. */
  final int[] stateBefore;

  /** Unit and the place it came from, by job and kit. */
  final int[][] unit;

  final int[][] unitFrom;

  Trace(int jobs, int kits) {
    changeoverStart = none(jobs);
    changeoverEnd = none(jobs);
    changeoverCrew = new int[jobs];
    changeoverLead = none(jobs);
    ringServiced = new boolean[jobs];
    closesAt = none(jobs);
    warmedUpAt = none(jobs);
    loadStart = none(jobs);
    loadEnd = none(jobs);
    loadCrew = new int[jobs];
    loadLead = none(jobs);
    captureStart = none(jobs);
    captureEnd = none(jobs);
    unloadStart = none(jobs);
    unloadEnd = none(jobs);
    unloadCrew = new int[jobs];
    unloadLead = none(jobs);
    stateBefore = none(jobs);
    unit = new int[jobs][kits];
    unitFrom = new int[jobs][kits];
  }

  private static int[] none(int length) {
    int[] array = new int[length];
    Arrays.fill(array, NONE);
    return array;
  }
}
