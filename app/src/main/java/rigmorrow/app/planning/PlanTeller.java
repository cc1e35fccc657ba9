package rigmorrow.app.planning;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.files.PlanOutput;
import rigmorrow.app.report.BreachText;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Json;
import rigmorrow.app.report.PlanJson;
import rigmorrow.app.report.PlanText;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** Tells what came of planning, and settles the exit code. */
public final class PlanTeller {
  /** More stand in the plan itself. */
  private static final int MOST_MUSTS = 10;

  private final Session session;
  private final boolean json;
  private final boolean brief;

  /**
   * @param session where to write
   * @param json true for a document in place of text
   * @param brief true to leave out the list of every rig
   */
  public PlanTeller(Session session, boolean json, boolean brief) {
    this.session = session;
    this.json = json;
    this.brief = brief;
  }

  /**
   * Tells it.
   *
   * @param folder the files were written to; null when none were
   * @return the exit code
   */
  public int tell(Planning planning, @Nullable String folder) {
    Plan plan = planning.plan();
    if (json) {
      session.print(List.of(Json.text(PlanJson.of(planning.batch(), plan, planning.dispatch()))));
    } else {
      PlanText text = new PlanText(planning.batch(), plan, planning.dispatch(), session.console());
      session.print(text.lines(brief));
    }
    if (session.stop().requested()) {
      session.note("stopped early; best plan kept");
    }
    if (folder != null) {
      session.note("written to " + folder + ": " + String.join(", ", PlanOutput.names()));
    }
    if (!planning.breaches().isEmpty()) {
      BreachText.lines(plan, planning.breaches(), session.console()).forEach(session::note);
    } else if (!planning.workable()) {
      session.note("No job could be planned; the fit command says what stands in the way.");
    }
    boolean mustsKept = musts(planning);
    return planning.workable() && mustsKept ? ExitCodes.DONE : ExitCodes.NO_PLAN;
  }

  /**
   * Says which must-promises are not kept because their jobs are left out: no script may take such
   * a plan for one that does all that must be done. What is left out by hand was decided, and told.
   *
   * @return false when some are left out that nobody decided on
   */
  private boolean musts(Planning planning) {
    List<LeftOut> musts = planning.mustsLeftOut();
    for (LeftOut left : musts.subList(0, Math.min(musts.size(), MOST_MUSTS))) {
      boolean decided = left.cause() == LeftOut.Cause.HELD_BACK;
      ShotJob job = planning.batch().shotList().job(left.job()).orElseThrow();
      Promise promise = java.util.Objects.requireNonNull(job.promise());
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
}
