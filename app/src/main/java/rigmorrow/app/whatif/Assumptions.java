package rigmorrow.app.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rigmorrow.app.report.Counted;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.MoneyTerms;

/** What the figures rest on, so that a reader can disagree. */
public final class Assumptions {
  private static final int FEW_DAYS = 10;

  /** How other demands are planned with the command, as a request. */
  public static final String OTHER_DEMANDS = "plan other demands too (--demand)";

  private Assumptions() {}

  /**
   * What a reader has to know before the answers: how little they rest on, which plans are not of
   * this run, and which demands were planned; a sentence each.
   *
   * @param otherDemands how other demands are planned, as a request
   */
  public static List<String> first(Compared compared, String otherDemands) {
    List<String> all = new ArrayList<>();
    int days = compared.days().size();
    if (days < FEW_DAYS) {
      all.add("Weak evidence: with only " + Counted.of(days, "day") + " intervals are too narrow.");
    }
    if (compared.reused() > 0) {
      int made = compared.cells().all().size();
      String how =
          compared.settings().time() == null
              ? ""
              : "; time stopped them, on a machine that may have been slower or faster then";
      all.add(
          "Used again: "
              + (compared.reused() == made ? "all " : compared.reused() + " of ")
              + Counted.of(made, "plan")
              + (compared.reused() == 1 ? " was" : " were")
              + " there already"
              + how
              + ".");
    }
    if (!compared.study().scenarios().isEmpty()) {
      all.add(
          compared.settings().demandPercents().isEmpty()
              ? "Demand: only that of these days was planned; to see what paybacks depend on, "
                  + otherDemands
                  + "."
              : demands(compared));
    }
    return all;
  }

  /** For which scenarios the answer is another under another demand. */
  private static String demands(Compared compared) {
    String planned =
        "Demand: "
            + compared.settings().demandPercents().stream()
                .sorted()
                .map(FigureText::demand)
                .collect(Collectors.joining(", "))
            + " were planned too";
    List<String> judged = new ArrayList<>();
    List<String> other = new ArrayList<>();
    for (ScenarioResult result : compared.results()) {
      if (compared.hasMoney() && result.payoff().isPresent()) {
        String title = result.scenario().title();
        judged.add(title);
        if (verdicts(compared, result).size() > 1) {
          other.add(title);
        }
      }
    }
    if (judged.isEmpty()) {
      return planned + ".";
    }
    return planned
        + (other.isEmpty()
            ? "; the answer stays the same for each scenario, though its figures may not."
            : "; the answer changes with demand for "
                + other.size()
                + " of "
                + Counted.of(judged.size(), "scenario")
                + ": "
                + String.join(", ", other)
                + ".");
  }

  private static Set<Payoff.Verdict> verdicts(Compared compared, ScenarioResult result) {
    return compared.byDemand(result.scenario()).values().stream()
        .flatMap(one -> one.payoff().stream())
        .map(Payoff::verdict)
        .collect(Collectors.toSet());
  }

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
