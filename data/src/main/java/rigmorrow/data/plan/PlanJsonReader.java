package rigmorrow.data.plan;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.schema.FileSchema;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/**
 * Reads plans in JSON; FORMAT.md describes them. Whether a plan keeps the floor's rules is not
 * asked here.
 */
public final class PlanJsonReader {
  /** The version of the format that is read and written. */
  public static final int VERSION = 1;

  /** Times further from the plan's first day than this are slips. */
  private static final Duration REACH = Duration.ofDays(400);

  private PlanClock clock = new PlanClock(ZoneId.of("UTC"), LocalDate.EPOCH, 1);

  private PlanJsonReader() {}

  /**
   * Reads a plan.
   *
   * @param file name for messages
   * @param text content of the file
   * @throws InputException with everything that is wrong with it
   */
  public static Plan read(String file, String text) throws InputException {
    return read(text, new Reading(new Problems(file)));
  }

  static Plan read(String text, Reading reading) throws InputException {
    reading.open(text, Trees.Notation.JSON, FileSchema.PLAN);
    return reading.build(new PlanJsonReader()::plan);
  }

  private Plan plan(Cursor plan) {
    plan.get().whole("version");
    String floor = plan.get().text("floor");
    ZoneId zone = plan.get().zone("zone");
    LocalDate date = plan.get().date("date");
    int days = plan.get().whole("days");
    clock = new PlanClock(zone, date, days);
    return new Plan(
        floor,
        zone,
        date,
        days,
        plan.list("rigs", this::rig),
        plan.list("leftOut", PlanJsonReader::leftOut),
        plan.object("figures", this::figures),
        plan.optionalObject("bounds", PlanJsonReader::bounds),
        plan.object("origin", PlanJsonReader::origin));
  }

  private RigPlan rig(Cursor rig) {
    return new RigPlan(rig.get().text("rig"), rig.list("jobs", this::job));
  }

  private PlannedJob job(Cursor job) {
    Attended capture = job.object("capture", this::attended);
    return new PlannedJob(
        job.get().text("job"),
        job.list("steps", PlanJsonReader::step),
        job.optionalObject("changeover", this::attended),
        second(job, "warmedUpAt"),
        job.object("load", this::attended),
        capture.span(),
        capture.operators(),
        job.object("unload", this::attended),
        job.list("kit", PlanJsonReader::kit),
        job.get().whole("lateSeconds"));
  }

  private Attended attended(Cursor part) {
    return new Attended(span(part), part.texts("operators"));
  }

  private Span span(Cursor part) {
    int start = second(part, "startsAt");
    int end = second(part, "endsAt");
    if (end < start) {
      if (part.sound("startsAt", "endsAt")) {
        part.refuse("endsAt", "a time not before startsAt");
      }
      end = start;
    }
    return new Span(start, end);
  }

  private int second(Cursor owner, String field) {
    Duration since =
        Duration.between(clock.at(0).toInstant(), owner.get().offsetTime(field).toInstant());
    if (since.abs().compareTo(REACH) > 0) {
      if (owner.sound(field)) {
        owner.refuse(field, "a time within " + REACH.toDays() + " days of " + clock.date());
      }
      return 0;
    }
    return (int) since.toSeconds();
  }

  private static ChangeoverStep step(Cursor step) {
    return new ChangeoverStep(
        step.get().anyText("text"),
        step.get().whole("attendedSeconds"),
        step.get().whole("unattendedSeconds"),
        step.get().whole("people"),
        step.words("skills"));
  }

  private static KitUse kit(Cursor use) {
    return new KitUse(use.get().text("kit"), use.get().text("unit"), use.get().text("from"));
  }

  private static LeftOut leftOut(Cursor job) {
    LeftOut.Cause cause = job.get().constant("cause", LeftOut.Cause.class);
    List<String> sentences = job.texts("sentences");
    return new LeftOut(job.get().text("job"), cause, sentences);
  }

  private PlanFigures figures(Cursor figures) {
    return new PlanFigures(
        figures.get().large("hard"),
        figures.get().large("leftOutPoints"),
        figures.get().large("latenessPoints"),
        figures.get().large("changeoverPoints"),
        figures.get().large("finishingPoints"),
        figures.get().whole("planned"),
        figures.get().whole("leftOut"),
        figures.get().whole("lateJobs"),
        figures.get().large("lateSeconds"),
        figures.get().large("changeoverSeconds"),
        second(figures, "finishedAt"));
  }

  private static PlanBounds bounds(Cursor bounds) {
    return new PlanBounds(
        bounds.get().large("leftOutPoints"),
        bounds.get().large("latenessPoints"),
        bounds.get().large("changeoverPoints"),
        bounds.get().large("finishingPoints"));
  }

  private static PlanOrigin origin(Cursor origin) {
    return new PlanOrigin(
        origin.get().anyText("method"),
        origin.get().large("seed"),
        origin.get().whole("solvers"),
        origin.get().large("stepLimit"),
        origin.get().anyText("stopped"));
  }
}
