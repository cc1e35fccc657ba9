package rigmorrow.data.shot;

import java.time.LocalDate;

/** How far from the plan's date a time in a shot list may be; farther off it is a slip. */
public final class PlanReach {
  private PlanReach() {}

  /** True when a date is at most a year before or after the plan's first day. */
  public static boolean holds(LocalDate date, LocalDate planDate) {
    return !date.isBefore(planDate.minusYears(1)) && !date.isAfter(planDate.plusYears(1));
  }

  /** What is accepted, as a phrase for the user. */
  public static String accepted(LocalDate planDate) {
    return "a date at most a year from the plan's " + planDate;
  }
}
