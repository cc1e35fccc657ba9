package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.app.cli.options.PageOptions;
import rigmorrow.app.cli.options.WhoseOptions;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.PlannedBatch;
import rigmorrow.app.planning.HandedOut;
import rigmorrow.app.runsheet.RunSheets;
import rigmorrow.app.runsheet.SheetChoice;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.Breach;

/** Writes the run sheets of a plan. */
@Command(
    name = "runsheets",
    description = "Write the run sheets of a plan as one PDF or HTML file to print.",
    footer = {
      "Examples:",
      "  rigmorrow runsheets floor.yaml shot-list.csv plan.json --out sheets.pdf",
      "  rigmorrow runsheets floor.yaml shot-list.csv plan.json --out sheets.html",
      "  rigmorrow runsheets floor.yaml shot-list.csv plan.json --out r1.pdf --rig R1",
      "      --paper letter --overwrite"
    })
final class RunSheetsCommand implements Callable<Integer> {
  @Mixin private PlanFileOptions files;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "File to write: its name ends in .pdf or .html.")
  private Path out;

  @Mixin private PageOptions page;
  @Mixin private WhoseOptions whose;
  @Mixin private CommonOptions common;

  private final Session session;

  RunSheetsCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws InputException, IOException {
    Path file = page.target(out, session);
    PlannedBatch planned = new Inputs(session).planned(files.files.source(), files.plan);
    List<Breach> breaches = planned.breaches();
    SheetChoice choice = whose.of(planned.batch());
    try {
      RunSheets sheets =
          new RunSheets(
              planned.batch(),
              planned.plan(),
              PlanStamp.ofPlan(planned.batch(), planned.plan()),
              page.paper(),
              choice);
      page.write(file, session, sheets::html, sheets::pdf);
    } catch (IllegalArgumentException e) {
      throw planned.another(e);
    }
    return new HandedOut(session, common.json).tell(List.of(out), breaches);
  }
}
