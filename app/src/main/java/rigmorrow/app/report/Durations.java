package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Lengths of time as people read them: one rule for the page, the sheets, explanations and what
 * commands print, so that one length never shows as two figures. {@code base/words.js} has the same
 * rule for the page, and a test holds it against this one.
 */
public final class Durations {
  private static final long SECONDS_PER_MINUTE = 60;
  private static final long MINUTES_PER_HOUR = 60;
  private static final long SECONDS_PER_HOUR = 3600;
  private static final long HOURS_PER_DAY = 24;
  private static final long SECONDS_PER_DAY = HOURS_PER_DAY * SECONDS_PER_HOUR;

  private Durations() {}

  /**
   * Whole minutes, rounded up, so that nothing that takes time shows as none: "8 h 11 min", "1
   * min".
   *
   * @param seconds 0 or more
   */
  public static String of(long seconds) {
    return minutes((seconds + SECONDS_PER_MINUTE - 1) / SECONDS_PER_MINUTE);
  }

  /**
   * How late: like any length, from a day on whole days and hours, rounded up too: "1 day 3 h".
   *
   * @param seconds 0 or more
   */
  public static String late(long seconds) {
    if (seconds < SECONDS_PER_DAY) {
      return of(seconds);
    }
    long hours = (seconds + SECONDS_PER_HOUR - 1) / SECONDS_PER_HOUR;
    long rest = hours % HOURS_PER_DAY;
    return Counted.of(Math.toIntExact(hours / HOURS_PER_DAY), "day")
        + (rest == 0 ? "" : " " + rest + " h");
  }

  /**
   * What there is to spare or to be had: whole minutes, rounded down, so that nobody counts on more
   * than there is.
   *
   * @param seconds 0 or more
   */
  public static String available(long seconds) {
    return seconds > 0 && seconds < SECONDS_PER_MINUTE
        ? "less than 1 min"
        : minutes(seconds / SECONDS_PER_MINUTE);
  }

  /**
   * How long a span is whose ends stand beside it as hours and minutes: the minutes between the two
   * that are read there, so that nobody finds 11 minutes called 12.
   *
   * @param start second of the plan
   * @param end second of the plan, not before the start
   */
  public static String beside(int start, int end) {
    long minutes =
        Math.floorDiv(end, SECONDS_PER_MINUTE) - Math.floorDiv(start, SECONDS_PER_MINUTE);
    return minutes == 0 && end > start ? "less than 1 min" : minutes(minutes);
  }

  /**
   * To the second, for what is done by the second: a capture, and a single step as the floor file
   * gives it: "6 min 47 s".
   *
   * @param seconds 0 or more
   */
  public static String exact(long seconds) {
    List<String> parts = new ArrayList<>();
    add(parts, seconds / SECONDS_PER_HOUR, "h");
    add(parts, seconds / SECONDS_PER_MINUTE % MINUTES_PER_HOUR, "min");
    add(parts, seconds % SECONDS_PER_MINUTE, "s");
    return parts.isEmpty() ? "0 s" : String.join(" ", parts);
  }

  /**
   * What is left to wait for, at a glance: seconds below two minutes, then minutes: "40 s", "12
   * min", "3 h 5 min".
   *
   * @param seconds 0 or more
   */
  public static String left(long seconds) {
    return seconds < 2 * SECONDS_PER_MINUTE
        ? seconds + " s"
        : minutes((seconds + SECONDS_PER_MINUTE / 2) / SECONDS_PER_MINUTE);
  }

  private static String minutes(long minutes) {
    List<String> parts = new ArrayList<>();
    add(parts, minutes / MINUTES_PER_HOUR, "h");
    add(parts, minutes % MINUTES_PER_HOUR, "min");
    return parts.isEmpty() ? "0 min" : String.join(" ", parts);
  }

  private static void add(List<String> parts, long amount, String unit) {
    if (amount > 0) {
      parts.add(amount + " " + unit);
    }
  }
}
