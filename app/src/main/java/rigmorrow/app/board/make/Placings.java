package rigmorrow.app.board.make;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.BoardView.SpanView;
import rigmorrow.app.board.view.JobView.PlacingView;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.shot.Batch;

/** Where and when jobs are done, for the page. */
final class Placings {
  private final Names names;

  Placings(Batch batch) {
    this.names = new Names(batch);
  }

  /** Every planned job by its id. */
  Map<String, PlacingView> of(Plan plan) {
    Map<String, PlacingView> placings = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      for (int place = 0; place < rig.jobs().size(); place++) {
        PlannedJob job = rig.jobs().get(place);
        placings.put(job.job(), placing(rig.rig(), place, job));
      }
    }
    return placings;
  }

  /** Jobs of the second plan that are not just as they are in the first. */
  List<PlacingView> changed(Plan before, Plan after) {
    Map<String, Placed> old = placed(before);
    List<PlacingView> changed = new ArrayList<>();
    for (RigPlan rig : after.rigs()) {
      for (int place = 0; place < rig.jobs().size(); place++) {
        PlannedJob job = rig.jobs().get(place);
        if (!new Placed(rig.rig(), place, job).equals(old.get(job.job()))) {
          changed.add(placing(rig.rig(), place, job));
        }
      }
    }
    return changed;
  }

  private record Placed(String rig, int place, PlannedJob job) {}

  private static Map<String, Placed> placed(Plan plan) {
    Map<String, Placed> placed = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      for (int place = 0; place < rig.jobs().size(); place++) {
        PlannedJob job = rig.jobs().get(place);
        placed.put(job.job(), new Placed(rig.rig(), place, job));
      }
    }
    return placed;
  }

  private PlacingView placing(String rig, int place, PlannedJob job) {
    Attended changeover = job.changeover();
    return new PlacingView(
        job.job(),
        rig,
        place,
        job.whole().start(),
        job.whole().end(),
        changeover == null ? null : Spans.of(changeover.span()),
        warmUp(job),
        Spans.of(job.load().span()),
        Spans.of(job.capture()),
        Spans.of(job.unload().span()),
        changeover == null ? List.of() : changeover.operators(),
        job.load().operators(),
        job.captureOperators(),
        job.unload().operators(),
        job.steps().stream().map(Placings::step).toList(),
        job.kit().stream().map(use -> kit(use, rig)).toList(),
        job.lateSeconds());
  }

  private static @Nullable SpanView warmUp(PlannedJob job) {
    Attended changeover = job.changeover();
    return changeover == null || job.warmedUpAt() <= changeover.span().end()
        ? null
        : new SpanView(changeover.span().end(), job.warmedUpAt());
  }

  private static String step(ChangeoverStep step) {
    return step.text()
        + ", "
        + TimeText.exact(step.attendedSeconds())
        + (step.unattendedSeconds() == 0
            ? ""
            : ", then " + TimeText.exact(step.unattendedSeconds()) + " by itself")
        + (step.people() > 1 ? ", " + step.people() + " people" : "");
  }

  private String kit(KitUse use, String rig) {
    String piece = names.kit(use.kit()) + ", " + use.unit();
    return use.from().equals(rig)
        ? piece + ": here already"
        : piece + ": from " + names.place(use.from());
  }
}
