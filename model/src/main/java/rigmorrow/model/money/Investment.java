package rigmorrow.model.money;

import java.util.Arrays;
import java.util.OptionalDouble;
import rigmorrow.model.check.Require;

/**
 * Something that is bought once, used for some years, and then worth nothing. What it saves is
 * taken to be the same every year and to come in at the year's end; there is no inflation and no
 * tax.
 *
 * @param price paid now, 0 or more
 * @param lifeYears how long it is used, 1 to 100
 * @param interestPercent what money costs in a year, 0 to 100
 * @param runningPerYear what it costs to keep in a year, or saves when below 0
 */
public record Investment(
    double price, int lifeYears, double interestPercent, double runningPerYear) {
  private static final double PERCENT = 100;
  private static final int MOST_YEARS = 100;

  public Investment {
    Require.atLeast("purchase.price", price, 0);
    Require.between("purchase.lifeYears", lifeYears, 1, MOST_YEARS);
    Require.between("purchase.interestPercent", interestPercent, 0, PERCENT);
    Require.that(
        Double.isFinite(runningPerYear), "purchase.runningPerYear", runningPerYear, "a number");
  }

  /** What is left of a year's saving when the running cost is paid. */
  public double netPerYear(double savedPerYear) {
    return savedPerYear - runningPerYear;
  }

  /**
   * Years until the price is saved, without interest, whether or not it lasts that long.
   *
   * @param savedPerYear before running cost
   * @return nothing where it never is
   */
  public OptionalDouble paybackYears(double savedPerYear) {
    double net = netPerYear(savedPerYear);
    if (price == 0 && net >= 0) {
      return OptionalDouble.of(0);
    }
    return net > 0 ? OptionalDouble.of(price / net) : OptionalDouble.empty();
  }

  /**
   * Years until the price and its interest are saved.
   *
   * @param savedPerYear before running cost
   * @return nothing where that is not within its life
   */
  public OptionalDouble discountedPaybackYears(double savedPerYear) {
    double[] years = new double[lifeYears];
    Arrays.fill(years, netPerYear(savedPerYear));
    return price == 0 && netPerYear(savedPerYear) < 0
        ? OptionalDouble.empty()
        : CashFlows.discountedPayback(price, rate(), years);
  }

  /**
   * What it is worth today that it will save so much every year of its life, less its price.
   *
   * @param savedPerYear before running cost
   */
  public double netPresentValue(double savedPerYear) {
    return netPerYear(savedPerYear) * CashFlows.annuityFactor(rate(), lifeYears) - price;
  }

  /** What it costs every year of its life: price with interest in equal parts, and running cost. */
  public double costPerYear() {
    return CashFlows.annuity(rate(), lifeYears, price) + runningPerYear;
  }

  private double rate() {
    return interestPercent / PERCENT;
  }
}
