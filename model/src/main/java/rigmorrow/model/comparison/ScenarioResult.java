package rigmorrow.model.comparison;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.statistic.Interval;

/**
 * A scenario held against the floor as it is, under one demand.
 *
 * @param scenario which
 * @param demandPercent jobs more than there were in the batches
 * @param differences of every figure
 * @param payoff money; empty where the scenario has a demand of its own, which is not to be held
 *     against that of the floor as it is
 */
public record ScenarioResult(
    Scenario scenario,
    double demandPercent,
    Map<Figure, Difference> differences,
    Optional<Payoff> payoff) {
  public ScenarioResult {
    differences = Map.copyOf(differences);
  }

  /**
   * The result of a scenario.
   *
   * @return nothing where it has no batch and seed in common with the floor as it is
   */
  public static Optional<ScenarioResult> of(
      Scenario scenario, double demandPercent, Cells cells, MoneyTerms terms) {
    Map<Figure, Difference> differences = new EnumMap<>(Figure.class);
    for (Figure figure : Figure.values()) {
      cells
          .difference(scenario.name(), demandPercent, figure)
          .ifPresent(difference -> differences.put(figure, difference));
    }
    Difference cost = differences.get(Figure.COST);
    if (cost == null) {
      return Optional.empty();
    }
    Payoff payoff =
        new Payoff(cost.difference().times(-1), terms.workingDaysPerYear(), scenario.purchase());
    return Optional.of(
        new ScenarioResult(
            scenario,
            demandPercent,
            differences,
            scenario.changesDemand() ? Optional.empty() : Optional.of(payoff)));
  }

  /** How one figure differs. */
  public Difference difference(Figure figure) {
    Difference difference = differences.get(figure);
    if (difference == null) {
      throw new IllegalStateException("no " + figure);
    }
    return difference;
  }

  /** Number of batches it was compared on. */
  public int batches() {
    return difference(Figure.COST).pairs().size();
  }

  /**
   * What a day would save if lateness, jobs left out, overtime and rig hours were so many per cent
   * more, and regular pay the same: an assumption for where the demand itself was not planned.
   */
  public Interval assumedSaving(double demandPercent) {
    double pay = difference(Figure.REGULAR_PAY).difference().middle();
    double factor = 1 + demandPercent / 100;
    return difference(Figure.OTHER_COST).difference().times(-factor).plus(-pay);
  }
}
