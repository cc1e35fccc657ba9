package rigmorrow.model.money;

import rigmorrow.model.check.Require;

/**
 * How a day's money becomes a year's.
 *
 * @param workingDaysPerYear days on which the floor works, 1 to 366
 * @param pay what operators are paid for
 */
public record MoneyTerms(int workingDaysPerYear, CrewPay pay) {
  /** 250 days, whole shifts. */
  public static final MoneyTerms USUAL = new MoneyTerms(250, CrewPay.SHIFT);

  private static final int MOST_DAYS = 366;

  public MoneyTerms {
    Require.between("money.workingDaysPerYear", workingDaysPerYear, 1, MOST_DAYS);
  }
}
