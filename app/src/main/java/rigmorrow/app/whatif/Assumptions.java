package rigmorrow.app.whatif;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.app.report.Counted;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Pair;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.scenario.Scenario;

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
      all.add(
          "Weak evidence: with only "
              + Counted.of(days, "day")
              + " the ranges (low to high) of savings, paybacks and other figures are too narrow.");
    }
    if (compared.reused() > 0) {
      all.add(reused(compared));
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

  /** How many plans were there already; where time stops plans, what that may mean. */
  private static String reused(Compared compared) {
    int made = compared.cells().all().size();
    int reused = compared.reused();
    String soFar = compared.whole() ? "" : " so far";
    String which;
    if (reused < made) {
      which = reused + " of " + Counted.of(made, "plan");
    } else if (made == 1) {
      which = "the only plan" + soFar;
    } else {
      which = "all " + made + " plans" + soFar;
    }
    return "Used again: "
        + which
        + (reused == 1 ? " was" : " were")
        + " there already"
        + (mixed(compared)
            ? "; time stopped them, on a machine that may have been slower or faster then"
            : "")
        + ".";
  }

  /** True where plans that time stopped before stand beside plans of now. */
  private static boolean mixed(Compared compared) {
    boolean others = !compared.whole() || compared.reused() < compared.cells().all().size();
    return compared.settings().time() != null && compared.reused() > 0 && others;
  }

  /**
   * For which scenarios the answer is another under another demand. Nothing is said of those whose
   * demands are not all planned on the same days: what differs may be the days.
   */
  private static String demands(Compared compared) {
    String planned =
        "Demand: "
            + compared.settings().demandPercents().stream()
                .sorted()
                .map(FigureText::demand)
                .collect(Collectors.joining(", "))
            + (compared.whole() ? " were" : " are")
            + " planned too";
    List<String> judged = new ArrayList<>();
    List<String> other = new ArrayList<>();
    for (Scenario scenario : compared.study().scenarios()) {
      Collection<ScenarioResult> results = compared.byDemand(scenario).values();
      if (compared.hasMoney() && comparable(compared, results)) {
        judged.add(scenario.title());
        if (verdicts(results) > 1) {
          other.add(scenario.title());
        }
      }
    }
    if (judged.isEmpty()) {
      return planned + ".";
    }
    boolean every = judged.size() == compared.study().scenarios().size();
    if (other.isEmpty()) {
      return planned
          + "; the answer stays the same for "
          + (every ? "each scenario" : String.join(", ", judged))
          + ", though its figures may not.";
    }
    return planned
        + "; the answer changes with demand for "
        + (every ? other.size() + " of " + Counted.of(judged.size(), "scenario") + ": " : "")
        + String.join(", ", other)
        + ".";
  }

  /** True for money under every demand, on the same days. */
  private static boolean comparable(Compared compared, Collection<ScenarioResult> results) {
    return results.size() == compared.settings().demandPercents().size() + 1
        && results.stream().allMatch(one -> one.payoff().isPresent())
        && results.stream().map(Assumptions::days).distinct().count() == 1;
  }

  private static List<String> days(ScenarioResult result) {
    return result.difference(Figure.COST).pairs().stream().map(Pair::batch).toList();
  }

  private static long verdicts(Collection<ScenarioResult> results) {
    return results.stream()
        .flatMap(one -> one.payoff().stream())
        .map(Payoff::verdict)
        .distinct()
        .count();
  }

  /** Sentences for the end of a report; none of {@link #first} is told again. */
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
          (mixed(compared)
                  ? ""
                  : "Time stops each plan, so those made while the machine was slower or busier are"
                      + " somewhat worse. ")
              + "Steps in place of time make plans the same at any time.");
    }
    all.add(
        "Intervals hold the mean of the days in 95 of 100 cases, if the days to come are like these"
            + " and there are enough of them (percentile bootstrap over days).");
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
