package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.Span;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.WorkModel;

/**
 * A planned job beside the facts it is held against.
 *
 * @param rigId the rig the plan names
 * @param rig that rig; null when the floor has none of this id
 * @param place 0 for the first job of the rig
 * @param planned what the plan says
 * @param job the job of the shot list; null when it has none of this id
 * @param work what the job asks for there; null when it cannot be computed
 */
record PlannedRun(
    String rigId,
    @Nullable Rig rig,
    int place,
    PlannedJob planned,
    @Nullable ShotJob job,
    @Nullable JobWork work) {

  /** Every planned job, rig by rig in the plan's order. */
  static List<PlannedRun> of(Batch batch, Plan plan) {
    WorkModel model = new WorkModel(batch.floor());
    List<PlannedRun> runs = new ArrayList<>();
    for (RigPlan rigPlan : plan.rigs()) {
      Rig rig = batch.floor().rig(rigPlan.rig()).orElse(null);
      for (int place = 0; place < rigPlan.jobs().size(); place++) {
        PlannedJob planned = rigPlan.jobs().get(place);
        ShotJob job = job(batch, planned.job());
        JobWork work =
            rig != null && job != null && job.item().measured() ? model.of(job, rig) : null;
        runs.add(new PlannedRun(rigPlan.rig(), rig, place, planned, job, work));
      }
    }
    return List.copyOf(runs);
  }

  /** The job of the shot list with this id, or null. */
  static @Nullable ShotJob job(Batch batch, String id) {
    return batch.shotList().jobs().stream()
        .filter(job -> job.id().equals(id))
        .findFirst()
        .orElse(null);
  }

  /** The job's id. */
  String id() {
    return planned.job();
  }

  /** From the first second of any part to the last, even where the parts are out of order. */
  Span whole() {
    return new Span(
        parts().mapToInt(Span::start).min().orElseThrow(),
        parts().mapToInt(Span::end).max().orElseThrow());
  }

  /** Seconds that two jobs share, 0 when they merely touch. */
  int sharedSeconds(PlannedRun other) {
    return sharedSeconds(whole(), other.whole());
  }

  /** Seconds that two spans share, 0 when they merely touch. */
  static int sharedSeconds(Span one, Span other) {
    return Math.max(0, Math.min(one.end(), other.end()) - Math.max(one.start(), other.start()));
  }

  private Stream<Span> parts() {
    Attended changeover = planned.changeover();
    Stream<Span> rest =
        Stream.of(planned.load().span(), planned.capture(), planned.unload().span());
    return changeover == null ? rest : Stream.concat(Stream.of(changeover.span()), rest);
  }
}
