package rigmorrow.solver.bound;

import java.util.BitSet;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * When a job would be done with nothing else planned, no changeover and people always there. A job
 * never straddles a closing of its rig, so it starts where the whole of it fits; anything more only
 * makes it later.
 */
final class Alone {
  /** Stands for a job that no rig can do within the plan. */
  static final int NEVER = Integer.MAX_VALUE;

  private final int[] captured;
  private final int[] ended;

  Alone(CompiledBatch batch, BatchFacts facts) {
    this.captured = new int[batch.jobCount()];
    this.ended = new int[batch.jobCount()];
    int[][] hours = new int[batch.rigCount()][];
    for (int rig = 0; rig < hours.length; rig++) {
      hours[rig] = facts.rigHours(rig);
    }
    for (int job = 0; job < ended.length; job++) {
      captured[job] = NEVER;
      ended[job] = NEVER;
      BitSet rigs = facts.rigsOf(job);
      for (int rig = rigs.nextSetBit(0); rig >= 0; rig = rigs.nextSetBit(rig + 1)) {
        int seconds = batch.plainSeconds(job, rig);
        int start = start(hours[rig], batch.ready(job), seconds, facts.horizon());
        if (start != NEVER && start + seconds <= facts.leaves(job)) {
          int pictures = start + seconds - facts.unloadSeconds(job, rig);
          captured[job] = Math.min(captured[job], pictures);
          ended[job] = Math.min(ended[job], start + seconds);
        }
      }
      if (facts.must(job) && captured[job] > batch.due(job)) {
        captured[job] = NEVER;
        ended[job] = NEVER;
      }
    }
  }

  private static int start(int[] hours, int ready, int seconds, int horizon) {
    for (int i = 0; i < hours.length; i += 2) {
      int start = Math.max(ready, hours[i]);
      if (start + seconds <= hours[i + 1]) {
        return start;
      }
    }
    // What takes no time may also be done at the very end.
    return seconds == 0 && ready <= horizon ? horizon : NEVER;
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
}
