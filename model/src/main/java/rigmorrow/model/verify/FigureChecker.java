package rigmorrow.model.verify;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** Whether the plan's figures are those of its times. Runs last: it asks what else is broken. */
final class FigureChecker {
  /** The hard rules that the figure "hard" sums up. */
  private static final Set<FloorRule> WEIGHED =
      EnumSet.of(
          FloorRule.RIG_TAKES_JOB,
          FloorRule.RIG_HOURS,
          FloorRule.SAMPLE_LEAVES,
          FloorRule.MUST_PROMISE,
          FloorRule.PIN_KEPT,
          FloorRule.WITHIN_PLAN);

  private static final long SECONDS_PER_MINUTE = 60;

  private final Batch batch;
  private final BreachLog log;

  FigureChecker(Batch batch, BreachLog log) {
    this.batch = batch;
    this.log = log;
  }

  void check(Plan plan, List<PlannedRun> runs) {
    PlanFigures stated = plan.figures();
    PlanFigures own = figures(plan, runs);
    boolean broken = log.breaches().stream().anyMatch(breach -> WEIGHED.contains(breach.rule()));
    if (broken != (stated.hard() != 0)) {
      log.add(
          FloorRule.FIGURES,
          "hard",
          Math.max(1, Math.abs(stated.hard())),
          "The plan states hard "
              + stated.hard()
              + " and "
              + (broken ? "breaks" : "keeps")
              + " the hard rules.");
    }
    same("leftOutPoints", stated.leftOutPoints(), own.leftOutPoints());
    same("latenessPoints", stated.latenessPoints(), own.latenessPoints());
    same("changeoverPoints", stated.changeoverPoints(), own.changeoverPoints());
    same("finishingPoints", stated.finishingPoints(), own.finishingPoints());
    same("planned", stated.planned(), own.planned());
    same("leftOut", stated.leftOut(), own.leftOut());
    same("lateJobs", stated.lateJobs(), own.lateJobs());
    same("lateSeconds", stated.lateSeconds(), own.lateSeconds());
    same("changeoverSeconds", stated.changeoverSeconds(), own.changeoverSeconds());
    same("finishedAt", stated.finishedAt(), own.finishedAt());
    for (PlannedRun run : runs) {
      same(run.id(), run.planned().lateSeconds(), lateSeconds(run));
    }
  }

  /** Every figure from the plan's times; the hard one is taken as stated. */
  PlanFigures figures(Plan plan, List<PlannedRun> runs) {
    long weightedLate = 0;
    long late = 0;
    int lateJobs = 0;
    long changeover = 0;
    int finishedAt = 0;
    for (PlannedRun run : runs) {
      ShotJob job = run.job();
      int seconds = lateSeconds(run);
      late += seconds;
      weightedLate += job == null ? 0 : (long) job.weight() * seconds;
      lateJobs += seconds > 0 ? 1 : 0;
      Attended attended = run.planned().changeover();
      changeover += attended == null ? 0 : attended.span().seconds();
      finishedAt = Math.max(finishedAt, run.planned().unload().span().end());
    }
    Weights weights = batch.floor().weights();
    long running = runs.isEmpty() ? 0 : Math.max(0, finishedAt - firstOpening());
    return new PlanFigures(
        plan.figures().hard(),
        leftOutPoints(plan),
        points(weightedLate, weights.latenessPerMinute()),
        points(changeover, weights.changeoverPerMinute()),
        points(running, weights.finishingPerMinute()),
        runs.size(),
        plan.leftOut().size(),
        lateJobs,
        late,
        changeover,
        finishedAt);
  }

  private int lateSeconds(PlannedRun run) {
    ShotJob job = run.job();
    Promise promise = job == null ? null : job.promise();
    return promise == null
        ? 0
        : Math.max(0, run.planned().capture().end() - log.clock().secondsAt(promise.dueAt()));
  }

  private long leftOutPoints(Plan plan) {
    long points = 0;
    for (LeftOut leftOut : plan.leftOut()) {
      ShotJob job = PlannedRun.job(batch, leftOut.job());
      if (job != null) {
        long factor = job.must() ? batch.floor().weights().mustFactor() : 1;
        points += factor * job.weight();
      }
    }
    return points;
  }

  private int firstOpening() {
    return batch.floor().rigs().stream()
        .map(rig -> OpenTime.of(rig, log.clock()).firstOpening())
        .flatMapToInt(OptionalInt::stream)
        .min()
        .orElse(0);
  }

  private static long points(long seconds, int perMinute) {
    long product = seconds * perMinute;
    return product / SECONDS_PER_MINUTE + (product % SECONDS_PER_MINUTE == 0 ? 0 : 1);
  }

  private void same(String figure, long stated, long own) {
    log.add(
        FloorRule.FIGURES,
        figure,
        Math.abs(stated - own),
        "The plan states " + stated + " for " + figure + "; its times give " + own + ".");
  }
}
