package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.FitReason;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** Whether every job is there once, on a rig that can take it. */
final class CoverageChecker {
  private final Batch batch;
  private final BreachLog log;

  CoverageChecker(Batch batch, BreachLog log) {
    this.batch = batch;
    this.log = log;
  }

  void check(Plan plan, List<PlannedRun> runs) {
    List<String> named = new ArrayList<>(runs.stream().map(PlannedRun::id).toList());
    named.addAll(plan.leftOut().stream().map(LeftOut::job).toList());
    once("job", batch.shotList().jobs().stream().map(ShotJob::id).toList(), named);
    once(
        "rig",
        batch.floor().rigs().stream().map(Rig::id).toList(),
        plan.rigs().stream().map(RigPlan::rig).toList());
    FitCheck fit = new FitCheck(batch.floor());
    runs.forEach(run -> fits(fit, run));
  }

  private void once(String what, List<String> wanted, List<String> named) {
    Set<String> all = new LinkedHashSet<>(wanted);
    all.addAll(named);
    for (String id : all) {
      int times = Collections.frequency(named, id);
      if (!wanted.contains(id)) {
        log.add(
            FloorRule.JOB_PLANNED_ONCE,
            id,
            times,
            "The plan names " + what + " " + id + ", which there is not.");
      } else {
        log.add(
            FloorRule.JOB_PLANNED_ONCE,
            id,
            Math.abs(times - 1L),
            "The plan names " + what + " " + id + " " + times + " times instead of once.");
      }
    }
  }

  private void fits(FitCheck fit, PlannedRun run) {
    ShotJob job = run.job();
    Rig rig = run.rig();
    if (job == null || rig == null) {
      return;
    }
    if (!job.item().measured()) {
      List<String> missing = fit.of(job).unmeasured();
      log.add(
          FloorRule.RIG_TAKES_JOB,
          job.id(),
          missing.size(),
          "Job " + job.id() + " is on rig " + rig.id() + " without " + String.join(", ", missing));
      return;
    }
    List<FitReason> reasons = fit.of(job, rig).reasons();
    List<String> figures =
        reasons.stream()
            .map(
                reason -> reason.rule() + " needs " + reason.needed() + ", has " + reason.offered())
            .toList();
    log.add(
        FloorRule.RIG_TAKES_JOB,
        job.id(),
        reasons.size(),
        "Rig " + rig.id() + " cannot take job " + job.id() + ": " + String.join("; ", figures));
  }
}
