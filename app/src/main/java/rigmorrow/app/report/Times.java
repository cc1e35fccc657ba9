package rigmorrow.app.report;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;

/** Writes the seconds of a plan as floor time. */
public final class Times {
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_HOUR =
      DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter DATE_AND_HOUR =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ENGLISH);
  static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd", Locale.ENGLISH);

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
}
