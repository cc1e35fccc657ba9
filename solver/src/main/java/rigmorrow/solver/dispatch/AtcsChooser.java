package rigmorrow.solver.dispatch;

import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.NextJob;
import rigmorrow.solver.timeline.Timeline;

/**
 * Chooses the job with the highest index of a {@link DispatchRule} whenever a rig is free. Works
 * with the logarithm of the index, which has the same order and needs no exponentials.
 */
final class AtcsChooser implements NextJob {
  private final CompiledBatch batch;
  private final DispatchRule rule;
  private final boolean[] taken;
  private final double[] logScarcity;
  private final double meanSeconds;
  private final double meanSetupSeconds;
  private final int[] placed;

  AtcsChooser(CompiledBatch batch, DispatchRule rule, double meanSetupSeconds) {
    this.batch = batch;
    this.rule = rule;
    this.taken = new boolean[batch.jobCount()];
    this.placed = new int[batch.rigCount()];
    this.meanSetupSeconds = Math.max(1, meanSetupSeconds);
    this.logScarcity = new double[batch.jobCount()];
    double sum = 0;
    for (int job = 0; job < batch.jobCount(); job++) {
      int fitting = 0;
      int shortest = Integer.MAX_VALUE;
      for (int rig = 0; rig < batch.rigCount(); rig++) {
        if (batch.fits(job, rig)) {
          fitting++;
          shortest = Math.min(shortest, batch.plainSeconds(job, rig));
        }
      }
      logScarcity[job] = -StrictMath.log(Math.max(1, fitting));
      sum += fitting == 0 ? 0 : shortest;
    }
    this.meanSeconds = Math.max(1, sum / Math.max(1, batch.jobCount()));
  }

  @Override
  public int choose(int rig, int time, Timeline timeline) {
    int best = pinnedHere(rig);
    if (best == NONE) {
      double bestIndex = Double.NEGATIVE_INFINITY;
      for (int job = 0; job < taken.length; job++) {
        if (!taken[job] && batch.fits(job, rig) && batch.pinnedPlace(job) < 0) {
          double index = index(job, rig, time, timeline);
          if (index > bestIndex) {
            bestIndex = index;
            best = job;
          }
        }
      }
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

  /** Logarithm of the index; minus infinity where the job could not end in time to be allowed. */
  private double index(int job, int rig, int time, Timeline timeline) {
    int seconds = Math.max(1, batch.plainSeconds(job, rig));
    int setup = timeline.setupSecondsNow(rig, job);
    int wait = Math.max(0, batch.ready(job) - time);
    int end = time + wait + setup + seconds;
    if (end > batch.latestEnd(job, rig)) {
      return Double.NEGATIVE_INFINITY;
    }
    double slack = Math.max(0.0, (double) batch.due(job) - seconds - time - wait);
    // A promise far away and none at all weigh the same.
    slack = Math.min(slack, 40 * rule.dueScale() * meanSeconds);
    return StrictMath.log(batch.weight(job) / (double) seconds)
        - slack / (rule.dueScale() * meanSeconds)
        - setup / (rule.setupScale() * meanSetupSeconds)
        - wait / (rule.waitScale() * meanSeconds)
        + rule.scarcity() * logScarcity[job];
  }
}
