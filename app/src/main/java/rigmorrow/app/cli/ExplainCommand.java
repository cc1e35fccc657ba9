package rigmorrow.app.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.app.explain.ExplainJson;
import rigmorrow.app.explain.ExplainSentences;
import rigmorrow.app.explain.ExplainText;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.PlannedBatch;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.planning.HandedOut;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.explain.Explainer;

/** Says why a plan does with a job what it does. */
@Command(
    name = "explain",
    description = {
      "Explain a job of a plan: why there, what other rigs would cost, what stands in its way.",
      "Every claim is a plan worked out with that one thing changed. Without --job: all that is late"
          + " or left out, a line each."
    },
    footer = {
      "Examples:",
      "  rigmorrow explain floor.yaml shot-list.csv plan.json",
      "  rigmorrow explain floor.yaml shot-list.csv plan.json --job J-017",
      "  rigmorrow explain floor.yaml shot-list.csv plan.json --job J-017 --rig R2",
      "  rigmorrow explain floor.yaml shot-list.csv plan.json --job J-017 --json"
    })
final class ExplainCommand implements Callable<Integer> {
  @Mixin private PlanFileOptions files;

  @Option(names = "--job", paramLabel = "ID", description = "Which job. Default: a line each.")
  private @Nullable String job;

  @Option(names = "--rig", paramLabel = "ID", description = "With --job: only this rig.")
  private @Nullable String rig;

  @Mixin private CommonOptions common;

  private final Session session;

  ExplainCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    PlannedBatch planned = new Inputs(session).planned(files.files.source(), files.plan);
    refuseOptions(planned.batch());
    ExplainSentences sentences = new ExplainSentences(planned.batch(), planned.plan().origin());
    ExplainText text = new ExplainText(sentences, session.console());
    ExplainJson json = new ExplainJson(planned.batch(), sentences);
    Explainer explainer = explainer(planned);
    if (job == null) {
      List<Trouble> troubles = explainer.troubles();
      session.print(common.json ? List.of(Json.text(json.of(troubles))) : text.troubles(troubles));
      return HandedOut.exitCode(planned.breaches(), session);
    }
    Explanation answer = explainer.explain(job);
    Explanation shown = rig == null ? answer : answer.onlyRig(rig);
    session.print(
        common.json ? List.of(Json.text(json.of(shown))) : text.lines(sentences.of(shown)));
    return HandedOut.exitCode(planned.breaches(), session);
  }

  private void refuseOptions(Batch batch) {
    if (job != null) {
      Inputs.job(batch.shotList(), job);
    }
    if (rig != null && job == null) {
      String accepted = "--rig together with --job";
      throw new RefusedException(
          "--rig: " + rig + " without a job; accepted: " + accepted,
          List.of(new InputProblem("", "command line", "--rig", rig, accepted)));
    }
    if (rig != null && batch.floor().rig(rig).isEmpty()) {
      throw RefusedException.unknown(
          "--rig", rig, batch.floor().rigs().stream().map(Rig::id).toList());
    }
  }

  private static Explainer explainer(PlannedBatch planned) {
    try {
      return new Explainer(planned.batch(), planned.plan());
    } catch (IllegalArgumentException e) {
      throw planned.another(e);
    }
  }
}
