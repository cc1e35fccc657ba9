package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Wait;

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

  /** Why a job did not start at each second at which it was asked about, in order. */
  final List<Refusal> refusals = new ArrayList<>();

  /**
   * A job that could not start, or that waits for people from here on.
   *
   * @param job number
   * @param second from which on
   * @param reason what stood in the way
   * @param kits bits of the kit that was not free or was taken off
   */
  record Refusal(int job, int second, Wait.Reason reason, int kits) {}

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

  /** Kit or the sample is not free yet, or kit hangs on a rig that is at a job. */
  void held(int job, int second, int kits, int sample, int rig, KitStore store) {
    int taken = 0;
    int hanging = 0;
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int one = Integer.lowestOneBit(rest);
      if (store.freeAt(one, NONE, rig) > second) {
        boolean hangs = store.waitsForARig(one, rig, second);
        hanging |= hangs ? one : 0;
        taken |= hangs ? 0 : one;
      }
    }
    boolean shared = store.freeAt(0, sample, rig) > second;
    Wait.Reason reason;
    if (shared) {
      reason = taken == 0 ? Wait.Reason.SAMPLE : Wait.Reason.SAMPLE_AND_KIT;
    } else {
      reason = taken == 0 ? Wait.Reason.KIT_ON_A_BUSY_RIG : Wait.Reason.KIT;
    }
    refusals.add(new Refusal(job, second, reason, shared || taken != 0 ? taken : hanging));
  }

  /** A job would have asked for its start when kit is taken off its rig. */
  void standsStill(int job, int second, int kits) {
    refusals.add(new Refusal(job, second, Wait.Reason.KIT_TAKEN_OFF, kits));
  }

  /** People would come at {@code begin}, when the rig is not open for long enough. */
  void closed(int job, int second, int begin) {
    begin(job, second);
    refusals.add(new Refusal(job, begin, Wait.Reason.RIG_HOURS, 0));
  }

  /** From here on only people are waited for. */
  void begin(int job, int second) {
    refusals.add(new Refusal(job, second, Wait.Reason.CREW_TO_START, 0));
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
