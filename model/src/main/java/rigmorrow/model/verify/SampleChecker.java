package rigmorrow.model.verify;

import java.time.LocalDateTime;
import java.util.List;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.shot.ShotJob;

/** Whether each sample is there when it is wanted, in one place, and gone when it leaves. */
final class SampleChecker {
  private final BreachLog log;

  SampleChecker(BreachLog log) {
    this.log = log;
  }

  void check(List<PlannedRun> runs) {
    for (int i = 0; i < runs.size(); i++) {
      ShotJob job = runs.get(i).job();
      if (job == null) {
        continue;
      }
      arrivedAndLeaves(runs.get(i), job);
      for (PlannedRun other : runs.subList(i + 1, runs.size())) {
        ShotJob otherJob = other.job();
        if (otherJob != null && otherJob.sample().equals(job.sample())) {
          onePlace(job.sample(), runs.get(i), other);
        }
      }
    }
  }

  private void arrivedAndLeaves(PlannedRun run, ShotJob job) {
    LocalDateTime arrivesAt = job.arrivesAt();
    if (arrivesAt != null) {
      int arrival = log.clock().secondsAt(arrivesAt);
      int start = run.whole().start();
      log.add(
          FloorRule.SAMPLE_ARRIVED,
          job.id(),
          (long) arrival - start,
          () ->
              "Job "
                  + job.id()
                  + " starts at "
                  + log.time(start)
                  + ", before its sample arrives at "
                  + log.time(arrival)
                  + ".");
    }
    LocalDateTime leavesAt = job.leavesAt();
    if (leavesAt != null) {
      int leave = log.clock().secondsAt(leavesAt);
      int end = run.planned().unload().span().end();
      log.add(
          FloorRule.SAMPLE_LEAVES,
          job.id(),
          (long) end - leave,
          () ->
              "Job "
                  + job.id()
                  + " is unloaded at "
                  + log.time(end)
                  + ", after its sample leaves at "
                  + log.time(leave)
                  + ".");
    }
  }

  private void onePlace(String sample, PlannedRun run, PlannedRun other) {
    int shared = run.sharedSeconds(other);
    log.add(
        FloorRule.SAMPLE_ONE_PLACE,
        sample,
        shared,
        () ->
            "Sample "
                + sample
                + " is on rig "
                + run.rigId()
                + " for "
                + run.id()
                + " from "
                + log.times(run.whole())
                + " and on rig "
                + other.rigId()
                + " for "
                + other.id()
                + " from "
                + log.times(other.whole())
                + ", "
                + shared
                + " s at once.");
  }
}
