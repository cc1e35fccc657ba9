package rigmorrow.app.board.touch;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.app.report.FitText;
import rigmorrow.data.shot.PlanReach;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.HandTimer;

/** Why a touch cannot be done at all, in sentences with figures. Each method adds what it finds. */
final class Refusals {
  private final Ground ground;
  private final HandTimer timer;
  private final TouchWords words;
  private final List<String> sentences = new ArrayList<>();

  Refusals(Ground ground, HandTimer timer, TouchWords words) {
    this.ground = ground;
    this.timer = timer;
    this.words = words;
  }

  List<String> sentences() {
    return List.copyOf(sentences);
  }

  boolean none() {
    return sentences.isEmpty();
  }

  void add(String sentence) {
    sentences.add(sentence);
  }

  /** The job, or nothing and a refusal. */
  Optional<ShotJob> known(String id) {
    Optional<ShotJob> job = ground.job(id);
    if (job.isEmpty()) {
      add("The shot list has no job " + id + ".");
    }
    return job;
  }

  /** Refuses a job that stands on no rig. */
  void planned(String id) {
    if (!ground.planned(id)) {
      add(words.job(id) + " is " + words.where(id) + "; plan it first.");
    }
  }

  /** Refuses a job whose pin keeps it from going to a rig, or from any other place on its own. */
  void pinned(String id, String rig) {
    ground.pin(id).ifPresent(pin -> pinned(id, pin, rig));
  }

  private void pinned(String id, Pin pin, String rig) {
    Integer place = pin.place();
    if (!running(pin) && (place != null || !pin.rig().equals(rig))) {
      String where = place == null ? pin.rig() : "place " + (place + 1) + " of " + pin.rig();
      add(words.job(id) + " is pinned to " + where + "; take its pin off first.");
    }
  }

  /** Refuses any pin. */
  void pinned(String id) {
    ground
        .pin(id)
        .filter(pin -> !running(pin))
        .ifPresent(
            pin -> add(words.job(id) + " is pinned to " + pin.rig() + "; take its pin off first."));
  }

  /** Refuses a job that is running or done. */
  void running(String id) {
    ground.pin(id).ifPresent(this::running);
  }

  private boolean running(Pin pin) {
    if (pin.state() == PinState.PLANNED) {
      return false;
    }
    String state = pin.state() == PinState.RUNNING ? "running" : "done";
    String sentence = words.job(pin.job()) + " is " + state + " and stays as it is.";
    if (!sentences.contains(sentence)) {
      add(sentence);
    }
    return true;
  }

  /** Refuses a job that no rig can take. */
  void fitsSomewhere(ShotJob job) {
    JobFit fit = timer.fit(job);
    if (fit.needsMeasuring()) {
      unmeasured(job, fit);
    } else if (!fit.fitsSomewhere()) {
      add("No rig can take " + words.job(job.id()) + ".");
      fit.nearestMiss().ifPresent(miss -> misfits(job, miss));
    }
  }

  /**
   * Refuses a rig that cannot take a job, or is never open for as long as it takes.
   *
   * @param without the ground with the job not held back
   */
  void takes(ShotJob job, String rig, Ground without) {
    JobFit fit = timer.fit(job);
    if (fit.needsMeasuring()) {
      unmeasured(job, fit);
      return;
    }
    RigFit answer = fit.on(rig).orElseThrow();
    if (!answer.fits()) {
      misfits(job, answer);
      return;
    }
    HandTimer.Room room = timer.room(without.batch(), ground.rigs().indexOf(rig), job.id());
    if (!room.enough()) {
      add(
          "%s takes %s on %s, which is open and staffed for %s in one go."
              .formatted(
                  words.job(job.id()),
                  Durations.of(room.neededSeconds()),
                  rig,
                  Durations.available(room.longestOpenSeconds())));
    }
  }

  private void unmeasured(ShotJob job, JobFit fit) {
    add(
        words.job(job.id())
            + " needs measuring: "
            + String.join(", ", fit.unmeasured())
            + " missing.");
  }

  private void misfits(ShotJob job, RigFit fit) {
    String reasons = fit.reasons().stream().map(FitText::line).collect(Collectors.joining("; "));
    add(fit.rig() + " cannot take " + words.job(job.id()) + ": " + reasons + ".");
  }

  /** Refuses a rig that the floor has not. */
  boolean rig(String rig) {
    if (!ground.rigs().contains(rig)) {
      add("The floor has no rig " + rig + "; it has " + String.join(", ", ground.rigs()) + ".");
      return false;
    }
    return true;
  }

  /**
   * Refuses a place that is none, or before what is running or done.
   *
   * @param others orders without the job
   */
  void place(Orders others, int rig, int place) {
    int length = others.length(rig);
    int first = others.firstFree(rig, ground.fixed());
    if (place < 0 || place > length) {
      add(
          "%s has %s beside it, so its place can be 1 to %d, not %d."
              .formatted(ground.rig(rig), Counted.of(length, "job"), length + 1, place + 1));
    } else if (place < first) {
      add(
          "%s on %s is running or done; the first free place is %d."
              .formatted(
                  words.job(others.byRig().get(rig).get(first - 1)), ground.rig(rig), first + 1));
    }
  }

  /** Refuses a start outside of the planned days, and a place that another job is pinned to. */
  void hold(Touch.Hold hold) {
    LocalDateTime startsAt = hold.startsAt();
    if (startsAt != null) {
      LocalDateTime first = ground.batch().shotList().date().atStartOfDay();
      LocalDateTime end = first.plusDays(ground.batch().shotList().days());
      if (startsAt.isBefore(first) || !startsAt.isBefore(end)) {
        add(
            "%s is outside of the planned days; they begin at %s and end at %s."
                .formatted(words.time(startsAt), TouchWords.dated(first), TouchWords.dated(end)));
      }
    }
    if (!hold.place() || !ground.planned(hold.job())) {
      return;
    }
    seat(hold.job(), ground.rig(ground.orders().rigOf(hold.job())), ground.placeOf(hold.job()));
  }

  /** Refuses a place that another job is pinned to. */
  void seat(String job, String rig, int place) {
    for (Pin pin : ground.batch().shotList().pins()) {
      Integer taken = pin.place();
      if (!pin.job().equals(job) && pin.rig().equals(rig) && taken != null && taken == place) {
        add(words.job(pin.job()) + " is pinned to " + TouchWords.place(rig, place) + " already.");
      }
    }
  }

  /** Refuses a promise that no shot list may hold. */
  void promise(ShotJob job, Promise promise) {
    LocalDateTime arrivesAt = job.arrivesAt();
    if (!PlanReach.holds(promise.dueAt().toLocalDate(), ground.batch().shotList().date())) {
      add(
          words.time(promise.dueAt())
              + " is too far off; accepted: "
              + PlanReach.accepted(ground.batch().shotList().date())
              + ".");
    } else if (arrivesAt != null && promise.dueAt().isBefore(arrivesAt)) {
      add(
          "The sample of %s arrives at %s, after %s."
              .formatted(words.job(job.id()), words.time(arrivesAt), words.time(promise.dueAt())));
    }
  }
}
