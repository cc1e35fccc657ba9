package rigmorrow.app.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.PlannedBatch;
import rigmorrow.app.planning.Musts;
import rigmorrow.app.report.BreachText;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.Breach;

/**
 * Holds a plan against every rule, by a second computation that shares no timeline code with the
 * search.
 */
@Command(
    name = "verify",
    description =
        "Check a plan against every rule; the check shares no timeline code with the search.",
    footer = {
      "Examples:",
      "  rigmorrow verify floor.yaml shot-list.csv out/2026-03-02/plan.json",
      "  rigmorrow verify floor.yaml shot-list.csv plan.json --json"
    })
final class VerifyCommand implements Callable<Integer> {
  @Mixin private PlanFileOptions files;
  @Mixin private CommonOptions common;

  private final Session session;

  VerifyCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    PlannedBatch planned = new Inputs(session).planned(files.files.source(), files.plan);
    List<Breach> breaches = planned.breaches();
    if (common.json) {
      session.print(List.of(Json.text(Json.breaches(breaches))));
    } else {
      session.print(BreachText.lines(planned.plan(), breaches, session.console()));
    }
    boolean mustsKept = new Musts(session).kept(planned.batch(), planned.plan());
    return breaches.isEmpty() && mustsKept ? ExitCodes.DONE : ExitCodes.NO_PLAN;
  }
}
