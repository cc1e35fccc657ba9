package rigmorrow.app.whatif;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.report.Counted;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.MoneyTerms;

/** What the figures rest on, so that a reader can disagree. */
public final class Assumptions {
  private static final int FEW_DAYS = 10;

  private Assumptions() {}

  /** Sentences for the end of a report. */
  public static List<String> of(Compared compared) {
    List<String> all = new ArrayList<>(compared.study().assumptions());
    all.add(days(compared));
    all.add(
        "Both sides of every comparison are plans made by this program, "
            + compared.settings().effort()
            + " each, "
            + Counted.of(compared.settings().seeds(), "seed")
            + ", and the same seeds for all. None is what really happened on those days.");
    if (compared.settings().time() != null) {
      all.add(
          "Time stops each plan, and plans from earlier comparisons are used again: where the"
              + " machine was slower or busier then, theirs are somewhat worse. Steps in place of time"
              + " make plans the same at any time.");
    }
    all.add(
        "Intervals hold the mean of the days in 95 of 100 cases, if the days to come are like these"
            + " (percentile bootstrap over days).");
    if (compared.days().size() < FEW_DAYS) {
      all.add(
          "With only " + Counted.of(compared.days().size(), "day") + " intervals are too narrow.");
    }
    all.addAll(money(compared));
    return all;
  }

  private static String days(Compared compared) {
    int count = compared.days().size();
    String first = compared.days().get(0).name();
    String last = compared.days().get(count - 1).name();
    return Counted.of(count, "day")
        + " from "
        + first
        + " to "
        + last
        + ", each with its floor and its jobs as they were.";
  }

  private static List<String> money(Compared compared) {
    List<String> all = new ArrayList<>();
    MoneyTerms terms = compared.study().terms();
    Costs costs = compared.costs();
    MoneyText money = new MoneyText(costs.currency());
    all.add(
        Counted.of(terms.workingDaysPerYear(), "working day")
            + " a year. A purchase saves the same every year, at the year's end; no inflation, no"
            + " tax, and nothing is left of it after its life.");
    all.add(
        (terms.pay() == CrewPay.SHIFT
                ? "Operators are paid for their whole regular shift, and beyond it until their last"
                    + " task ends"
                : "Operators are paid for hands-on time only")
            + ": "
            + money.amount(costs.operatorPerHour())
            + " an hour, "
            + FigureText.decimal(costs.overtimeFactor())
            + " times as much for overtime, which is what lies beyond the regular hours of the"
            + " floor as it is.");
    all.add(
        "A rig costs "
            + money.amount(costs.rigPerHour())
            + " for each hour in which it runs, waiting left out; an hour after a promise costs "
            + money.amount(costs.latePerHour())
            + " and a job that is left out "
            + money.amount(costs.leftOutPerJob())
            + ", both times the job's weight.");
    if (costs.leftOutPerJob() == 0) {
      all.add(
          "Jobs left out have no price in the floor file (leftOutPerJob): a scenario that leaves"
              + " out more does not look dearer for it.");
    }
    return all;
  }
}
