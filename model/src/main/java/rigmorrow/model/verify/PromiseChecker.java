package rigmorrow.model.verify;

import java.time.LocalDateTime;
import java.util.List;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** Whether must-promises and pins are kept, and what is left out by hand stays out. */
final class PromiseChecker {
  private final Batch batch;
  private final BreachLog log;

  PromiseChecker(Batch batch, BreachLog log) {
    this.batch = batch;
    this.log = log;
  }

  void check(List<PlannedRun> runs) {
    runs.forEach(this::must);
    for (Pin pin : batch.shotList().pins()) {
      List<PlannedRun> pinned = runs.stream().filter(run -> run.id().equals(pin.job())).toList();
      if (pinned.isEmpty()) {
        log.add(
            FloorRule.PIN_KEPT, pin.job(), 1, "Pinned job " + pin.job() + " is not in the plan.");
      }
      pinned.forEach(run -> kept(pin, run));
    }
    for (String held : batch.shotList().heldBack()) {
      if (runs.stream().anyMatch(run -> run.id().equals(held))) {
        log.add(FloorRule.HELD_BACK, held, 1, "Job " + held + " is planned, but left out by hand.");
      }
    }
  }

  private void must(PlannedRun run) {
    ShotJob job = run.job();
    Promise promise = job == null ? null : job.promise();
    if (promise == null || !promise.must()) {
      return;
    }
    int due = log.clock().secondsAt(promise.dueAt());
    int end = run.planned().capture().end();
    log.add(
        FloorRule.MUST_PROMISE,
        run.id(),
        (long) end - due,
        () ->
            "The pictures of "
                + run.id()
                + " are taken by "
                + log.time(end)
                + ", after the promise "
                + log.time(due)
                + ".");
  }

  private void kept(Pin pin, PlannedRun run) {
    if (!run.rigId().equals(pin.rig())) {
      log.add(
          FloorRule.PIN_KEPT,
          pin.job(),
          1,
          "Job " + pin.job() + " is on rig " + run.rigId() + ", pinned to " + pin.rig() + ".");
    }
    Integer place = pin.place();
    if (place != null && place != run.place()) {
      log.add(
          FloorRule.PIN_KEPT,
          pin.job(),
          Math.abs((long) place - run.place()),
          "Job "
              + pin.job()
              + " is at place "
              + (run.place() + 1)
              + " of "
              + run.rigId()
              + ", pinned to place "
              + (place + 1)
              + ".");
    }
    LocalDateTime startsAt = pin.startsAt();
    if (startsAt != null) {
      int pinned = log.clock().secondsAt(startsAt);
      int start = run.whole().start();
      log.add(
          FloorRule.PIN_KEPT,
          pin.job(),
          Math.abs((long) pinned - start),
          "Job "
              + pin.job()
              + " starts at "
              + log.time(start)
              + ", pinned to "
              + log.time(pinned)
              + ".");
    }
  }
}
