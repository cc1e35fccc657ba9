package rigmorrow.app.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;

/** Writes the seconds of a plan as floor time and as lengths of time. */
public final class Times {
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_HOUR =
      DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter DATE_AND_HOUR =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ENGLISH);
  static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd", Locale.ENGLISH);

  private static final int SECONDS_PER_MINUTE = 60;
  private static final long MINUTES_PER_HOUR = 60;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final long WHOLE_SECONDS_PER_HOUR = 3600;
  private static final long HOURS_PER_DAY = 24;
  private static final long SECONDS_PER_DAY = HOURS_PER_DAY * WHOLE_SECONDS_PER_HOUR;

  private final PlanClock clock;
  private final boolean oneDay;
  private final boolean onePlannedDay;

  private Times(PlanClock clock, boolean oneDay, boolean onePlannedDay) {
    this.clock = clock;
    this.oneDay = oneDay;
    this.onePlannedDay = onePlannedDay;
  }

  /** For a plan; days of the week are left out where all ends on the first day. */
  static Times of(Plan plan) {
    PlanClock clock = new PlanClock(plan.zone(), plan.date(), plan.days());
    int last = Math.max(0, plan.figures().finishedAt() - 1);
    boolean oneDay = clock.at(last).toLocalDate().equals(plan.date());
    return new Times(clock, oneDay, oneDay && plan.days() == 1);
  }

  /** For what is still to be planned; days of the week are left out where there is only one. */
  public static Times of(Batch batch) {
    boolean oneDay = batch.shotList().days() == 1;
    return new Times(PlanClock.of(batch), oneDay, oneDay);
  }

  /** Hour and minute, with the day of the week where the plan runs over more than one day. */
  public String at(int second) {
    return clock.at(second).format(oneDay && onFirstDay(second) ? HOUR : DAY_AND_HOUR);
  }

  /** The midnight that ends the day is still of it. */
  private boolean onFirstDay(int second) {
    return clock.at(second > 0 ? second - 1 : second).toLocalDate().equals(clock.date());
  }

  /** Hour and minute, with the date where more than one day is planned. */
  String dated(int second) {
    return clock.at(second).format(onePlannedDay ? HOUR : DATE_AND_HOUR);
  }

  /** From and to; the day of the week stands only once. */
  public String span(int start, int end) {
    boolean sameDay = clock.at(start).toLocalDate().equals(clock.at(end).toLocalDate());
    return at(start) + "-" + (sameDay ? clock.at(end).format(HOUR) : at(end));
  }

  /** Whole minutes, rounded up. */
  static String minutes(long seconds) {
    return wholeMinutes(seconds) + " min";
  }

  /**
   * To the second below an hour, from there whole minutes, rounded up; without parts that are zero:
   * "1 h 5 min", "6 min 47 s", "0 s".
   */
  public static String exact(long seconds) {
    if (seconds >= WHOLE_SECONDS_PER_HOUR) {
      long whole = wholeMinutes(seconds);
      long rest = whole % MINUTES_PER_HOUR;
      return whole / MINUTES_PER_HOUR + " h" + (rest == 0 ? "" : " " + rest + " min");
    }
    List<String> parts = new ArrayList<>();
    long minutes = seconds / SECONDS_PER_MINUTE;
    if (minutes > 0) {
      parts.add(minutes + " min");
    }
    if (seconds % SECONDS_PER_MINUTE > 0 || parts.isEmpty()) {
      parts.add(seconds % SECONDS_PER_MINUTE + " s");
    }
    return String.join(" ", parts);
  }

  /** How late: whole minutes, from a day on whole days and hours, both rounded up. */
  static String late(long seconds) {
    if (seconds < SECONDS_PER_DAY) {
      return minutes(seconds);
    }
    long hours = (seconds + WHOLE_SECONDS_PER_HOUR - 1) / WHOLE_SECONDS_PER_HOUR;
    long rest = hours % HOURS_PER_DAY;
    return Counted.of(Math.toIntExact(hours / HOURS_PER_DAY), "day")
        + (rest == 0 ? "" : " " + rest + " h");
  }

  static long wholeMinutes(long seconds) {
    return (seconds + SECONDS_PER_MINUTE - 1) / SECONDS_PER_MINUTE;
  }

  /** Hours with one decimal. */
  static String hours(long seconds) {
    return String.format(Locale.ROOT, "%.1f h", seconds / SECONDS_PER_HOUR);
  }
}
