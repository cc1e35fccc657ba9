package rigmorrow.app.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.report.FitText;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** Says which rig can take which job. */
@Command(
    name = "fit",
    description = "Check which rig can take which job, with every reason why not.",
    footer = {
      "Examples:",
      "  rigmorrow fit floor.yaml shot-list.csv",
      "  rigmorrow fit floor.yaml shot-list.csv --job J-017",
      "  rigmorrow fit floor.yaml shot-list.csv --json > fit.json"
    })
final class FitCommand implements Callable<Integer> {
  @Mixin private ShotListOptions files;

  @Option(names = "--job", paramLabel = "ID", description = "Only this job.")
  private @Nullable String job;

  @Mixin private CommonOptions common;

  private final Session session;

  FitCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    Batch batch = new Inputs(session).batch(files.source(), null);
    List<ShotJob> jobs =
        job == null ? batch.shotList().jobs() : List.of(Inputs.job(batch.shotList(), job));
    FitCheck check = new FitCheck(batch.floor());
    List<JobFit> fits = jobs.stream().map(check::of).toList();
    if (common.json) {
      session.print(List.of(Json.text(Json.fit(fits))));
    } else {
      session.print(new FitText(jobs, fits, batch.floor().rigs(), session.console()).lines());
    }
    return ExitCodes.DONE;
  }
}
