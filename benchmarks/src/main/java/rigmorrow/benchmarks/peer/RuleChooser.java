package rigmorrow.benchmarks.peer;

import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.NextJob;
import rigmorrow.solver.timeline.Timeline;

/**
 * Chooses the first of the jobs that a rig can take, by a simple order. Jobs whose samples are
 * there go before those that would have to be waited for. A job that could no longer end in time to
 * be allowed is not taken; pinned jobs take their places.
 */
final class RuleChooser implements NextJob {
  /** What comes first. */
  enum Order {
    DUE_DATE,
    CHANGEOVER
  }

  private final CompiledBatch batch;
  private final Order order;
  private final boolean[] taken;
  private final int[] placed;

  RuleChooser(CompiledBatch batch, Order order) {
    this.batch = batch;
    this.order = order;
    this.taken = new boolean[batch.jobCount()];
    this.placed = new int[batch.rigCount()];
  }

  @Override
  public int choose(int rig, int time, Timeline timeline) {
    int best = pinnedHere(rig);
    if (best == NONE) {
      best = first(rig, time, timeline);
    }
    if (best != NONE) {
      taken[best] = true;
      placed[rig]++;
    }
    return best;
  }

  private int pinnedHere(int rig) {
    for (int job = 0; job < taken.length; job++) {
      if (!taken[job] && batch.pinnedRig(job) == rig && batch.pinnedPlace(job) == placed[rig]) {
        return job;
      }
    }
    return NONE;
  }

  private int first(int rig, int time, Timeline timeline) {
    int best = NONE;
    int bestWait = 0;
    int bestSetup = 0;
    for (int job = 0; job < taken.length; job++) {
      if (taken[job] || !batch.fits(job, rig) || batch.pinnedPlace(job) >= 0) {
        continue;
      }
      int wait = Math.max(0, batch.ready(job) - time);
      int setup = timeline.setupSecondsNow(rig, job);
      if (time + wait + setup + batch.plainSeconds(job, rig) > batch.latestEnd(job, rig)) {
        continue;
      }
      if (best == NONE || before(job, wait, setup, best, bestWait, bestSetup)) {
        best = job;
        bestWait = wait;
        bestSetup = setup;
      }
    }
    return best;
  }

  private boolean before(int job, int wait, int setup, int other, int otherWait, int otherSetup) {
    if (wait != otherWait) {
      return wait < otherWait;
    }
    if (order == Order.CHANGEOVER && setup != otherSetup) {
      return setup < otherSetup;
    }
    if (batch.due(job) != batch.due(other)) {
      return batch.due(job) < batch.due(other);
    }
    return batch.weight(job) > batch.weight(other);
  }
}
