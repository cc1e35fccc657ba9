package rigmorrow.app.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import rigmorrow.app.report.Counted;
import rigmorrow.model.comparison.Difference;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.comparison.SmallChange;
import rigmorrow.model.money.Investment;
import rigmorrow.model.statistic.Interval;

/** Says in plain sentences what the figures of a scenario show, and what they do not. */
public final class ResultSentences {
  private static final List<Figure> BESIDES =
      List.of(
          Figure.LEFT_OUT,
          Figure.KEPT,
          Figure.LATE_HOURS,
          Figure.FINISHED,
          Figure.CHANGEOVER_HOURS,
          Figure.OVERTIME_HOURS);

  /** What only tells how busy rigs and crew are; with {@link #BESIDES} all figures but money. */
  private static final List<Figure> USE =
      List.of(Figure.CREW_USE, Figure.ALLOCATION, Figure.UTILISATION);

  private final MoneyText money;
  private final FigureText figures;
  private final boolean hasMoney;

  /**
   * @param currency ISO 4217 code
   * @param hasMoney false where the floor gives no costs
   */
  public ResultSentences(String currency, boolean hasMoney) {
    this.money = new MoneyText(currency);
    this.figures = new FigureText(currency);
    this.hasMoney = hasMoney;
  }

  /** The money of a scenario in a sentence that begins with what it does. */
  public String money(ScenarioResult result) {
    Optional<Payoff> payoff = result.payoff();
    if (payoff.isEmpty()) {
      return "plans another demand, so its money is not held against the floor as it is.";
    }
    if (!hasMoney) {
      return "cannot be judged by money: the floor file gives no costs.";
    }
    return money(payoff.get(), result);
  }

  private String money(Payoff payoff, ScenarioResult result) {
    Interval saved = payoff.savedPerDay();
    return switch (payoff.verdict()) {
      case TOO_FEW_DAYS ->
          "was compared on one day, which shows nothing of others: that day "
              + (saved.middle() < 0
                  ? "costs " + money.amount(-saved.middle()) + " more."
                  : "costs " + money.amount(saved.middle()) + " less.");
      case NO_DIFFERENCE -> none(saved, result);
      case SAVES -> "saves " + money.interval(saved) + " a day.";
      case COSTS_MORE -> "costs " + money.interval(saved.times(-1)) + " a day more.";
      case PAYS_BACK -> paysBack(payoff);
      case MAY_PAY_BACK -> mayPayBack(payoff);
      case NEVER_PAYS_BACK -> never(payoff);
    };
  }

  private String none(Interval saved, ScenarioResult result) {
    String days = Counted.of(result.batches(), "day");
    if (result.difference(Figure.COST).same()) {
      return "makes no difference: all " + days + " cost the same.";
    }
    return "makes no difference in money that "
        + days
        + " can show: a day saves "
        + money.range(saved.low(), saved.high())
        + result.payoff().map(payoff -> unsure(payoff, ", so it never pays back")).orElse("")
        + ".";
  }

  /**
   * What follows from a worth that is partly or wholly below 0; empty where it is above.
   *
   * @param never what to say where it is wholly below
   */
  private static String unsure(Payoff payoff, String never) {
    Payoff.Years years = payoff.payback();
    if (years == null || years.latest().isPresent()) {
      return "";
    }
    return years.soonest().isPresent() ? ", so it may never pay back" : never;
  }

  private String paysBack(Payoff payoff) {
    return "pays back in "
        + MoneyText.payback(years(payoff))
        + interest(bought(payoff))
        + ": it saves "
        + money.interval(payoff.savedPerDay())
        + " a day for "
        + money.amount(bought(payoff).price())
        + ".";
  }

  private String mayPayBack(Payoff payoff) {
    return "pays back in "
        + MoneyText.soonest(years(payoff))
        + interest(bought(payoff))
        + " at the soonest, and may never pay back within its life of "
        + life(bought(payoff))
        + ": it saves "
        + money.interval(payoff.savedPerDay())
        + " a day for "
        + money.amount(bought(payoff).price())
        + keeping(payoff);
  }

  private String never(Payoff payoff) {
    Interval saved = payoff.savedPerDay();
    if (saved.high() < 0) {
      return "never pays back: a day costs " + money.interval(saved.times(-1)) + " more.";
    }
    return "never pays back: it saves "
        + money.interval(saved)
        + " a day for "
        + money.amount(bought(payoff).price())
        + " in its life of "
        + life(bought(payoff))
        + keeping(payoff);
  }

