package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.files.PlanOutput;
import rigmorrow.app.planning.PlanTeller;
import rigmorrow.app.planning.Planning;
import rigmorrow.app.report.Json;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolverSettings;

/** Plans a shot list. */
@Command(
    name = "plan",
    description = {
      "Plan a shot list: which job on which rig, in which order, when, and by whom.",
      "Writes plan.json, plan.csv, run-sheets.html and run-sheets.pdf;",
      "Ctrl-C keeps the best plan found so far."
    },
    footer = {
      "Examples:",
      "  rigmorrow plan floor.yaml shot-list.csv                  plan tomorrow",
      "  rigmorrow plan floor.yaml shot-list.csv --date 2026-03-02 --time 60",
      "  rigmorrow plan floor.yaml shot-list.csv --dry-run        only check the files",
      "  rigmorrow plan floor.yaml shot-list.csv --json > plan-and-figures.json"
    })
final class PlanCommand implements Callable<Integer> {
  @Mixin private ShotListOptions files;
  @Mixin private SearchOptions search;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write in. Default: out/<date>; with --json nothing is written.")
  private @Nullable Path out;

  @Option(names = "--overwrite", description = "Replace files that are there already.")
  private boolean overwrite;

  @Option(
      names = "--dry-run",
      description = "Read and check everything; neither plan nor write, only say what would be.")
  private boolean dryRun;

  @Option(names = "--brief", description = "Leave out the list of every rig.")
  private boolean brief;

  @Mixin private CommonOptions common;

  @Spec private CommandLine.Model.CommandSpec spec;

  private final Session session;

  PlanCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    SolverSettings settings = search.settings(spec);
    Batch batch = new Inputs(session).batch(files.source(), null);
    Path folder = folder(batch);
    List<Path> targets =
        folder == null
            ? List.of()
            : PlanOutput.names().stream().map(session.folder().resolve(folder)::resolve).toList();
    OutputFiles.refuseExisting(targets, overwrite);
    Planning.noteEarlyPromises(batch, session);
    if (dryRun) {
      return dryRun(batch, folder);
    }
    Planning planning = Planning.of(batch, settings, search.firstOnly, session);
    if (folder != null) {
      String note =
          PlanOutput.write(
              session.folder().resolve(folder),
              batch,
              planning.plan(),
              PlanStamp.ofPlan(batch, planning.plan()));
      if (!note.isEmpty()) {
        session.note(note);
      }
    }
    PlanTeller teller = new PlanTeller(session, common.json, brief);
    return teller.tell(planning, folder == null ? null : folder.toString());
  }

  private @Nullable Path folder(Batch batch) {
    if (out != null) {
      return out;
    }
    return common.json ? null : Path.of("out", batch.shotList().date().toString());
  }

  private int dryRun(Batch batch, @Nullable Path folder) {
    String where = folder == null ? "nowhere" : folder.toString();
    String names = folder == null ? "" : ": " + String.join(", ", PlanOutput.names());
    if (common.json) {
      var document = Json.document().put("dryRun", true).put("out", folder == null ? null : where);
      session.print(List.of(Json.text(document.put("fit", Planning.fitInShort(batch)))));
      return ExitCodes.DONE;
    }
    session.print(
        List.of(
            Planning.fitInShort(batch),
            "would plan " + batch.shotList().date() + ", days: " + batch.shotList().days(),
            "would write to " + where + names,
            "dry run: nothing was planned or written"));
    return ExitCodes.DONE;
  }
}
