package rigmorrow.model.verify;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.Span;

/** Whether each rig does one job at a time, in its hours and within the plan. */
final class RigChecker {
  private final Batch batch;
  private final BreachLog log;

  RigChecker(Batch batch, BreachLog log) {
    this.batch = batch;
    this.log = log;
  }

  void check(List<PlannedRun> runs) {
    oneJobAtATime(runs);
    int horizon = log.clock().horizonSeconds();
    for (PlannedRun run : runs) {
      Span whole = run.whole();
      log.add(
          FloorRule.WITHIN_PLAN,
          run.id(),
          (long) whole.end() - horizon,
          "Job "
              + run.id()
              + " ends at "
              + log.time(whole.end())
              + ", after the plan's end at "
              + log.time(horizon)
              + ".");
    }
    for (Rig rig : batch.floor().rigs()) {
      OpenTime open = OpenTime.of(rig, log.clock());
      runs.stream().filter(run -> run.rigId().equals(rig.id())).forEach(run -> hours(open, run));
    }
  }

  private void hours(OpenTime open, PlannedRun run) {
    int closed = open.closedSeconds(run.whole());
    log.add(
        FloorRule.RIG_HOURS,
        run.id(),
        closed,
        "Job "
            + run.id()
            + " takes rig "
            + run.rigId()
            + " from "
            + log.times(run.whole())
            + ", "
            + closed
            + " s of it outside the rig's hours.");
  }

  private void oneJobAtATime(List<PlannedRun> runs) {
    Map<String, PlannedRun> latestByRig = new HashMap<>();
    for (PlannedRun run : runs) {
      PlannedRun before = latestByRig.get(run.rigId());
      if (before != null) {
        log.add(
            FloorRule.RIG_ONE_JOB,
            run.rigId(),
            (long) before.whole().end() - run.whole().start(),
            "Job "
                + run.id()
                + " starts on rig "
                + run.rigId()
                + " at "
                + log.time(run.whole().start())
                + ", before job "
                + before.id()
                + " ends there at "
                + log.time(before.whole().end())
                + ".");
      }
      if (before == null || run.whole().end() > before.whole().end()) {
        latestByRig.put(run.rigId(), run);
      }
    }
  }
}
