package rigmorrow.model.floor;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Set;
import rigmorrow.model.check.Require;

/**
 * Hours that come back every week.
 *
 * @param days the days they hold for; empty means every day
 * @param from first minute
 * @param to end, exclusive; 00:00 means the end of the day; a time before {@code from} means the
 *     next morning; from 00:00 to 00:00 is the whole day
 */
public record OpenHours(Set<DayOfWeek> days, LocalTime from, LocalTime to) {
  public OpenHours {
    days = Set.copyOf(days);
    Require.that(
        !from.equals(to) || to.equals(LocalTime.MIDNIGHT),
        "hours.to",
        to,
        "a time other than " + from);
  }

  /** True when these hours start on that day of the week. */
  public boolean on(DayOfWeek day) {
    return days.isEmpty() || days.contains(day);
  }
}
