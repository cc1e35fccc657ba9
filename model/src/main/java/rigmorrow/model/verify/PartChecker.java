package rigmorrow.model.verify;

import java.util.List;
import java.util.function.Supplier;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.time.Span;
import rigmorrow.model.work.JobWork;

/** Whether the parts of each job follow each other and take the time they must. */
final class PartChecker {
  private final Floor floor;
  private final BreachLog log;

  PartChecker(Floor floor, BreachLog log) {
    this.floor = floor;
    this.log = log;
  }

  void check(List<PlannedRun> runs) {
    for (PlannedRun run : runs) {
      order(run);
      changeoverTime(run);
      JobWork work = run.work();
      if (work != null) {
        length(run, "load", run.planned().load().span(), work.load().seconds());
        length(run, "capture", run.planned().capture(), work.captureSeconds());
        length(run, "unload", run.planned().unload().span(), work.unload().seconds());
      }
    }
  }

  private void order(PlannedRun run) {
    PlannedJob planned = run.planned();
    Attended changeover = planned.changeover();
    Span load = planned.load().span();
    if (changeover != null) {
      notBefore(run, "loading", load.start(), "the changeover's end", changeover.span().end());
    }
    int ready = Math.max(load.end(), planned.warmedUpAt());
    int captureStart = planned.capture().start();
    log.add(
        FloorRule.JOB_ORDER,
        run.id(),
        Math.abs((long) captureStart - ready),
        () ->
            "Capture of "
                + run.id()
                + " starts at "
                + log.time(captureStart)
                + " instead of "
                + log.time(ready)
                + ", when it is loaded and warmed up.");
    int unloadStart = planned.unload().span().start();
    notBefore(run, "unloading", unloadStart, "capture's end", planned.capture().end());
  }

  private void notBefore(PlannedRun run, String part, int start, String what, int earliest) {
    log.add(
        FloorRule.JOB_ORDER,
        run.id(),
        (long) earliest - start,
        () ->
            "The "
                + part
                + " of "
                + run.id()
                + " starts at "
                + log.time(start)
                + ", before "
                + what
                + " at "
                + log.time(earliest)
                + ".");
  }

  /**
   * The time follows from the steps the plan lists; whether they are the right ones is asked
   * elsewhere.
   */
  private void changeoverTime(PlannedRun run) {
    PlannedJob planned = run.planned();
    Attended changeover = planned.changeover();
    if (changeover == null) {
      int late = planned.warmedUpAt() - planned.load().span().start();
      wrongTime(run, () -> "wait for warming up without a changeover", late, Math.min(late, 0));
      return;
    }
    var rig = run.rig();
    if (rig != null && !planned.steps().isEmpty()) {
      ExpectedSteps.Sum sum = ExpectedSteps.sum(planned.steps(), floor.sharesChangeovers(rig));
      length(run, "changeover", changeover.span(), sum.attendedSeconds());
      int tail = planned.warmedUpAt() - changeover.span().end();
      wrongTime(run, () -> "warm-up after the changeover", tail, sum.tailSeconds());
    }
  }

  private void length(PlannedRun run, String part, Span span, int seconds) {
    wrongTime(run, () -> part + " from " + log.times(span), span.seconds(), seconds);
  }

  private void wrongTime(PlannedRun run, Supplier<String> what, int actual, int expected) {
    log.add(
        FloorRule.STEP_TIME,
        run.id(),
        Math.abs((long) actual - expected),
        () ->
            "Job "
                + run.id()
                + ": "
                + what.get()
                + " takes "
                + actual
                + " s instead of "
                + expected
                + " s.");
  }
}
