package rigmorrow.model.time;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import rigmorrow.model.shot.Batch;

/**
 * Turns floor time into seconds from the plan's origin and back. Seconds are real elapsed seconds,
 * so the day of a clock change has 23 or 25 hours.
 *
 * @param zone of the floor
 * @param date first day of the plan; its first instant is second 0
 * @param days length of the plan, at least 1
 */
public record PlanClock(ZoneId zone, LocalDate date, int days) {
  /** More than eight years: a plan has 31 days at most, so that what is further off is just far. */
  private static final long FAR_SECONDS = 1L << 28;

  /** The clock of a batch. */
  public static PlanClock of(Batch batch) {
    return new PlanClock(batch.floor().zone(), batch.shotList().date(), batch.shotList().days());
  }

  /**
   * Seconds from the origin to a local time; negative before it. A local time that a clock change
   * skips is moved on by the length of the gap, one that comes twice as its first. What is more
   * than eight years off counts as eight years off.
   */
  public int secondsAt(LocalDateTime local) {
    long seconds = Duration.between(origin(), local.atZone(zone)).toSeconds();
    return (int) Math.max(-FAR_SECONDS, Math.min(FAR_SECONDS, seconds));
  }

  /** The floor time of a second of the plan. */
  public ZonedDateTime at(int seconds) {
    return origin().plusSeconds(seconds);
  }

  /** The end of the last day: nothing may be planned from here on. */
  public int horizonSeconds() {
    return secondsAt(date.plusDays(days).atStartOfDay());
  }

  private ZonedDateTime origin() {
    return date.atStartOfDay(zone);
  }
}
