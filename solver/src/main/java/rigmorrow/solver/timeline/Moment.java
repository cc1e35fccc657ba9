package rigmorrow.solver.timeline;

import java.util.Arrays;

/**
 * Everything that changes while a decode runs, except what is only told: in one place, so that a
 * decode can be taken up again in the middle. {@link CrewDesk}, {@link KitStore} and {@link
 * RigGate} work on its arrays.
 */
final class Moment {
  /** Request that comes next on each rig: its second, then its rank. */
  final long[] key;

  /** What breaks a tie between requests of one second: the job's weight, then the rig. */
  final int[] rank;

  final int[] phase;

  /** Where the work of a rig's current job begins in {@link CompiledBatch#work}. */
  final int[] current;

  /**
   * Place of the current job of each rig. One more stands for the backlog, which a decode never
   * reads: always before its first place.
   */
  final int[] place;

  final int[] state;
  final int[] turns;
  final int[] warmAt;
  final int[] freeAt;

  /** Second until which kit is taken off a rig, so that no job starts there. */
  final int[] stillUntil;

  /** Working span that a rig is in or before. */
  final int[] rigSpan;

  /** Second from which an operator is free; never before the span that ends in crewCloses. */
  final int[] crewFreeAt;

  final int[] crewCloses;
  final int[] crewSpan;

  /** Second from which a unit is free, or {@link KitStore#HELD}. */
  final int[] unitFreeAt;

  final int[] unitPlace;
  final int[] sampleFreeAt;

  /** Unit that each rig holds, by rig and kit. */
  final int[] held;

  long hard;
  long lateWeighted;
  long changeoverSeconds;
  int finishedAt;

  /** Number of jobs that are off their rig. */
  int done;

  /** True when some rig waits for another one to be between two jobs. */
  boolean awaitsRig;

  Moment(CompiledBatch batch) {
    int rigs = batch.rigCount();
    key = new long[rigs];
    rank = new int[rigs];
    phase = new int[rigs];
    current = new int[rigs];
    place = new int[rigs + 1];
    state = new int[rigs];
    turns = new int[rigs];
    warmAt = new int[rigs];
    freeAt = new int[rigs];
    stillUntil = new int[rigs];
    rigSpan = new int[rigs];
    int crew = batch.crewHours.length;
    crewFreeAt = new int[crew];
    crewCloses = new int[crew];
    crewSpan = new int[crew];
    unitFreeAt = new int[batch.unitPlace.length];
    unitPlace = new int[batch.unitPlace.length];
    sampleFreeAt = new int[batch.sampleCount];
    held = new int[rigs * batch.kits.size()];
  }

  /** Before anything has happened. */
  void open(CompiledBatch batch) {
    Arrays.fill(place, -1);
    Arrays.fill(state, 0);
    Arrays.fill(freeAt, 0);
    Arrays.fill(stillUntil, 0);
    System.arraycopy(batch.ringTurns, 0, turns, 0, turns.length);
    hard = 0;
    lateWeighted = 0;
    changeoverSeconds = 0;
    finishedAt = 0;
    done = 0;
    awaitsRig = false;
  }

  /** Becomes as another moment of the same batch. */
  void copy(Moment other) {
    int rigs = key.length;
    System.arraycopy(other.key, 0, key, 0, rigs);
    System.arraycopy(other.rank, 0, rank, 0, rigs);
    System.arraycopy(other.phase, 0, phase, 0, rigs);
    System.arraycopy(other.current, 0, current, 0, rigs);
    System.arraycopy(other.place, 0, place, 0, rigs + 1);
    System.arraycopy(other.state, 0, state, 0, rigs);
    System.arraycopy(other.turns, 0, turns, 0, rigs);
    System.arraycopy(other.warmAt, 0, warmAt, 0, rigs);
    System.arraycopy(other.freeAt, 0, freeAt, 0, rigs);
    System.arraycopy(other.stillUntil, 0, stillUntil, 0, rigs);
    System.arraycopy(other.rigSpan, 0, rigSpan, 0, rigs);
    int crew = crewSpan.length;
    System.arraycopy(other.crewFreeAt, 0, crewFreeAt, 0, crew);
    System.arraycopy(other.crewCloses, 0, crewCloses, 0, crew);
    System.arraycopy(other.crewSpan, 0, crewSpan, 0, crew);
    int units = unitPlace.length;
    System.arraycopy(other.unitFreeAt, 0, unitFreeAt, 0, units);
    System.arraycopy(other.unitPlace, 0, unitPlace, 0, units);
    System.arraycopy(other.sampleFreeAt, 0, sampleFreeAt, 0, sampleFreeAt.length);
    System.arraycopy(other.held, 0, held, 0, held.length);
    hard = other.hard;
    lateWeighted = other.lateWeighted;
    changeoverSeconds = other.changeoverSeconds;
    finishedAt = other.finishedAt;
    done = other.done;
    awaitsRig = other.awaitsRig;
  }
}
