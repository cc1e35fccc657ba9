package rigmorrow.app.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.statistic.Interval;

class MoneyTextTest {
  private final MoneyText money = new MoneyText("DKK");

  @ParameterizedTest
  @CsvSource({
    "24123.4, '24,100'",
    "0, 0",
    "-0.04, 0.0",
    "96.4, 96",
    "3.44, 3.4",
    "-1634.2, '-1,630'",
    "9.96, 10.0",
    "1234567, '1,230,000'"
  })
  void hasNoMoreDigitsThanMeanAnything(double value, String shown) {
    assertThat(MoneyText.number(value)).isEqualTo(shown);
  }

  @Test
  void bothEndsAreToldAlike() {
    assertThat(money.range(-23, 2.5)).isEqualTo("-23 to 3 DKK");
    assertThat(money.range(-2, 2.5)).isEqualTo("-2.0 to 2.5 DKK");
    assertThat(money.range(7, 7)).isEqualTo("7.0 DKK");
    assertThat(money.interval(new Interval(96, 60, 133, 30))).isEqualTo("96 DKK (60 to 133)");
    assertThat(money.interval(new Interval(0, 0, 0, 30))).isEqualTo("0 DKK");
    assertThat(money.whole(1634.4)).isEqualTo("1,634 DKK");
    assertThat(MoneyText.ratio(-0.001)).isEqualTo("0.00");
  }

  @ParameterizedTest
  @CsvSource({
    "0.6, 0.7, 0.9, 7 to 11 months",
    "1.4, 2.2, 2.9, 16 to 35 months",
    "1.4, 2.2, 3.1, 1.4 to 3.1 years",
    "4.01, 5, 7.91, 4.0 to 8.0 years",
    "0.5, 0.5, 0.5, 6 months"
  })
  void paybackIsRoundedOutwards(double soonest, double middle, double latest, String shown) {
    assertThat(
            MoneyText.payback(
                new Payoff.Years(
                    OptionalDouble.of(soonest),
                    OptionalDouble.of(middle),
                    OptionalDouble.of(latest))))
        .isEqualTo(shown);
  }

  @Test
  void paybackMayBeNever() {
    OptionalDouble never = OptionalDouble.empty();
    assertThat(MoneyText.payback(new Payoff.Years(never, never, never))).isEqualTo("never");
    assertThat(MoneyText.payback(new Payoff.Years(OptionalDouble.of(0.71), never, never)))
        .isEqualTo("from 8 months to never");
    assertThat(MoneyText.soonest(new Payoff.Years(OptionalDouble.of(0.08), never, never)))
        .isEqualTo("less than 1 month");
    assertThat(MoneyText.soonest(new Payoff.Years(OptionalDouble.of(0.16), never, never)))
        .isEqualTo("1 month");
    assertThat(MoneyText.length(0.01)).isEqualTo("less than 1 month");
    assertThat(MoneyText.length(0.5)).isEqualTo("6 months");
    assertThat(MoneyText.length(4)).isEqualTo("4.0 years");
  }

  @ParameterizedTest
  @CsvSource({"31, 31 min", "62, 1 h 2 min", "33, 33 min", "1, 1 min"})
  void exactMinutesStayWhatTheyAre(int minutes, String shown) {
    FigureText figures = new FigureText("DKK");
    double hours = minutes / 60.0;
    assertThat(figures.value(Figure.CHANGEOVER_HOURS, hours)).isEqualTo(shown);
    assertThat(figures.value(Figure.OVERTIME_HOURS, hours)).isEqualTo(shown);
    assertThat(figures.difference(Figure.OVERTIME_HOURS, new Interval(hours, 0, hours, 9)))
        .startsWith("+" + shown + " (");
  }

  /** Of three figures one is exact: what rounding takes from the other two is the same. */
  @Test
  void aRowAddsUpAsWellAsRoundingAllows() {
    FigureText figures = new FigureText("DKK");
    double base = 31 / 60.0;
    for (int seconds = 31 * 60; seconds < 59 * 60; seconds++) {
      double scenario = seconds / 3600.0;
      double apart = scenario - base;
      assertThat(
              minutes(figures.difference(Figure.OVERTIME_HOURS, new Interval(apart, 0, apart, 9))))
          .as("%d s", seconds)
          .isEqualTo(minutes(figures.value(Figure.OVERTIME_HOURS, scenario)) - 31);
    }
  }

  private static long minutes(String shown) {
    return Long.parseLong(shown.replaceFirst("^\\+", "").replaceFirst(" min.*", ""));
  }

  @Test
  void everyFigureHasItsUnit() {
    FigureText figures = new FigureText("DKK");
    assertThat(figures.value(Figure.COST, 1634.4)).isEqualTo("1,634 DKK");
    assertThat(figures.value(Figure.LEFT_OUT, 1.25)).isEqualTo("1.3");
    assertThat(figures.value(Figure.KEPT, 98.76)).isEqualTo("98.8 %");
    assertThat(figures.value(Figure.FINISHED, 16.75)).isEqualTo("16:45");
    assertThat(figures.value(Figure.FINISHED, 33.5)).isEqualTo("day 2 09:30");
    assertThat(figures.value(Figure.OVERTIME_HOURS, 0.04)).isEqualTo("2 min");
    assertThat(figures.value(Figure.OVERTIME_HOURS, 0.001)).isEqualTo("less than 1 min");
    assertThat(figures.value(Figure.OVERTIME_HOURS, 0)).isEqualTo("0 min");
    assertThat(figures.value(Figure.CHANGEOVER_HOURS, 5.3)).isEqualTo("5 h 18 min");
    assertThat(figures.value(Figure.LATE_HOURS, 5.3)).isEqualTo("5.3 h");
    assertThat(figures.difference(Figure.CHANGEOVER_HOURS, new Interval(-1.5, -2, -0.001, 9)))
        .isEqualTo("-1 h 30 min (-2 h to 0 min)");
    assertThat(figures.difference(Figure.OVERTIME_HOURS, new Interval(0.1, -0.2, 0.3, 9)))
        .isEqualTo("+6 min (-12 to +18)");
    assertThat(figures.difference(Figure.FINISHED, new Interval(-0.5, -0.75, -0.25, 9)))
        .isEqualTo("-30 min (-45 to -15)");
    assertThat(figures.difference(Figure.COST, new Interval(16, -2.8, 35, 9)))
        .isEqualTo("+16 DKK (-3 to +35)");
    assertThat(figures.difference(Figure.KEPT, new Interval(0.02, -0.04, 1, 9)))
        .isEqualTo("0.0 % (0.0 to +1.0)");
    assertThat(FigureText.percent(5)).isEqualTo("5 %");
    assertThat(FigureText.percent(12.5)).isEqualTo("12.5 %");
  }
}
