package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigmorrow.app.cli.options.Bounds;
import rigmorrow.app.cli.options.PageOptions;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.labels.LabelGrid;
import rigmorrow.app.labels.Labels;
import rigmorrow.app.planning.HandedOut;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.shot.Batch;

/** Writes labels for the samples of a shot list. */
@Command(
    name = "labels",
    description = {
      "Write a sheet of labels with bar codes, one for each sample.",
      "A label has article number, name, jobs and a bar code: EAN, UPC or ITF-14 of the",
      "GTIN, else Code 128 or QR of the article number."
    },
    footer = {
      "Examples:",
      "  rigmorrow labels floor.yaml shot-list.csv",
      "  rigmorrow labels floor.yaml shot-list.csv --out labels.html --paper letter",
      "  rigmorrow labels floor.yaml shot-list.csv --columns 2 --rows 5 --overwrite"
    })
final class LabelsCommand implements Callable<Integer> {
  private static final int MOST_COLUMNS = 8;
  private static final int MOST_ROWS = 30;

  @Mixin private ShotListOptions files;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      defaultValue = "labels.pdf",
      description = "File to write, .pdf or .html. Default: ${DEFAULT-VALUE}.")
  private Path out;

  @Mixin private PageOptions page;

  @Option(
      names = "--columns",
      paramLabel = "N",
      defaultValue = "3",
      description = "Labels side by side, 1 to 8. Default: ${DEFAULT-VALUE}.")
  private int columns;

  @Option(
      names = "--rows",
      paramLabel = "N",
      defaultValue = "7",
      description = "Labels below each other, 1 to 30. Default: ${DEFAULT-VALUE}.")
  private int rows;

  @Mixin private CommonOptions common;

  @Spec private CommandLine.Model.CommandSpec spec;

  private final Session session;

  LabelsCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws InputException, IOException {
    Bounds bounds = new Bounds(spec);
    bounds.between("--columns", columns, 1, MOST_COLUMNS);
    bounds.between("--rows", rows, 1, MOST_ROWS);
    Path file = page.target(out, session);
    Batch batch = new Inputs(session).batch(files.source(), null);
    Labels labels =
        new Labels(
            batch.shotList(),
            batch.floor().name(),
            PlanStamp.ofShotList(batch.shotList()),
            new LabelGrid(page.paper(), columns, rows),
            "fewer --columns or --rows");
    page.write(file, session, labels::html, labels::pdf);
    new HandedOut(session, common.json).tell(out);
    return ExitCodes.DONE;
  }
}
