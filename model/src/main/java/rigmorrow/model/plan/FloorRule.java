package rigmorrow.model.plan;

/**
 * The catalogue of rules a plan is held against. The first group is what the search weighs; the
 * second is what any plan keeps by the way its times are made, and what the checker re-examines.
 */
public enum FloorRule {
  RIG_TAKES_JOB(Level.HARD, "A job stands only on a rig that passes the fit check."),
  RIG_HOURS(Level.HARD, "A job starts and ends within one span of its rig's working hours."),
  SAMPLE_LEAVES(Level.HARD, "A job is unloaded before its sample leaves."),
  MUST_PROMISE(Level.HARD, "A must-promise is kept."),
  PIN_KEPT(Level.HARD, "A pinned job keeps its rig, place and start."),
  WITHIN_PLAN(Level.HARD, "A job ends before the last planned day is over."),
  LEFT_OUT(Level.MEDIUM, "Every job is planned; one left out counts its weight."),
  LATENESS(Level.SOFT, "Pictures are taken by their promise; minutes after it count."),
  CHANGEOVER_WORK(Level.SOFT, "Hands-on changeover minutes count."),
  FINISHING_TIME(Level.SOFT, "Minutes until the last job ends count."),

  JOB_PLANNED_ONCE(Level.HARD, "Every job is planned once or left out once."),
  HELD_BACK(Level.HARD, "A job that is left out by hand is not planned."),
  JOB_ORDER(Level.HARD, "Changeover, load, capture and unload follow each other."),
  STEP_TIME(Level.HARD, "Every part takes the time that it was computed to take."),
  CHANGEOVER_STEPS(Level.HARD, "The changeover does what the next setup and its kit need."),
  RIG_ONE_JOB(Level.HARD, "A rig does one job at a time."),
  OPERATOR_ONE_TASK(Level.HARD, "An operator does one thing at a time."),
  OPERATOR_HOURS(Level.HARD, "Hands-on parts lie within the shifts and outside breaks."),
  OPERATOR_SKILLS(Level.HARD, "The operator in charge has the skills the part needs."),
  ENOUGH_PEOPLE(Level.HARD, "A part that takes two people has two."),
  KIT_ONE_PLACE(Level.HARD, "A piece of kit is in one place at a time."),
  KIT_TAKEN_OFF(Level.HARD, "A rig stands still while kit is taken off it."),
  SAMPLE_ONE_PLACE(Level.HARD, "A sample is in one place at a time."),
  SAMPLE_ARRIVED(Level.HARD, "No job starts before its sample arrives."),
  RING_SERVICE(Level.HARD, "A plate ring is serviced before it has turned too often."),
  FIGURES(Level.HARD, "The plan's figures are those of its times.");

  /** How a rule counts. */
  public enum Level {
    /** Cannot or must not be done. */
    HARD,
    /** Work left undone. */
    MEDIUM,
    /** Costs time or comfort. */
    SOFT
  }

  private final Level level;
  private final String sentence;

  FloorRule(Level level, String sentence) {
    this.level = level;
    this.sentence = sentence;
  }

  /** How the rule counts. */
  public Level level() {
    return level;
  }

  /** The rule in one sentence. */
  public String sentence() {
    return sentence;
  }
}
