package rigmorrow.solver.bound;

import java.util.BitSet;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * When a job would be done with nothing else planned and people always there. A job never straddles
 * a closing of its rig, so it starts where the whole of it fits; anything more only makes it later.
 * A rig on which it would still leave too late or break its promise is none for it.
 */
final class Alone {
  /** Stands for a job that no rig can do within the plan. */
  static final int NEVER = Integer.MAX_VALUE;

  private final CompiledBatch batch;
  private final BatchFacts facts;
  private final int[] captured;
  private final int[] ended;
  private final BitSet[] rigs;

  /**
   * The least changeover into the kind of a job on a rig. The job itself may need none, but then
   * one of its kind was before it, and the first of them had it.
   */
  interface Entry {
    int seconds(int job, int rig);
  }

  /**
   * @param entry for so long a rig must have been open before the job can be loaded
   */
  Alone(CompiledBatch batch, BatchFacts facts, Entry entry) {
    this.batch = batch;
    this.facts = facts;
    this.captured = new int[batch.jobCount()];
    this.ended = new int[batch.jobCount()];
    this.rigs = new BitSet[batch.jobCount()];
    int[][] hours = new int[batch.rigCount()][];
    for (int rig = 0; rig < hours.length; rig++) {
      hours[rig] = facts.rigHours(rig);
    }
    for (int job = 0; job < ended.length; job++) {
      captured[job] = NEVER;
      ended[job] = NEVER;
      rigs[job] = new BitSet();
      BitSet fitting = facts.rigsOf(job);
      for (int rig = fitting.nextSetBit(0); rig >= 0; rig = fitting.nextSetBit(rig + 1)) {
        int opens = hours[rig].length == 0 ? 0 : hours[rig][0] + entry.seconds(job, rig);
        add(job, rig, start(hours[rig], Math.max(opens, batch.ready(job)), job, rig));
      }
    }
  }

  private int start(int[] hours, int ready, int job, int rig) {
    int seconds = batch.plainSeconds(job, rig);
    for (int i = 0; i < hours.length; i += 2) {
      int start = Math.max(ready, hours[i]);
      if (start + seconds <= hours[i + 1]) {
        return start;
      }
    }
    // What takes no time may also be done at the very end.
    return seconds == 0 && ready <= facts.horizon() ? facts.horizon() : NEVER;
  }

  private void add(int job, int rig, int start) {
    if (start == NEVER) {
      return;
    }
    int end = start + batch.plainSeconds(job, rig);
    int pictures = end - facts.unloadSeconds(job, rig);
    if (end <= facts.leaves(job) && (!facts.must(job) || pictures <= batch.due(job))) {
      rigs[job].set(rig);
      captured[job] = Math.min(captured[job], pictures);
      ended[job] = Math.min(ended[job], end);
    }
  }

  /** Numbers of the rigs on which a workable plan may hold the job. */
  BitSet rigs(int job) {
    return rigs[job];
  }

  /** First second at which the pictures of a job can be taken, or {@link #NEVER}. */
  int captured(int job) {
    return captured[job];
  }

  /** First second at which a job can be off its rig, or {@link #NEVER}. */
  int ended(int job) {
    return ended[job];
  }

  /** True when a workable plan may hold the job. */
  boolean possible(int job) {
    return ended[job] != NEVER;
  }

  /** Points for the jobs that no workable plan holds. */
  long impossiblePoints() {
    long points = 0;
    for (int job = 0; job < batch.jobCount(); job++) {
      points += possible(job) ? 0 : batch.leftOutWeight(job);
    }
    return points;
  }
}
