package rigmorrow.app.runsheet.text;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rigmorrow.app.report.Counted;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/**
 * Says which plan a paper or file was made of, so that two stacks on a table can be told apart.
 *
 * @param words which plan it is
 * @param note what the planner wrote of it, in one line; empty for nothing
 */
public record PlanStamp(String words, String note) {
  /** As much of a note as has room in the margin of a page. */
  private static final int SHORT_NOTE = 40;

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  public PlanStamp {
    note = note.replaceAll("\\s+", " ").strip();
  }

  /**
   * Of a plan that was put by at the board.
   *
   * @param number 1 for the first
   * @param at when it was put by
   * @param zone of the floor
   * @param published number of the version that the crew works from; 0 for none
   * @param mark of its schedule
   */
  public static PlanStamp ofVersion(
      int number, String note, Instant at, ZoneId zone, int published, String mark) {
    String words = "Version %d of the board, %s, put by %s, plan %s";
    String state =
        number == published
            ? "published"
            : published == 0 ? "not published" : "not published: version " + published + " is";
    return new PlanStamp(words.formatted(number, state, time(at, zone), mark), note);
  }

  /**
   * Of a plan that stands at the board and was not put by.
   *
   * @param at when it was made
   * @param zone of the floor
   * @param published number of the version that the crew works from; 0 for none
   * @param mark of its schedule
   */
  public static PlanStamp ofRevision(
      long revision, Instant at, ZoneId zone, int published, String mark) {
    String words = "Not published: revision %d of the board, made %s, plan %s";
    String other = published == 0 ? "" : "; published is version " + published;
    return new PlanStamp(words.formatted(revision, time(at, zone), mark) + other, "");
  }

  /** Of a plan in a file: the same plan has the same letters, whenever its papers are made. */
  public static PlanStamp ofPlan(Batch batch, Plan plan) {
    return new PlanStamp("Plan " + mark(batch, plan), "");
  }

  /**
   * Eight letters of a schedule. Two share them only where every job has the same name, people,
   * kit, steps and times: planned, due, of its sample's coming and leaving.
   */
  public static String mark(Batch batch, Plan plan) {
    return ScheduleMark.of(batch, plan);
  }

  /** Of a paper that is made of a shot list, whatever is planned. */
  public static PlanStamp ofShotList(ShotList list) {
    return new PlanStamp(
        "Shot list for "
            + list.date()
            + ", "
            + Counted.of(list.jobs().size(), "job")
            + "; made without a plan",
        "");
  }

  /** All of it in one line. */
  public String whole() {
    return with(note);
  }

  /** The same with a long note cut off, for the margin of a page. */
  public String line() {
    return with(note.length() <= SHORT_NOTE ? note : note.substring(0, SHORT_NOTE - 1) + "…");
  }

  /** The line as the content of a style sheet's margin box: nothing in it can end the style. */
  public String lineInStyle() {
    StringBuilder text = new StringBuilder();
    line()
        .codePoints()
        .forEach(
            letter ->
                text.append(
                    letter < 128 && Character.isLetterOrDigit(letter)
                        ? Character.toString(letter)
                        : "\\%x ".formatted(letter)));
    return text.toString();
  }

  private String with(String shown) {
    return words + (shown.isEmpty() ? "" : ": " + shown);
  }

  private static String time(Instant at, ZoneId zone) {
    return MINUTE.format(at.atZone(zone));
  }
}
