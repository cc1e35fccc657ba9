package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.SetupRequests;
import rigmorrow.model.work.WorkModel;

/** Fills the card of a planned job. */
final class JobCards {

  private final Batch batch;
  private final Names names;
  private final TimeText times;
  private final JobBreaches breaches;
  private final WorkModel work;

  JobCards(Batch batch, Names names, TimeText times, JobBreaches breaches) {
    this.batch = batch;
    this.names = names;
    this.times = times;
    this.breaches = breaches;
    this.work = new WorkModel(batch.floor());
  }

  JobCard of(PlannedJob planned, Rig rig) {
    ShotJob job = names.job(planned.job());
    Recipe recipe = recipe(job);
    String note = job.note();
    return new JobCard(
        JobCard.Label.of(job),
        names.pinned(job.id()),
        breaches.of(job.id()),
        ItemText.measures(job.item()),
        setup(job),
        planned.steps().stream().map(JobCards::step).toList(),
        planned.kit().stream().map(use -> kit(use, rig)).toList(),
        ItemText.loading(job.item()),
        ItemText.unloading(job.item()),
        recipe.label(),
        RecipeText.pictures(recipe),
        promise(job, planned),
        times.lateSeconds(job, planned) > 0,
        sampleTimes(job),
        cautions(job, rig),
        note == null ? "" : note);
  }

  private Recipe recipe(ShotJob job) {
    return batch
        .floor()
        .recipe(job.recipe())
        .orElseThrow(() -> new IllegalArgumentException("no recipe " + job.recipe()));
  }

  private String setup(ShotJob job) {
    return names.setup(SetupRequests.of(batch.floor(), job)).stream()
        .map(value -> value.label() + ": " + value.value())
        .collect(Collectors.joining("; "));
  }

  private static JobCard.Step step(ChangeoverStep step) {
    String time = TimeText.duration(step.attendedSeconds());
    if (step.unattendedSeconds() > 0) {
      time += ", then " + TimeText.duration(step.unattendedSeconds()) + " by itself";
    }
    return new JobCard.Step(step.text(), time, step.people() > 1 ? step.people() + " people" : "");
  }

  private String kit(KitUse use, Rig rig) {
    String piece = names.kit(use.kit()) + ", " + use.unit();
    return use.from().equals(rig.id())
        ? piece + ": here already"
        : piece + ": fetch from " + names.place(use.from());
  }

  private String promise(ShotJob job, PlannedJob planned) {
    Promise promise = job.promise();
    if (promise == null) {
      return "No promise";
    }
    String due = "Due " + times.local(promise.dueAt()) + (promise.must() ? " (must): " : ": ");
    int late = times.lateSeconds(job, planned);
    if (late > 0) {
      return due + "LATE by " + TimeText.duration(late);
    }
    int spare = times.clock().secondsAt(promise.dueAt()) - planned.capture().end();
    return due + "kept, " + TimeText.duration(Math.max(0, spare)) + " to spare";
  }

  private List<String> sampleTimes(ShotJob job) {
    List<String> lines = new ArrayList<>();
    if (job.arrivesAt() != null) {
      lines.add("Sample arrives " + times.local(job.arrivesAt()));
    }
    if (job.leavesAt() != null) {
      lines.add("Sample must be off the rig by " + times.local(job.leavesAt()));
    }
    return lines;
  }

  /** A job that nobody measured has no computed cautions: say so rather than print none. */
  private List<String> cautions(ShotJob job, Rig rig) {
    return job.item().measured()
        ? work.of(job, rig).cautions()
        : List.of("Size or mass is not known: measure and weigh before placing it.");
  }
}
