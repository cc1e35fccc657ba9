package rigmorrow.app.planning;

import java.util.List;
import java.util.Objects;
import rigmorrow.app.report.Counted;
import rigmorrow.app.terminal.Session;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** Must-promises of jobs that a plan leaves out. */
public final class Musts {
  /** More stand in the plan itself. */
  private static final int MOST_MUSTS = 10;

  private final Session session;

  /**
   * @param session told of them
   */
  public Musts(Session session) {
    this.session = session;
  }

  /**
   * Says which must-promises are not kept because their jobs are left out: no script may take such
   * a plan for one that does all that must be done. What is left out by hand was decided, and told.
   *
   * @return false when some are left out that nobody decided on
   */
  public boolean kept(Batch batch, Plan plan) {
    List<LeftOut> musts = leftOut(batch, plan);
    for (LeftOut left : musts.subList(0, Math.min(musts.size(), MOST_MUSTS))) {
      boolean decided = left.cause() == LeftOut.Cause.HELD_BACK;
      ShotJob job = batch.shotList().job(left.job()).orElseThrow();
      Promise promise = Objects.requireNonNull(job.promise());
      session.note(
          "must-promise not kept: %s %s, due %s, is left out%s"
              .formatted(
                  job.id(),
                  job.name(),
                  promise.dueAt().toString().replace('T', ' '),
                  decided ? " by hand" : ": " + String.join(" ", left.sentences())));
    }
    if (musts.size() > MOST_MUSTS) {
      session.note(Counted.of(musts.size() - MOST_MUSTS, "more must-promise") + " not kept");
    }
    return musts.stream().allMatch(left -> left.cause() == LeftOut.Cause.HELD_BACK);
  }

  /** Jobs whose promise must be kept and that the plan leaves out, in the plan's order. */
  private static List<LeftOut> leftOut(Batch batch, Plan plan) {
    return plan.leftOut().stream()
        .filter(
            left ->
                batch
                    .shotList()
                    .job(left.job())
                    .map(ShotJob::promise)
                    .filter(Promise::must)
                    .isPresent())
        .toList();
  }
}
