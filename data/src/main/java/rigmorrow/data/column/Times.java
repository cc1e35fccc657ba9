package rigmorrow.data.column;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.shot.PlanReach;

/** Reads a point in time the ways people write it in a sheet. */
final class Times {
  static final String ACCEPTED =
      "a time such as 2026-11-26 16:00, 26.11.2026 16:00, or 16:00 on the plan's date";

  private static final String CLOCK = "(\\d{1,2})[:.](\\d{2})(?::(\\d{2})(?:\\.(\\d{1,9}))?)?";
  private static final Pattern TIME = Pattern.compile(CLOCK);
  private static final Pattern ISO =
      Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})(?:[T ]\\s*" + CLOCK + ")?");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(\\d{1,2})([.\\-/])(\\d{1,2})\\2(\\d{4})(?:\\s+" + CLOCK + ")?");

  /**
   * A time, or what would be accepted in its place.
   *
   * @param time null when refused
   * @param accepted empty when read
   */
  record Reading(@Nullable LocalDateTime time, String accepted) {}

  private Times() {}

  /**
   * @param planDate the day of a time without a date
   */
  static Reading read(String written, LocalDate planDate) {
    try {
      Matcher time = TIME.matcher(written);
      if (time.matches()) {
        return new Reading(planDate.atTime(clock(time, 1)), "");
      }
      Matcher iso = ISO.matcher(written);
      if (iso.matches()) {
        return at(date(iso, 1, 2, 3), iso, 4, planDate);
      }
      Matcher dayFirst = DAY_FIRST.matcher(written);
      if (dayFirst.matches()) {
        return dayFirst(dayFirst, planDate);
      }
    } catch (DateTimeException e) {
      return new Reading(null, "a day and time that exist; " + ACCEPTED);
    }
    return new Reading(null, ACCEPTED);
  }

  /** With slashes day and month come in either order, so one of them must tell which it is. */
  private static Reading dayFirst(Matcher written, LocalDate planDate) {
    int first = Integer.parseInt(written.group(1));
    int second = Integer.parseInt(written.group(3));
    boolean slashes = written.group(2).equals("/");
    if (slashes && first <= 12 && second <= 12 && first != second) {
      return new Reading(null, "a date that has one meaning, such as 2026-11-26 16:00");
    }
    boolean monthFirst = slashes && second > 12;
    LocalDate date = monthFirst ? date(written, 4, 1, 3) : date(written, 4, 3, 1);
    return at(date, written, 5, planDate);
  }

  private static Reading at(LocalDate date, Matcher written, int clockGroup, LocalDate planDate) {
    if (written.group(clockGroup) == null) {
      return new Reading(null, "the time of day too; " + ACCEPTED);
    }
    LocalTime clock = clock(written, clockGroup);
    if (!PlanReach.holds(date, planDate)) {
      return new Reading(null, PlanReach.accepted(planDate));
    }
    return new Reading(date.atTime(clock), "");
  }

  private static LocalDate date(Matcher written, int year, int month, int day) {
    return LocalDate.of(number(written, year), number(written, month), number(written, day));
  }

  private static LocalTime clock(Matcher written, int hourGroup) {
    String second = written.group(hourGroup + 2);
    String fraction = written.group(hourGroup + 3);
    return LocalTime.of(
        number(written, hourGroup),
        number(written, hourGroup + 1),
        second == null ? 0 : Integer.parseInt(second),
        fraction == null ? 0 : Integer.parseInt((fraction + "00000000").substring(0, 9)));
  }

  private static int number(Matcher written, int group) {
    return Integer.parseInt(written.group(group));
  }
}
