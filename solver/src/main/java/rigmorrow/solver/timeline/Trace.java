package rigmorrow.solver.timeline;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

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

  /** A job takes its rig and kit. */
  void start(int job, int state, int closing, boolean service, int kits, int rig, KitStore store) {
    stateBefore[job] = state;
    closesAt[job] = closing;
    ringServiced[job] = service;
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int one = Integer.numberOfTrailingZeros(rest);
      unit[job][one] = store.chosen(rig, one);
      unitFrom[job][one] = store.place(store.chosen(rig, one));
    }
  }

  void changeover(int job, int begin, int end, CrewDesk crew) {
    changeoverStart[job] = begin;
    changeoverEnd[job] = end;
    changeoverCrew[job] = crew.chosen();
    changeoverLead[job] = crew.lead();
  }

  /** Loading by those the desk found last, or by nobody. */
  void load(int job, int begin, int end, @Nullable CrewDesk crew) {
    loadStart[job] = begin;
    loadEnd[job] = end;
    loadCrew[job] = crew == null ? 0 : crew.chosen();
    loadLead[job] = crew == null ? NONE : crew.lead();
  }

  void capture(int job, int warmedUp, int begin, int end) {
    warmedUpAt[job] = warmedUp;
    captureStart[job] = begin;
    captureEnd[job] = end;
  }

  /** Unloading by those the desk found last, or by nobody. */
  void unload(int job, int begin, int end, @Nullable CrewDesk crew) {
    unloadStart[job] = begin;
    unloadEnd[job] = end;
    unloadCrew[job] = crew == null ? 0 : crew.chosen();
    unloadLead[job] = crew == null ? NONE : crew.lead();
  }

  private static int[] none(int length) {
    int[] array = new int[length];
    Arrays.fill(array, NONE);
    return array;
  }
}
