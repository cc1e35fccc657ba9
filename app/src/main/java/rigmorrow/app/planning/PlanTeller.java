package rigmorrow.app.planning;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.files.PlanOutput;
import rigmorrow.app.report.BreachText;
import rigmorrow.app.report.Json;
import rigmorrow.app.report.PlanJson;
import rigmorrow.app.report.PlanText;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.model.plan.Plan;

/** Tells what came of planning, and settles the exit code. */
public final class PlanTeller {
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
    boolean mustsKept = new Musts(session).kept(planning.batch(), planning.plan());
    return planning.workable() && mustsKept ? ExitCodes.DONE : ExitCodes.NO_PLAN;
  }
}
