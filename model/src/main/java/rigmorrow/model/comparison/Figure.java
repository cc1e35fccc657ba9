package rigmorrow.model.comparison;

import java.util.function.ToDoubleFunction;
import rigmorrow.model.outcome.Outcome;

/** What scenarios are compared by, each for a day. */
public enum Figure {
  /** Money: everything in {@link rigmorrow.model.money.DayCost}. */
  COST(Better.LESS, outcome -> outcome.cost().total() / outcome.days()),
  /** Money for regular hours alone. */
  REGULAR_PAY(Better.LESS, outcome -> outcome.cost().regular() / outcome.days()),
  /** Money for all but regular hours. */
  OTHER_COST(
      Better.LESS, outcome -> (outcome.cost().total() - outcome.cost().regular()) / outcome.days()),
  /** Jobs that are left out. */
  LEFT_OUT(Better.LESS, outcome -> outcome.leftOut() / (double) outcome.days()),
  /** Promises kept in per cent of the promises. */
  KEPT(Better.MORE, Outcome::keptPercent),
  /** Hours after promises, times each job's weight. */
  LATE_HOURS(Better.LESS, outcome -> hours(outcome.lateSeconds()) / outcome.days()),
  /** Hours from midnight of the first day until the last job ends. */
  FINISHED(Better.LESS, outcome -> hours(outcome.finishedSeconds())),
  /** Hands-on hours of changeovers. */
  CHANGEOVER_HOURS(Better.LESS, outcome -> hours(outcome.changeoverSeconds()) / outcome.days()),
  /** Hours of overtime of the whole crew. */
  OVERTIME_HOURS(Better.LESS, outcome -> hours(outcome.crew().overtimeSeconds()) / outcome.days()),
  /** Hands-on time of the crew in per cent of what is paid for. */
  CREW_USE(Better.NEITHER, outcome -> outcome.crew().usePercent()),
  /** Allocation efficiency of the rigs, ISO 22400-2, in per cent. */
  ALLOCATION(Better.NEITHER, outcome -> outcome.rigs().allocationPercent()),
  /** Utilisation efficiency of the rigs, ISO 22400-2, in per cent. */
  UTILISATION(Better.MORE, outcome -> outcome.rigs().utilisationPercent());

  /** Which way is better. */
  public enum Better {
    /** The smaller figure. */
    LESS,
    /** The greater figure. */
    MORE,
    /** Depends on what is wanted. */
    NEITHER
  }

  private static final double SECONDS_PER_HOUR = 3600;

  private final Better better;
  private final ToDoubleFunction<Outcome> value;

  Figure(Better better, ToDoubleFunction<Outcome> value) {
    this.better = better;
    this.value = value;
  }

  /** Which way is better. */
  public Better better() {
    return better;
  }

  /** The figure of one outcome. */
  public double of(Outcome outcome) {
    return value.applyAsDouble(outcome);
  }

  private static double hours(long seconds) {
    return seconds / SECONDS_PER_HOUR;
  }
}
