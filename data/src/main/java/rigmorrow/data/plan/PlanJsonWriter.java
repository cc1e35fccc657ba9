package rigmorrow.data.plan;

import java.time.format.DateTimeFormatter;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.json.Fields;
import rigmorrow.data.json.Scalars;
import rigmorrow.data.json.Trees;
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

/** Writes plans in JSON; the same plan always gives the same text. */
public final class PlanJsonWriter {
  private final PlanClock clock;

  private PlanJsonWriter(PlanClock clock) {
    this.clock = clock;
  }

  /** The text of a plan file. */
  public static String write(Plan plan) {
    PlanClock clock = new PlanClock(plan.zone(), plan.date(), plan.days());
    return Trees.write(new PlanJsonWriter(clock).tree(plan).node(), Trees.Notation.JSON);
  }

  private Fields tree(Plan plan) {
    return new Fields()
        .whole("version", PlanJsonReader.VERSION)
        .text("floor", plan.floor())
        .text("zone", plan.zone().getId())
        .text("date", plan.date())
        .whole("days", plan.days())
        .list("rigs", plan.rigs(), this::rig)
        .list("leftOut", plan.leftOut(), PlanJsonWriter::leftOut)
        .object("figures", figures(plan.figures()))
        .object("bounds", bounds(plan.bounds()))
        .object("origin", origin(plan.origin()));
  }

  private Fields rig(RigPlan rig) {
    return new Fields().text("rig", rig.rig()).list("jobs", rig.jobs(), this::job);
  }

  private Fields job(PlannedJob job) {
    return new Fields()
        .text("job", job.job())
        .list("steps", job.steps(), PlanJsonWriter::step)
        .object("changeover", attended(job.changeover()))
        .text("warmedUpAt", time(job.warmedUpAt()))
        .object("load", attended(job.load()))
        .object("capture", span(job.capture()).texts("operators", job.captureOperators()))
        .object("unload", attended(job.unload()))
        .list("kit", job.kit(), PlanJsonWriter::kit)
        .whole("lateSeconds", job.lateSeconds());
  }

  private @Nullable Fields attended(@Nullable Attended part) {
    return part == null ? null : span(part.span()).texts("operators", part.operators());
  }

  private Fields span(Span span) {
    return new Fields().text("startsAt", time(span.start())).text("endsAt", time(span.end()));
  }

  private String time(int seconds) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(clock.at(seconds));
  }

  private static Fields step(ChangeoverStep step) {
    return new Fields()
        .text("text", step.text())
        .whole("attendedSeconds", step.attendedSeconds())
        .whole("unattendedSeconds", step.unattendedSeconds())
        .whole("people", step.people())
        .words("skills", step.skills());
  }

  private static Fields kit(KitUse use) {
    return new Fields().text("kit", use.kit()).text("unit", use.unit()).text("from", use.from());
  }

  private static Fields leftOut(LeftOut job) {
    return new Fields()
        .text("job", job.job())
        .text("cause", Scalars.word(job.cause()))
        .texts("sentences", job.sentences());
  }

  private Fields figures(PlanFigures figures) {
    return new Fields()
        .large("hard", figures.hard())
        .large("leftOutPoints", figures.leftOutPoints())
        .large("latenessPoints", figures.latenessPoints())
        .large("changeoverPoints", figures.changeoverPoints())
        .large("finishingPoints", figures.finishingPoints())
        .whole("planned", figures.planned())
        .whole("leftOut", figures.leftOut())
        .whole("lateJobs", figures.lateJobs())
        .large("lateSeconds", figures.lateSeconds())
        .large("changeoverSeconds", figures.changeoverSeconds())
        .text("finishedAt", time(figures.finishedAt()));
  }

  private static @Nullable Fields bounds(@Nullable PlanBounds bounds) {
    return bounds == null
        ? null
        : new Fields()
            .large("leftOutPoints", bounds.leftOutPoints())
            .large("latenessPoints", bounds.latenessPoints())
            .large("changeoverPoints", bounds.changeoverPoints())
            .large("finishingPoints", bounds.finishingPoints());
  }

  private static Fields origin(PlanOrigin origin) {
    return new Fields()
        .text("method", origin.method())
        .large("seed", origin.seed())
        .whole("solvers", origin.solvers())
        .large("stepLimit", origin.stepLimit())
        .text("stopped", origin.stopped());
  }
}
