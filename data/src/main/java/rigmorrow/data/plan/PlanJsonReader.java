package rigmorrow.data.plan;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Range;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
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

  private static final Range COUNT = Range.of(0, Integer.MAX_VALUE);

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
    JsonNode tree = Trees.read(text, Trees.Notation.JSON, reading.problems());
    reading.problems().throwIfAny();
    PlanJsonReader reader = new PlanJsonReader();
    Plan plan = Cursor.readRoot(tree, "plan", reading, reader::plan);
    reading.problems().throwIfAny();
    return Objects.requireNonNull(plan);
  }

  private Plan plan(Cursor plan) {
    plan.get().whole("version", Range.of(VERSION, VERSION));
    String floor = plan.get().text("floor");
    ZoneId zone = plan.get().zone("zone");
    LocalDate date = plan.get().date("date");
    int days = plan.get().whole("days", Range.of(1, 31));
    clock = new PlanClock(zone, date, days);
    return new Plan(
        floor,
        zone,
        date,
        days,
        plan.list("rigs", "rigPlan", 0, this::rig),
        plan.list("leftOut", "leftOut", 0, PlanJsonReader::leftOut),
        plan.object("figures", "figures", this::figures),
        plan.object("origin", "origin", PlanJsonReader::origin));
  }

  private RigPlan rig(Cursor rig) {
    return new RigPlan(rig.get().text("rig"), rig.list("jobs", "plannedJob", 0, this::job));
  }

  private PlannedJob job(Cursor job) {
    Attended capture = job.object("capture", "part", this::attended);
    return new PlannedJob(
        job.get().text("job"),
        job.list("steps", "step", 0, PlanJsonReader::step),
        job.optionalObject("changeover", "part", this::attended),
        second(job, "warmedUpAt"),
        job.object("load", "part", this::attended),
        capture.span(),
        capture.operators(),
        job.object("unload", "part", this::attended),
        job.list("kit", "kitUse", 0, PlanJsonReader::kit),
        job.get().whole("lateSeconds", COUNT));
  }

  private Attended attended(Cursor part) {
    return new Attended(span(part), part.texts("operators"));
  }

  private Span span(Cursor part) {
    int before = part.reading().problems().count();
    int start = second(part, "startsAt");
    int end = second(part, "endsAt");
    if (end < start) {
      if (part.reading().problems().count() == before) {
        part.refuse("endsAt", "a time not before startsAt");
      }
      end = start;
    }
    return new Span(start, end);
  }

  private int second(Cursor owner, String field) {
    int before = owner.reading().problems().count();
    Duration since =
        Duration.between(clock.at(0).toInstant(), owner.get().offsetTime(field).toInstant());
    if (since.abs().compareTo(REACH) > 0) {
      if (owner.reading().problems().count() == before) {
        owner.refuse(field, "a time within " + REACH.toDays() + " days of " + clock.date());
      }
      return 0;
    }
    return (int) since.toSeconds();
  }

  private static ChangeoverStep step(Cursor step) {
    return new ChangeoverStep(
        step.get().anyText("text"),
        step.get().whole("attendedSeconds", COUNT),
        step.get().whole("unattendedSeconds", COUNT),
        step.get().whole("people", Range.of(1, 2)),
        step.words("skills"));
  }

  private static KitUse kit(Cursor use) {
    return new KitUse(use.get().text("kit"), use.get().text("unit"), use.get().text("from"));
  }

  private static LeftOut leftOut(Cursor job) {
    LeftOut.Cause cause = job.get().constantOrNull("cause", LeftOut.Cause.class);
    if (cause == null) {
      job.refuse("cause", "needs-measuring, no-rig or no-room");
      cause = LeftOut.Cause.NO_ROOM;
    }
    List<String> sentences = job.texts("sentences");
    return new LeftOut(job.get().text("job"), cause, sentences);
  }

  private PlanFigures figures(Cursor figures) {
    return new PlanFigures(
        figures.get().large("hard", 0),
        figures.get().large("leftOutPoints", 0),
        figures.get().large("latenessPoints", 0),
        figures.get().large("changeoverPoints", 0),
        figures.get().large("finishingPoints", 0),
        figures.get().whole("planned", COUNT),
        figures.get().whole("leftOut", COUNT),
        figures.get().whole("lateJobs", COUNT),
        figures.get().large("lateSeconds", 0),
        figures.get().large("changeoverSeconds", 0),
        second(figures, "finishedAt"));
  }

  private static PlanOrigin origin(Cursor origin) {
    return new PlanOrigin(
        origin.get().anyText("method"),
        origin.get().large("seed", Long.MIN_VALUE),
        origin.get().whole("solvers", COUNT),
        origin.get().large("stepLimit", 0),
        origin.get().anyText("stopped"));
  }
}
