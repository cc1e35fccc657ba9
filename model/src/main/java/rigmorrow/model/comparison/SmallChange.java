package rigmorrow.model.comparison;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.statistic.Interval;

/**
 * What one small change buys for its money.
 *
 * @param result of the change
 * @param boughtPerDay what lateness, jobs left out, overtime and rig hours cost less in a day
 * @param spentPerDay more regular pay, and the price with interest and running cost in equal parts
 *     over the working days of its life; 0 or less where it costs nothing more
 * @param priced false where something is to be bought and nobody said for how much
 */
public record SmallChange(
    ScenarioResult result, Interval boughtPerDay, double spentPerDay, boolean priced) {

  /** What a change buys. */
  public static SmallChange of(ScenarioResult result, MoneyTerms terms) {
    double pay = result.difference(Figure.REGULAR_PAY).difference().middle();
    Interval bought = result.difference(Figure.OTHER_COST).difference().times(-1);
    Investment purchase = result.scenario().purchase();
    double bill = purchase == null ? 0 : purchase.costPerYear() / terms.workingDaysPerYear();
    return new SmallChange(result, bought, pay + bill, !result.scenario().lacksPrice());
  }

  /**
   * Bought for each unit of money that is spent; empty where nothing is spent or no price known.
   */
  public OptionalDouble perMoney() {
    return priced && spentPerDay > 0
        ? OptionalDouble.of(boughtPerDay.middle() / spentPerDay)
        : OptionalDouble.empty();
  }

  /** True where the days show beyond luck that it buys something at all. */
  public boolean sure() {
    return boughtPerDay.count() > 1 && boughtPerDay.low() > 0;
  }

  /**
   * Those that buy something beyond luck first; among them, and among the others, those that buy
   * most for their money, and then those without a price by what they buy.
   */
  public static List<SmallChange> sorted(List<SmallChange> changes) {
    return changes.stream()
        .sorted(
            Comparator.comparing((SmallChange change) -> !change.sure())
                .thenComparing(change -> -change.perMoney().orElse(Double.NEGATIVE_INFINITY))
                .thenComparing(change -> -change.boughtPerDay.middle()))
        .toList();
  }
}
