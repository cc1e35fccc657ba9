package rigmorrow.app.calendar;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.runsheet.Duty;
import rigmorrow.app.runsheet.JobCard;

/** What an event says of its job: the same as the run sheet, in lines. */
final class EventText {
  private static final String ADVICE =
      "A plan is advice: local rules and qualified people decide; never a release to operate.";

  private final String warning;
  private final String zone;
  private final String which;

  /**
   * @param warning that the plan breaks rules; empty when it does not
   * @param zone in which the times of the text are
   * @param which plan it is, in words
   */
  EventText(String warning, String zone, String which) {
    this.warning = warning;
    this.zone = zone;
    this.which = which;
  }

  /** A title; that of a plan that breaks rules says so. */
  String summary(String what, JobCard card) {
    String title = what + card.label().name() + " (job " + card.label().id() + ")";
    return warning.isEmpty() ? title : "DO NOT WORK FROM THIS PLAN: " + title;
  }

  /** Everything about a job on a rig. */
  String job(JobCard card, List<String> parts, List<String> general) {
    List<String> lines = head(card);
    lines.addAll(parts);
    lines.addAll(card.kit());
    card.steps().forEach(step -> lines.add(step(step)));
    add(lines, "Set to ", card.setTo());
    add(lines, "Load: ", String.join(" ", card.loading()));
    lines.add("Pictures: " + card.recipe());
    add(lines, "Unload: ", String.join(" ", card.unloading()));
    lines.add(card.promise());
    return tail(lines, card, general);
  }

  /** What one operator does with a job. */
  String task(Duty duty, String with, List<String> general) {
    List<String> lines = head(duty.card());
    add(lines, "", with);
    lines.addAll(duty.how());
    duty.steps().forEach(step -> lines.add(step(step)));
    return tail(lines, duty.card(), general);
  }

  private List<String> head(JobCard card) {
    List<String> lines = new ArrayList<>();
    add(lines, "", warning);
    card.breaches().forEach(breach -> lines.add("Breaks a rule: " + breach));
    JobCard.Label label = card.label();
    lines.add(
        "Article "
            + label.article()
            + ", job "
            + label.id()
            + ", sample "
            + label.sample()
            + (label.gtin().isEmpty() ? "" : ", GTIN " + label.gtin()));
    lines.add(card.measures());
    add(lines, "", card.state());
    return lines;
  }

  private String tail(List<String> lines, JobCard card, List<String> general) {
    lines.addAll(card.sampleTimes());
    card.cautions().forEach(text -> lines.add("Mind: " + text));
    general.forEach(text -> lines.add("Mind: " + text));
    add(lines, "Note: ", card.note());
    lines.add(which);
    lines.add("Times in " + zone);
    lines.add(ADVICE);
    // Where a printed line may end means nothing here, and a no-break space is a matter of looks.
    return String.join("\n", lines.stream().map(EventText::plain).toList());
  }

  private static String step(JobCard.Step step) {
    String people = step.people().isEmpty() ? "" : ", " + step.people();
    return "- " + step.text() + " (" + step.time() + people + ")";
  }

  private static void add(List<String> lines, String before, String text) {
    if (!text.isEmpty()) {
      lines.add(before + text);
    }
  }

  private static String plain(String line) {
    return line.replaceAll("[\\s\\u00a0]+", " ").strip();
  }
}
