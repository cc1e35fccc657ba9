package rigmorrow.solver.explain;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.JobRules;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.work.JobWork;

/** Reads what holds for a job from the batch. */
final class RulesOf {
  private final Question question;
  private final int rig;

  /**
   * @param rig number of the rig the job is on, or -1
   */
  RulesOf(Question question, int rig) {
    this.question = question;
    this.rig = rig;
  }

  JobRules rules() {
    ShotJob job = question.job();
    JobWork work =
        rig < 0 ? null : question.facts().work(job, question.batch().floor().rigs().get(rig));
    List<String> shared =
        question.batch().shotList().jobs().stream()
            .filter(one -> one.sample().equals(job.sample()) && !one.id().equals(job.id()))
            .map(ShotJob::id)
            .toList();
    boolean attended =
        question.batch().floor().recipe(job.recipe()).map(one -> one.attended()).orElse(false);
    return new JobRules(
        job.weight(),
        seconds(job.arrivesAt()),
        seconds(job.leavesAt()),
        seconds(job.promise() == null ? null : job.promise().dueAt()),
        job.must(),
        shared,
        work == null ? List.of() : work.kits(),
        work == null ? 0 : work.load().people(),
        work == null ? 0 : work.unload().people(),
        attended,
        job.item().estimated(),
        question.pin());
  }

  private @Nullable Integer seconds(@Nullable LocalDateTime time) {
    return time == null ? null : PlanClock.of(question.batch()).secondsAt(time);
  }
}
