package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.app.calendar.CalendarFile;
import rigmorrow.app.calendar.Calendars;
import rigmorrow.app.cli.options.WhoseOptions;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.files.PlannedBatch;
import rigmorrow.app.planning.HandedOut;
import rigmorrow.app.runsheet.SheetChoice;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.Breach;

/** Writes a plan as calendars. */
@Command(
    name = "calendar",
    description = {
      "Write a plan as calendar files (iCalendar), one for each rig and operator.",
      "An event keeps its UID in a later plan of the same day; whether reading it moves",
      "what was there is up to your calendar, and jobs that went away stay."
    },
    footer = {
      "Examples:",
      "  rigmorrow calendar floor.yaml shot-list.csv plan.json --out calendars",
      "  rigmorrow calendar floor.yaml shot-list.csv plan.json --out calendars",
      "      --operator O1 --operator O2 --overwrite"
    })
final class CalendarCommand implements Callable<Integer> {
  @Mixin private PlanFileOptions files;

  @Option(names = "--out", paramLabel = "DIR", required = true, description = "Folder to write in.")
  private Path out;

  @Mixin private WhoseOptions whose;

  @Option(names = "--overwrite", description = "Replace files that are there already.")
  private boolean overwrite;

  @Mixin private CommonOptions common;

  private final Session session;

  CalendarCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws InputException, IOException {
    PlannedBatch planned = new Inputs(session).planned(files.files.source(), files.plan);
    List<Breach> breaches = planned.breaches();
    SheetChoice choice = whose.of(planned.batch());
    List<CalendarFile> calendars;
    try {
      calendars =
          new Calendars(
                  planned.batch(),
                  planned.plan(),
                  PlanStamp.ofPlan(planned.batch(), planned.plan()),
                  session.clock().instant())
              .files(choice);
    } catch (IllegalArgumentException e) {
      throw planned.another(e);
    }
    Path folder = session.folder().resolve(out);
    OutputFiles.refuseExisting(
        calendars.stream().map(calendar -> folder.resolve(calendar.name())).toList(), overwrite);
    for (CalendarFile calendar : calendars) {
      OutputFiles.write(folder.resolve(calendar.name()), calendar.text());
    }
    return new HandedOut(session, common.json)
        .tell(calendars.stream().map(calendar -> out.resolve(calendar.name())).toList(), breaches);
  }
}
