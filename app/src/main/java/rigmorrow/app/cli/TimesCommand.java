package rigmorrow.app.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.report.JobOnRig;
import rigmorrow.app.report.Json;
import rigmorrow.app.report.TimesText;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** Says how the time of one job on one rig is made up. */
@Command(
    name = "times",
    description = "Show how the time of one job on one rig is made up, term by term.",
    footer = {
      "Examples:",
      "  rigmorrow times floor.yaml shot-list.csv --job J-017 --rig R2",
      "  rigmorrow times floor.yaml shot-list.csv --job J-017 --rig R2 --json"
    })
final class TimesCommand implements Callable<Integer> {
  @Mixin private ShotListOptions files;

  @Option(names = "--job", paramLabel = "ID", required = true, description = "Which job.")
  private String job;

  @Option(names = "--rig", paramLabel = "ID", required = true, description = "Which rig.")
  private String rig;

  @Mixin private CommonOptions common;

  private final Session session;

  TimesCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    Batch batch = new Inputs(session).batch(files.source(), null);
    ShotJob asked = Inputs.job(batch.shotList(), job);
    Rig onRig =
        batch
            .floor()
            .rig(rig)
            .orElseThrow(
                () ->
                    RefusedException.unknown(
                        "--rig", rig, batch.floor().rigs().stream().map(Rig::id).toList()));
    if (!asked.item().measured()) {
      String accepted = "a measured job: length, width, height and mass known";
      throw new RefusedException(
          "--job: " + job + " needs measuring first; accepted: " + accepted,
          List.of(new InputProblem("", "command line", "--job", job, accepted)));
    }
    JobOnRig answer = JobOnRig.of(batch.floor(), asked, onRig);
    if (common.json) {
      session.print(List.of(Json.text(Json.times(answer))));
    } else {
      session.print(new TimesText(answer, session.console()).lines());
    }
    return ExitCodes.DONE;
  }
}
