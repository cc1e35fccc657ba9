package rigmorrow.model.lifting;

/**
 * How long lifting goes on before lighter work gives time to recover (NIOSH 94-110, section
 * 1.3.5.2).
 */
public enum LiftDuration {
  /** One hour or less, followed by lighter work for at least as long. */
  UP_TO_1_HOUR,
  /** More than one and up to two hours, followed by lighter work for at least 0.3 of that time. */
  OVER_1_TO_2_HOURS,
  /**
   * More than two and up to eight hours, with the usual breaks. The equation says nothing about
   * more.
   */
  OVER_2_TO_8_HOURS
}
