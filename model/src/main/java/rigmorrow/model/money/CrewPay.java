package rigmorrow.model.money;

/** What operators are paid for. */
public enum CrewPay {
  /**
   * Their whole regular shift without its breaks, whether there is work or not, and from there on
   * until they have done their last task.
   */
  SHIFT,
  /** The time their hands are needed; the rest of the shift they work elsewhere. */
  HANDS_ON
}
