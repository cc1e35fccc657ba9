package rigmorrow.solver.explain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.WorkModel;
import rigmorrow.solver.timeline.JobFacts;

/**
 * Fit and work of planned jobs on the rigs they are on, worked out once. They rest on the item, the
 * recipe and the rig, so they hold in any batch that differs in hours, crew, pieces of kit, times
 * and pins. A job that is left out is taken to fit nowhere, since no order has it.
 */
final class KnownFacts implements JobFacts {
  private final Floor floor;
  private final FitCheck check;
  private final WorkModel model;

  /** Where each planned job is. */
  private final Map<String, Rig> rigByJob = new HashMap<>();

  private final Map<Pair, RigFit> fits = new HashMap<>();
  private final Map<Pair, JobWork> works = new HashMap<>();

  private record Pair(String job, String rig) {}

  KnownFacts(Floor floor, Orders orders) {
    this.floor = floor;
    this.check = new FitCheck(floor);
    this.model = new WorkModel(floor);
    for (int rig = 0; rig < orders.byRig().size(); rig++) {
      for (String job : orders.byRig().get(rig)) {
        rigByJob.put(job, floor.rigs().get(rig));
      }
    }
  }

  @Override
  public JobFit fit(ShotJob job) {
    if (!job.item().measured()) {
      return check.of(job);
    }
    Rig rig = rigByJob.get(job.id());
    return answers(job, rig == null ? List.of() : List.of(rig));
  }

  @Override
  public JobWork work(ShotJob job, Rig rig) {
    return works.computeIfAbsent(new Pair(job.id(), rig.id()), key -> model.of(job, rig));
  }

  /** The answers of every rig. */
  JobFit everywhere(ShotJob job) {
    return job.item().measured() ? answers(job, floor.rigs()) : check.of(job);
  }

  private JobFit answers(ShotJob job, List<Rig> rigs) {
    List<RigFit> answers =
        rigs.stream()
            .map(
                rig ->
                    fits.computeIfAbsent(new Pair(job.id(), rig.id()), key -> check.of(job, rig)))
            .toList();
    return new JobFit(job.id(), List.of(), job.item().estimated(), answers);
  }

  /**
   * The same, but one job is asked of every rig.
   *
   * @param other the floor when it is a changed one, whose crew may make more possible
   */
  JobFacts asking(String id, @Nullable Floor other) {
    FitCheck anew = other == null ? null : new FitCheck(other);
    return new JobFacts() {
      @Override
      public JobFit fit(ShotJob job) {
        if (!job.id().equals(id)) {
          return KnownFacts.this.fit(job);
        }
        return anew == null ? everywhere(job) : anew.of(job);
      }

      @Override
      public JobWork work(ShotJob job, Rig rig) {
        return KnownFacts.this.work(job, rig);
      }
    };
  }
}