  private String keeping(Payoff payoff) {
    double perDay = bought(payoff).runningPerYear() / payoff.workingDaysPerYear();
    return perDay == 0
        ? "."
        : ", and keeping it "
            + (perDay < 0 ? "saves " : "costs ")
            + money.amount(Math.abs(perDay))
            + " a day.";
  }

  /** Whether a payback counts interest, as every figure and drawing of it does. */
  private static String interest(Investment purchase) {
    return purchase.interestPercent() == 0
        ? ""
        : " with " + FigureText.percent(purchase.interestPercent()) + " interest";
  }

  private static Payoff.Years years(Payoff payoff) {
    return Objects.requireNonNull(payoff.payback(), "nothing is bought");
  }

  private static Investment bought(Payoff payoff) {
    return Objects.requireNonNull(payoff.purchase(), "nothing is bought");
  }

  private static String life(Investment purchase) {
    return Counted.of(purchase.lifeYears(), "year");
  }

  /** Net present value in a sentence; empty where nothing is bought or there is no money. */
  public String presentValue(ScenarioResult result) {
    Interval value = result.payoff().map(Payoff::netPresentValue).orElse(null);
    Investment purchase = result.scenario().purchase();
    if (value == null || purchase == null || !hasMoney || value.count() < 2) {
      return "";
    }
    return "Over its life of "
        + life(purchase)
        + " at "
        + FigureText.percent(purchase.interestPercent())
        + " interest it is worth "
        + money.interval(value)
        + " today, its price paid"
        + result
            .payoff()
            .map(payoff -> unsure(payoff, ", so it never pays back at this worth"))
            .orElse("")
        + ".";
  }

  /** What else the days show beyond doubt: every figure but money that differs, in a sentence. */
  public String besides(ScenarioResult result) {
    List<String> parts = sure(BESIDES, result);
    List<String> use = sure(USE, result);
    if (parts.isEmpty()) {
      return "Nothing else differs by more than these days can show"
          + (use.isEmpty() ? "." : ", but for the use of rigs and crew: " + joined(use));
    }
    parts.addAll(use);
    return "The days also show: " + joined(parts);
  }

  private List<String> sure(List<Figure> asked, ScenarioResult result) {
    List<String> parts = new ArrayList<>();
    for (Figure figure : asked) {
      Difference difference = result.difference(figure);
      if (!difference.unsure()) {
        parts.add(
            FigureText.name(figure).replace("Rigs: ", "rigs' ").toLowerCase(Locale.ROOT)
                + " "
                + figures.value(figure, difference.base())
                + " → "
                + figures.value(figure, difference.scenario()));
      }
    }
    return parts;
  }

  private static String joined(List<String> parts) {
    return String.join("; ", parts) + ".";
  }

  /** Which small change buys most for its money, as far as the days can tell. */
  public String best(List<SmallChange> sorted) {
    List<SmallChange> sure =
        sorted.stream()
            .filter(change -> change.sure() && change.perMoney().isPresent())
            .limit(1)
            .toList();
    if (sure.isEmpty()) {
      return "None of them buys anything for its money that these days can tell from luck.";
    }
    double ratio = sure.get(0).perMoney().orElse(0);
    return shortTitle(sure.get(0))
        + " buys most for its money: "
        + MoneyText.ratio(ratio)
        + " for each 1 that it costs"
        + (ratio < 1 ? ", so even that does not earn its cost." : ".");
  }

  /** What a small change is about, without the words that are the same for all. */
  public static String shortTitle(SmallChange change) {
    String title = change.result().scenario().title().replaceFirst("^One more ", "");
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }

  /** How big luck alone is: the floor as it is against itself. */
  public String luck(ScenarioResult again) {
    Interval cost = again.difference(Figure.COST).difference();
    String amount = money.range(cost.low(), cost.high());
    return again.difference(Figure.COST).unsure()
        ? "The floor as it is, planned once more with other seeds, differs from itself by "
            + amount
            + " a day: what lies within that may be luck."
        : "The floor as it is, planned once more with other seeds, differs from itself by "
            + amount
            + " a day. 95 of 100 such intervals hold 0 and this one does not: take differences of"
            + " that size for luck, or plan with more seeds.";
  }
}
