package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.app.terminal.TextTable;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.WorkModel;

/** A plan as text for a terminal: what it comes to, who does what when, and what is left out. */
public final class PlanText {
  /** Stands below every plan that is shown. */
  public static final String ADVICE =
      "A plan is advice, never a release to operate: local rules and qualified people decide.";

  private static final int MOST_LEFT_OUT = 40;

  private final Batch batch;
  private final Plan plan;
  private final @Nullable PlanFigures dispatch;
  private final Console console;
  private final Times times;
  private final Map<String, ShotJob> jobs;
  private final List<String> lines = new ArrayList<>();

  /**
   * @param batch what was planned
   * @param plan its plan
   * @param dispatch what the plan by dispatch rules alone came to, for comparison; null for none
   * @param console how wide and whether in colour
   */
  public PlanText(Batch batch, Plan plan, @Nullable PlanFigures dispatch, Console console) {
    this.batch = batch;
    this.plan = plan;
    this.dispatch = dispatch;
    this.console = console;
    this.times = Times.of(plan);
    this.jobs =
        batch.shotList().jobs().stream()
            .collect(Collectors.toMap(ShotJob::id, Function.identity(), (a, b) -> a, HashMap::new));
  }

  /**
   * The text, line by line.
   *
   * @param brief true to leave the list of every rig out
   */
  public List<String> lines(boolean brief) {
    headline();
    points();
    if (!brief) {
      for (RigPlan rig : plan.rigs()) {
        lines.add("");
        lines.addAll(new RigText(batch, jobs, times, console).lines(rig));
      }
    }
    crew();
    late();
    leftOut();
    cautions();
    lines.add("");
    wrapped("", ADVICE);
    return List.copyOf(lines);
  }

  private void headline() {
    PlanFigures figures = plan.figures();
    String days = plan.days() == 1 ? "" : " and " + Counted.of(plan.days() - 1, "more day");
    String title =
        plan.floor() + ", " + plan.date().format(Times.DATE) + days + " (" + plan.zone() + ")";
    lines.add(console.bold(Text.cut(title, console.columns())));
    lines.add("");
    if (figures.hard() > 0) {
      lines.add(console.warning("NOT WORKABLE: this plan breaks rules that must hold."));
    }
    wrapped("", inShort(figures, times));
    long musts = plan.leftOut().stream().filter(left -> must(jobs.get(left.job()))).count();
    if (musts > 0) {
      String count = Counted.of((int) musts, "must-promise");
      lines.add(console.warning(count + " cannot be kept: the job is left out, see below."));
    }
  }

  private static boolean must(@Nullable ShotJob job) {
    return job != null && job.promise() != null && job.promise().must();
  }

  /** What a plan comes to, in one line. */
  public static String inShort(PlanFigures figures, Times times) {
    return "%d of %s planned, %s, %s, done %s, changeovers %s"
        .formatted(
            figures.planned(),
            Counted.of(figures.planned() + figures.leftOut(), "job"),
            figures.lateJobs() == 0 ? "none late" : figures.lateJobs() + " late",
            figures.leftOut() == 0 ? "none left out" : figures.leftOut() + " left out",
            figures.planned() == 0 ? "-" : times.dated(figures.finishedAt()),
            Durations.of(figures.changeoverSeconds()));
  }

  private void points() {
    TextTable table =
        new TextTable(
            0,
            List.of("points", ">left out", ">late", ">changeover", ">finishing", ">soft in all"));
    row(table, "this plan", plan.figures());
    if (dispatch != null) {
      row(table, "dispatch rules alone", dispatch);
    }
    PlanBounds bounds = plan.bounds();
    if (bounds != null) {
      table.row(
          "no plan is below",
          "" + bounds.leftOutPoints(),
          "" + bounds.latenessPoints(),
          "" + bounds.changeoverPoints(),
          "" + bounds.finishingPoints(),
          "" + bounds.softPoints());
    }
    lines.add("");
    lines.addAll(table.lines("", console.columns()));
    if (bounds != null) {
      wrapped("", BoundText.of(plan.figures(), bounds, batch.shotList().heldBack().size()));
    }
  }

  private static void row(TextTable table, String name, PlanFigures figures) {
    table.row(
        name,
        "" + figures.leftOutPoints(),
        "" + figures.latenessPoints(),
        "" + figures.changeoverPoints(),
        "" + figures.finishingPoints(),
        "" + figures.softPoints());
  }

  private void crew() {
    TextTable table = new TextTable(0, List.of("crew", ">hands-on", ">of shift", ""));
    for (CrewLoad load : CrewLoad.of(batch, plan)) {
      table.row(
          load.name(),
          Durations.of(load.handsOnSeconds()),
          load.shiftSeconds() == 0 ? "no shift" : Math.round(load.share() * 100) + " %",
          bar(load.share()));
    }
    lines.add("");
    lines.addAll(table.lines("", console.columns()));
  }

  private static String bar(double share) {
    int width = 20;
    int full = (int) Math.round(Math.min(1, share) * width);
    return "#".repeat(full) + ".".repeat(width - full);
  }

  private void late() {
    TextTable table = new TextTable(1, List.of("", "", "", "", ""));
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob planned : rig.jobs()) {
        if (planned.lateSeconds() > 0) {
          ShotJob job = jobs.get(planned.job());
          table.row(
              planned.job(),
              job == null ? "" : job.name(),
              rig.rig(),
              Durations.late(planned.lateSeconds()) + " late",
              job == null ? "" : "weight " + job.weight());
        }
      }
    }
    if (!table.isEmpty()) {
      lines.add("");
      lines.add(console.warning("late"));
      lines.addAll(table.lines("  ", console.columns()));
    }
  }

  private void leftOut() {
    if (plan.leftOut().isEmpty()) {
      return;
    }
    lines.add("");
    lines.add(console.warning("left out"));
    for (LeftOut left : plan.leftOut().stream().limit(MOST_LEFT_OUT).toList()) {
      ShotJob job = jobs.get(left.job());
      String must = must(job) ? " (must-promise)" : "";
      String name = left.job() + must + (job == null ? "" : " " + job.name());
      lines.add(Text.cut("  " + name, console.columns()));
      left.sentences().forEach(sentence -> wrapped("    ", sentence));
    }
    int more = plan.leftOut().size() - MOST_LEFT_OUT;
    if (more > 0) {
      lines.add("  and " + Counted.of(more, "more job") + "; see plan.json");
    }
  }

  private void cautions() {
    WorkModel work = new WorkModel(batch.floor());
    int count = 0;
    for (RigPlan rig : plan.rigs()) {
      var onRig = batch.floor().rig(rig.rig()).orElseThrow();
      for (PlannedJob planned : rig.jobs()) {
        ShotJob job = jobs.get(planned.job());
        count += job == null ? 0 : work.of(job, onRig).cautions().size();
      }
    }
    if (count > 0) {
      lines.add("");
      wrapped("", Counted.of(count, "caution") + " for the crew: see the run sheets.");
    }
  }

  private void wrapped(String indent, String text) {
    lines.addAll(Text.wrap(indent, indent, text, console.columns()));
  }
}
