package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigmorrow.app.cli.options.Bounds;
import rigmorrow.app.files.DemoFolder;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.PlanOutput;
import rigmorrow.app.files.ShotListSource;
import rigmorrow.app.planning.PlanTeller;
import rigmorrow.app.planning.Planning;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.shottable.ShotTableWriter;
import rigmorrow.data.table.TableOptions;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.SolverSettings;

/** Makes up a floor with a shot list and plans it. */
@Command(
    name = "demo",
    description = {
      "Make up a floor and a shot list, write them as files, and plan them like any user's.",
      "The same seed and date make the same files."
    },
    footer = {
      "Examples:",
      "  rigmorrow demo",
      "  rigmorrow demo --jobs 40 --seed 7 --out out/small",
      "  rigmorrow demo --write-only          then: rigmorrow plan out/demo/floor.yaml ..."
    })
final class DemoCommand implements Callable<Integer> {
  private static final String FLOOR = "floor.yaml";
  private static final String SHOT_LIST = "shot-list.csv";
  private static final int MOST_JOBS = 5000;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      defaultValue = "150",
      description = "How many jobs, 1 to 5000. Default: ${DEFAULT-VALUE}.")
  private int jobs;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "Day to plan. Default: tomorrow.")
  private @Nullable LocalDate date;

  @Mixin private SearchOptions search;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "out/demo",
      description = "Folder to write in. Default: ${DEFAULT-VALUE}.")
  private Path out;

  @Option(
      names = "--overwrite",
      description = "Replace files there, also those that an earlier demo did not write.")
  private boolean overwrite;

  @Option(names = "--write-only", description = "Write floor and shot list, and do not plan.")
  private boolean writeOnly;

  @Option(names = "--brief", description = "Leave out the list of every rig.")
  private boolean brief;

  @Mixin private CommonOptions common;

  @Spec private CommandLine.Model.CommandSpec spec;

  private final Session session;

  DemoCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    SolverSettings settings = search.settings(spec);
    new Bounds(spec).between("--jobs", jobs, 1, MOST_JOBS);
    DemoFolder folder = new DemoFolder(session.folder().resolve(out));
    List<String> names = List.of(FLOOR, SHOT_LIST);
    folder.refuseOthers(names, overwrite);
    folder.refuseOthers(PlanOutput.names(), overwrite);
    LocalDate day = date == null ? LocalDate.now(session.clock()).plusDays(1) : date;
    Batch made = Demo.batch(jobs, search.seed, day);
    folder.write(made.floor(), FLOOR);
    folder.write(SHOT_LIST, ShotTableWriter.write(made.shotList()));
    session.note("written to " + out + ": " + String.join(", ", names));
    if (writeOnly) {
      return ExitCodes.DONE;
    }
    Batch batch = new Inputs(session).batch(asFiles(made), null);
    Planning.noteEarlyPromises(batch, session);
    Planning planning = Planning.of(batch, settings, search.firstOnly, session);
    String note =
        PlanOutput.write(
            folder.path(), batch, planning.plan(), PlanStamp.ofPlan(batch, planning.plan()));
    if (!note.isEmpty()) {
      session.note(note);
    }
    folder.keepTrackOf(PlanOutput.names());
    return new PlanTeller(session, common.json, brief).tell(planning, out.toString());
  }

  private ShotListSource asFiles(Batch made) {
    ShotList list = made.shotList();
    return new ShotListSource(
        out.resolve(FLOOR),
        out.resolve(SHOT_LIST),
        list.date(),
        list.days(),
        TableOptions.FIND,
        null);
  }
}
