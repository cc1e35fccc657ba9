package rigmorrow.model.money;

import java.util.List;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;

/** Published worked examples of present values, annuities and paybacks. */
public final class MoneyChecks {
  private static final String FORMCALC =
      "Adobe Designer, FormCalc reference (help.adobe.com, AEM Forms 6.1), ";
  private static final String CHAPTER_8 =
      "textbook solutions, chapter 8, \"Net Present Value and Other Investment Criteria\", problems"
          + " 1, 3 and 7 (es.scribd.com/document/215223658)";
  private static final String DISCOUNTED =
      "textbook problem \"Calculating Discounted Payback\", solved at justaaa.com/finance/28200";

  private MoneyChecks() {}

  /** The list. */
  public static List<OutsideCheck> all() {
    return List.of(
        check(
            "Present value of payments",
            FORMCALC + "function NPV",
            Figure.rounded("6.5 %, 5,000", "4694.83568075117", CashFlows.presentValue(0.065, 5000)),
            Figure.rounded(
                "10 %, four years",
                "11529.60863329007", CashFlows.presentValue(0.1, 500, 1500, 4000, 10_000)),
            Figure.rounded(
                "2.75 %, five months",
                "273.14193838457", CashFlows.presentValue(0.0275 / 12, 50, 60, 40, 100, 25))),
        check(
            "Equal payment for a loan",
            FORMCALC + "function Pmt",
            Figure.rounded(
                "150,000 at 4.75 %, 25 years monthly",
                "855.17604207164", CashFlows.annuity(0.0475 / 12, 300, 150_000)),
            Figure.rounded(
                "25,000 at 8.5 %, 12 years",
                "3403.82145169876", CashFlows.annuity(0.085, 12, 25_000))),
        check(
            "Net present value and payback of two projects of 200",
            CHAPTER_8,
            Figure.rounded("80 a year for 4 at 11 %", "48.20", npv(11, 4, 80)),
            Figure.rounded("100 a year for 3 at 11 %", "44.37", npv(11, 3, 100)),
            Figure.rounded("80 a year for 4 at 16 %", "23.85", npv(16, 4, 80)),
            Figure.rounded("100 a year for 3 at 16 %", "24.59", npv(16, 3, 100)),
            Figure.rounded(
                "payback at 80 a year", "2.5", project(11, 4).paybackYears(80).orElse(0)),
            Figure.rounded(
                "payback at 100 a year", "2.0", project(11, 3).paybackYears(100).orElse(0))),
        check(
            "Cost per year of two machines",
            "textbook problem on equivalent annual cost, solved at wizedu.com/questions/864390",
            Figure.rounded(
                "104,128.18 over 7 years at 8 %",
                "20000.15", CashFlows.annuity(0.08, 7, 104_128.18)),
            Figure.rounded(
                "10,000, then 10,000 for 5 years at 10 %",
                "12637.97", new Investment(10_000, 5, 10, 10_000).costPerYear())),
        check(
            "Payback of 1,000,000 by uneven payments",
            "ACCA F9 workbook (2017), chapter 2, question 5; printed 3 years and 11 months, months"
                + " rounded up",
            Figure.equal("months", 47, (long) Math.ceil(12 * unevenYears()))),
        check(
            "Discounted payback at 14 % of 2,800, 3,700, 5,100 and 4,300",
            DISCOUNTED,
            Figure.rounded("years for 5,200", "1.96", discounted(5200)),
            Figure.rounded("years for 5,400", "2.03", discounted(5400)),
            Figure.rounded("years for 10,400", "3.65", discounted(10_400))),
        check(
            "Net present value of 200,000 at 12 %",
            "CFA practice question, table at gaodun.com/q/500s5h",
            Figure.rounded(
                "",
                "33673.98",
                CashFlows.presentValue(0.12, 60_000, 80_000, 70_000, 60_000, 50_000) - 200_000)));
  }

  private static Investment project(int percent, int years) {
    return new Investment(200, years, percent, 0);
  }

  private static double npv(int percent, int years, double savedPerYear) {
    return project(percent, years).netPresentValue(savedPerYear);
  }

  private static double unevenYears() {
    return CashFlows.payback(1000, 400, 250, 200, 175, 75, 250).orElse(0);
  }

  private static double discounted(double price) {
    return CashFlows.discountedPayback(price, 0.14, 2800, 3700, 5100, 4300).orElse(0);
  }

  private static OutsideCheck check(String what, String source, Figure... figures) {
    return OutsideCheck.of(what, source, CashFlowsTest.class, () -> List.of(figures));
  }
}
