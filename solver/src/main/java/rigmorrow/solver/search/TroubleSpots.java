package rigmorrow.solver.search;

import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Timeline;

/** What hurts most in the plan that the search stands at: the late jobs and the last rig. */
final class TroubleSpots {
  private static final int NONE = -1;

  private final CompiledBatch batch;
  private final Timeline timeline;
  private final int[] late;
  private int lateCount;
  private int lastRig = NONE;

  TroubleSpots(CompiledBatch batch, Timeline timeline) {
    this.batch = batch;
    this.timeline = timeline;
    this.late = new int[batch.jobCount()];
  }

  /** Reads the timeline that was just decoded in full. */
  void read() {
    lateCount = 0;
    lastRig = NONE;
    boolean anyLate = timeline.lateWeighted() > 0;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      int length = timeline.length(rig);
      if (length > 0 && timeline.endOf(rig) == timeline.finishedAt()) {
        lastRig = rig;
      }
      if (anyLate) {
        addLate(timeline.sequence(rig), length);
      }
    }
  }

  private void addLate(int[] jobs, int length) {
    for (int at = 0; at < length; at++) {
      if (timeline.captureEnd(jobs[at]) > batch.due(jobs[at])) {
        late[lateCount++] = jobs[at];
      }
    }
  }

  int lateCount() {
    return lateCount;
  }

  int late(int index) {
    return late[index];
  }

  /** Rig whose last job ends last, or -1 where there is no job. */
  int lastRig() {
    return lastRig;
  }
}
