package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.files.PlannedBatch;
import rigmorrow.app.report.Json;
import rigmorrow.app.runsheet.RunSheets;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.Breach;

/** Writes the run sheets of a plan. */
@Command(
    name = "runsheets",
    description = "Write the run sheets of a plan as one HTML file to print.",
    footer = {
      "Examples:",
      "  rigmorrow runsheets floor.yaml shot-list.csv plan.json --out run-sheets.html",
      "  rigmorrow runsheets floor.yaml shot-list.csv plan.json --out sheets.html --overwrite"
    })
final class RunSheetsCommand implements Callable<Integer> {
  @Mixin private PlanFileOptions files;

  @Option(
      names = "--out",
      paramLabel = "FILE.html",
      required = true,
      description = "File to write.")
  private Path out;

  @Option(names = "--overwrite", description = "Replace the file when it exists.")
  private boolean overwrite;

  @Mixin private CommonOptions common;

  private final Session session;

  RunSheetsCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws InputException, IOException {
    Path file = session.folder().resolve(out);
    OutputFiles.refuseExisting(List.of(file), overwrite);
    PlannedBatch planned = new Inputs(session).planned(files.files.source(), files.plan);
    List<Breach> breaches = planned.breaches();
    String html;
    try {
      html = RunSheets.html(planned.batch(), planned.plan());
    } catch (IllegalArgumentException e) {
      throw planned.another(e);
    }
    OutputFiles.write(file, html);
    if (common.json) {
      session.print(List.of(Json.text(Json.document().put("written", out.toString()))));
    } else {
      session.note("written: " + out);
    }
    if (breaches.isEmpty()) {
      return ExitCodes.DONE;
    }
    session.note("The plan breaks rules that must hold; the verify command lists them.");
    return ExitCodes.NO_PLAN;
  }
}
