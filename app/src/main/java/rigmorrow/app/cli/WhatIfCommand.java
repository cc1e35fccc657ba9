package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.app.terminal.Text;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.Comparing;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.app.whatif.Estimate;
import rigmorrow.app.whatif.PastDays;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.WhatIfDemo;
import rigmorrow.app.whatif.WhatIfJson;
import rigmorrow.app.whatif.WhatIfText;
import rigmorrow.app.whatif.page.ReportFolder;
import rigmorrow.app.whatif.page.ReportFolder.Report;
import rigmorrow.data.Formats;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.whatif.Past;

/** Compares scenarios over past days. */
@Command(
    name = "whatif",
    description = {
      "Compare scenarios over past days: another rig, one more operator, a longer shift.",
      "Every day is planned with the floor as it was and with each scenario, with the same effort;",
      "figures, paybacks and their intervals go into a report. A run that was stopped, or killed,",
      "goes on where it was when the same command is given again; and a plan that is in the folder",
      "already is not made again, whatever other scenarios or prices stand beside it."
    },
    footer = {
      "Examples:",
      "  rigmorrow whatif --demo                               invented days and scenarios",
      "  rigmorrow whatif scenarios.yaml days                  2 s for each plan",
      "  rigmorrow whatif scenarios.yaml days --time 10 --seeds 3 --again",
      "  rigmorrow whatif scenarios.yaml days --demand=-20,20  paybacks by demand",
      "  rigmorrow whatif scenarios.yaml days --one-more       what to buy first"
    })
final class WhatIfCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SCENARIOS",
      description = "Scenario file: .yaml or .json.")
  private @Nullable Path scenarios;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "DAYS",
      description = {
        "Folder with a folder for each day, named by its date: shot-list.csv, .xlsx or .json, and",
        "floor.yaml or .json, which may also stand beside the days."
      })
  private @Nullable Path days;

  @Option(
      names = "--floor",
      paramLabel = "FILE",
      description = "Take this floor on every day in place of the floor as it was.")
  private @Nullable Path floor;

  @Option(
      names = "--demo",
      description = "Make up 30 past days and four scenarios, write them, and compare them.")
  private boolean demo;

  @Option(names = "--write-only", description = "With --demo: only write the files.")
  private boolean writeOnly;

  @Mixin private WhatIfOptions how;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write in. Default: out/whatif, with --demo out/whatif-demo.")
  private @Nullable Path out;

  @Option(
      names = "--report",
      split = ",",
      paramLabel = "KIND",
      description = "What to write: html, pdf, csv, json. Default: all.")
  private Set<Report> reports = EnumSet.allOf(Report.class);

  @Option(
      names = "--overwrite",
      description = "Begin anew: replace files that are there, finished plans too.")
  private boolean overwrite;

  @Option(
      names = "--dry-run",
      description = "Read and check everything; neither plan nor write, only say what would be.")
  private boolean dryRun;

  @Mixin private CommonOptions common;

  @Spec private CommandLine.Model.CommandSpec spec;

  private final Session session;

  WhatIfCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    RunSettings settings = how.settings(spec);
    Path target = out == null ? Path.of(demo ? "out/whatif-demo" : "out/whatif") : out;
    ReportFolder folder = new ReportFolder(session.folder().resolve(target), reports);
    checkFiles();
    if (demo) {
      WhatIfDemo made = new WhatIfDemo(session.folder().resolve(target));
      if (!dryRun) {
        session.note("written to " + target + ": " + made.write(overwrite));
      }
      if (dryRun || writeOnly) {
        session.note("then: rigmorrow whatif " + made.arguments(target));
        return ExitCodes.DONE;
      }
      scenarios = made.scenarios();
      days = made.days();
    }
    Path dayFolder = session.folder().resolve(given(days, "DAYS"));
    List<Past> past = days(dayFolder);
    Study study =
        Formats.readScenarios(
            session.folder().resolve(given(scenarios, "SCENARIOS")),
            past.stream().map(Past::batch).toList());
    if (settings.oneMore()) {
      PastDays.checkSmallChanges(dayFolder, past, study, "--one-more");
    }
    Comparison comparison = new Comparison(study, past, settings, program());
    if (dryRun) {
      return dryRun(comparison, target, folder);
    }
    folder.refuseOthers(overwrite);
    Optional<Compared> compared = new Comparing(session).run(comparison, folder.cells());
    return compared.isPresent() ? tell(compared.get(), target, folder) : ExitCodes.STOPPED;
  }

  private void checkFiles() {
    if (demo && (scenarios != null || floor != null)) {
      throw new ParameterException(
          spec.commandLine(),
          "--demo brings its own files; accepted: no SCENARIOS, DAYS or --floor");
    }
    if (writeOnly && !demo) {
      throw new ParameterException(spec.commandLine(), "--write-only goes with --demo");
    }
    if (!demo) {
      given(scenarios, "SCENARIOS");
      given(days, "DAYS");
    }
  }

  private Path given(@Nullable Path path, String name) {
    if (path == null) {
      throw new CommandLine.MissingParameterException(
          spec.commandLine(),
          spec.positionalParameters().get(name.equals("DAYS") ? 1 : 0),
          "Missing required parameter: '" + name + "'; or --demo");
    }
    return path;
  }

  private List<Past> days(Path folder) throws IOException, InputException {
    Floor other = floor == null ? null : Formats.readFloor(session.folder().resolve(floor));
    return PastDays.read(folder, other);
  }

  private String program() {
    try {
      CommandLine.IVersionProvider provider = spec.versionProvider();
      return provider == null ? "rigmorrow" : provider.getVersion()[0];
    } catch (Exception e) {
      throw new IllegalStateException("the program does not know its version", e);
    }
  }

  private int dryRun(Comparison comparison, Path target, ReportFolder folder)
      throws IOException, InputException {
    Estimate estimate =
        overwrite
            ? Estimate.of(comparison, List.of(), "")
            : Comparing.estimate(comparison, folder.cellsFile());
    String where = "would write to " + target + ": " + String.join(", ", folder.names());
    if (common.json) {
      var document = Json.document().put("dryRun", true).put("out", target.toString());
      document.put("plans", estimate.plans()).put("plansThere", estimate.known());
      estimate.seconds().ifPresent(seconds -> document.put("secondsLeft", seconds));
      if (!estimate.note().isEmpty()) {
        session.note(estimate.note());
      }
      session.print(List.of(Json.text(document)));
    } else {
      String sentence = "would take " + estimate.sentence();
      session.print(Text.wrap("", "  ", sentence, session.console().columns()));
      session.print(List.of(where, "dry run: nothing was planned or written"));
    }
    return ExitCodes.DONE;
  }

  private int tell(Compared compared, Path target, ReportFolder folder) throws IOException {
    boolean nothing = compared.results().isEmpty() && !compared.study().scenarios().isEmpty();
    if (nothing) {
      session.note("nothing to compare yet");
    } else {
      String note = folder.write(compared);
      if (!note.isEmpty()) {
        session.note(note);
      }
      if (common.json) {
        session.print(List.of(Json.text(WhatIfJson.of(compared))));
      } else {
        session.print(new WhatIfText(compared, session.console()).lines());
      }
      session.note("written to " + target + ": " + String.join(", ", folder.names()));
    }
    if (!compared.whole()) {
      session.note(
          "stopped early: "
              + compared.cells().all().size()
              + " of "
              + compared.all()
              + " plans are kept; the same command goes on from there");
    }
    if (compared.broken() > 0) {
      return ExitCodes.NO_PLAN;
    }
    return nothing ? ExitCodes.STOPPED : ExitCodes.DONE;
  }
}
