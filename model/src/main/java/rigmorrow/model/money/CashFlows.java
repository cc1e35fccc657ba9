package rigmorrow.model.money;

import java.util.OptionalDouble;
import rigmorrow.model.check.Require;

/**
 * Sums of money over equal periods. Each falls due at the end of its period; the first period
 * begins now. The formulas for present values and annuities are those of NPV, PV and PMT in OASIS
 * OpenDocument (OpenFormula, financial functions).
 */
public final class CashFlows {
  private CashFlows() {}

  /**
   * What payments are worth now: the sum of payment / (1 + rate)^period.
   *
   * @param rate of interest for a period, 0.1 for 10 %; above -1
   * @param payments of period 1, 2 and so on
   */
  public static double presentValue(double rate, double... payments) {
    checkRate(rate);
    double value = 0;
    for (int period = 1; period <= payments.length; period++) {
      value += payments[period - 1] / Math.pow(1 + rate, period);
    }
    return value;
  }

  /**
   * What a payment of 1 at the end of every period is worth now: (1 - (1 + rate)^-periods) / rate,
   * and the number of periods where there is no interest.
   *
   * @param rate of interest for a period, 0.1 for 10 %; above -1
   * @param periods at least 1
   */
  public static double annuityFactor(double rate, int periods) {
    checkRate(rate);
    Require.atLeast("periods", periods, 1);
    return rate == 0 ? periods : (1 - Math.pow(1 + rate, -periods)) / rate;
  }

  /** The equal payment at the end of every period that is worth so much now. */
  public static double annuity(double rate, int periods, double presentValue) {
    return presentValue / annuityFactor(rate, periods);
  }

  /**
   * Periods until payments have brought back a price. Within a period they are taken to come in
   * evenly, as textbooks do it.
   *
   * @param price 0 or more
   * @param payments of period 1, 2 and so on
   * @return nothing where they do not bring it back
   */
  public static OptionalDouble payback(double price, double... payments) {
    return discountedPayback(price, 0, payments);
  }

  /**
   * Periods until the present values of payments have brought back a price. Within a period they
   * are taken to come in evenly.
   *
   * @param price 0 or more
   * @param rate of interest for a period, 0.1 for 10 %; above -1
   * @param payments of period 1, 2 and so on
   * @return nothing where they do not bring it back
   */
  public static OptionalDouble discountedPayback(double price, double rate, double... payments) {
    Require.atLeast("price", price, 0);
    checkRate(rate);
    double missing = price;
    for (int period = 1; period <= payments.length && missing > 0; period++) {
      double worth = payments[period - 1] / Math.pow(1 + rate, period);
      if (worth >= missing) {
        return OptionalDouble.of(period - 1 + missing / worth);
      }
      missing -= worth;
    }
    return missing <= 0 ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  private static void checkRate(double rate) {
    Require.that(
        rate > -1 && rate < Double.POSITIVE_INFINITY,
        "rate",
        rate,
        "a number above -1 such as 0.1");
  }
}
