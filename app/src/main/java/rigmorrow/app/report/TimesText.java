package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.model.lifting.LiftAdvice;
import rigmorrow.model.lifting.LiftingResult;
import rigmorrow.model.setup.Changeover;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.TimeTerm;

/** How the time of one job on one rig is made up, as text for a terminal. */
public final class TimesText {
  private static final int SECONDS_COLUMNS = 9;

  private final JobOnRig answer;
  private final Console console;
  private final List<String> lines = new ArrayList<>();

  /**
   * @param answer what is known
   * @param console how wide and whether in colour
   */
  public TimesText(JobOnRig answer, Console console) {
    this.answer = answer;
    this.console = console;
  }

  /** The text, line by line. */
  public List<String> lines() {
    String title =
        answer.job().id()
            + " "
            + answer.job().name()
            + " on "
            + answer.rig().id()
            + ", recipe "
            + answer.job().recipe();
    lines.add(console.bold(Text.cut(title, console.columns())));
    if (answer.job().item().estimated()) {
      lines.add("Size or mass is the planner's estimate.");
    }
    if (!answer.fit().fits()) {
      lines.add("");
      lines.add(console.warning("This rig cannot take the job:"));
      answer.fit().reasons().forEach(reason -> wrapped(FitText.line(reason)));
    }
    work();
    setup();
    changeover();
    lift();
    cautions();
    lines.add("");
    lines.addAll(Text.wrap("", "", PlanText.ADVICE, console.columns()));
    return List.copyOf(lines);
  }

  private void work() {
    JobWork work = answer.work();
    part("load", work.load().seconds(), handsOn(work.load()));
    part(
        "capture",
        work.captureSeconds(),
        (work.attendedCapture() ? "attended" : "unattended")
            + ", "
            + Counted.of(work.turns(), "turn")
            + " of the plate");
    part("unload", work.unload().seconds(), handsOn(work.unload()));
  }

  private static String handsOn(JobWork.HandsOn handsOn) {
    return people(handsOn.people()) + skills(handsOn.skills());
  }

  private void part(String part, int seconds, String who) {
    heading("%s: %d s, %s".formatted(part, seconds, who));
    for (TimeTerm term : answer.work().terms()) {
      if (term.part().equals(part)) {
        String figures = term.figures().isEmpty() ? "" : " (" + term.figures() + ")";
        timed(seconds(term.seconds()), term.label() + figures);
      }
    }
  }

  private void setup() {
    heading("setup it asks for");
    Map<String, String> asked = answer.work().request().values();
    if (asked.isEmpty()) {
      wrapped("none: whatever is set up stays");
    }
    asked.forEach(
        (attribute, value) -> {
          String now = answer.rig().initialSetup().value(attribute);
          boolean set = value.equals(now);
          wrapped(attribute + " " + value + (set ? " (set already)" : " (now " + now + ")"));
        });
    if (!answer.work().kits().isEmpty()) {
      wrapped("kit: " + String.join(", ", answer.work().kits()));
    }
  }

  private void changeover() {
    Changeover changeover = answer.changeover();
    if (changeover == null) {
      heading("changeover: the floor's tables lack a line for it");
      return;
    }
    if (changeover.steps().isEmpty()) {
      heading("changeover from the first setup: nothing to do");
      return;
    }
    heading(
        "changeover from the first setup: %d s, %s%s"
            .formatted(
                changeover.attendedSeconds(),
                people(changeover.people()),
                changeover.tailSeconds() == 0
                    ? ""
                    : ", then " + changeover.tailSeconds() + " s unattended"));
    for (ChangeoverStep step : changeover.steps()) {
      String tail =
          step.unattendedSeconds() == 0
              ? ""
              : ", then " + step.unattendedSeconds() + " s unattended";
      timed(step.attendedSeconds() + " s", step.text() + " (" + people(step.people()) + tail + ")");
    }
  }

  private void lift() {
    LiftAdvice advice = answer.lift();
    if (advice == null) {
      heading("lifting check: light enough to be outside it");
      return;
    }
    String crew = advice.crew().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    heading("lifting check (NIOSH 94-110): " + crew);
    LiftingResult one = advice.onePerson();
    wrapped(
        text(
            "load %.1f kg; limit for one person %.1f kg (index %.2f, at most 1); for each of two"
                + " %.1f kg of %.1f kg (team factor %.2f, a planning rule)",
            one.loadKg(),
            one.recommendedWeightLimitKg(),
            one.liftingIndex(),
            advice.shareOfTwoKg(),
            advice.limitPerPersonOfTwoKg(),
            advice.teamFactor()));
    wrapped(
        text(
            "multipliers: horizontal %.2f, vertical %.2f, distance %.2f, asymmetric %.2f,"
                + " frequency %.2f, coupling %.2f",
            one.horizontalMultiplier(),
            one.verticalMultiplier(),
            one.distanceMultiplier(),
            one.asymmetricMultiplier(),
            one.frequencyMultiplier(),
            one.couplingMultiplier()));
  }

  private void cautions() {
    if (!answer.work().cautions().isEmpty()) {
      heading("cautions");
      answer.work().cautions().forEach(this::wrapped);
    }
  }

  private void heading(String text) {
    lines.add("");
    lines.addAll(Text.wrap("", "  ", text, console.columns()));
  }

  private void wrapped(String text) {
    lines.addAll(Text.wrap("  ", "    ", text, console.columns()));
  }

  private void timed(String seconds, String text) {
    String first = "  " + Text.right(seconds, SECONDS_COLUMNS) + "  ";
    lines.addAll(Text.wrap(first, " ".repeat(first.length()), text, console.columns()));
  }

  private static String people(int people) {
    return people == 1 ? "1 person" : people + " people";
  }

  static String skills(Set<String> skills) {
    return skills.isEmpty()
        ? ""
        : ", skills " + String.join(", ", skills.stream().sorted().toList());
  }

  private static String seconds(double seconds) {
    return text("%.1f s", seconds);
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
