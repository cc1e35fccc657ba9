package rigmorrow.model.comparison;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.money.Investment;
import rigmorrow.model.statistic.Interval;

/**
 * What the money of a scenario comes to in a year. Paybacks and present values rise and fall with
 * what is saved, so the ends of their intervals are worked out from the ends of its interval.
 *
 * @param savedPerDay what a day costs less, before the purchase; below 0 where it costs more
 * @param workingDaysPerYear days that save so much
 * @param purchase what is bought; null for nothing
 */
public record Payoff(Interval savedPerDay, int workingDaysPerYear, @Nullable Investment purchase) {

  /** What the figures allow to be said. */
  public enum Verdict {
    /** One day shows nothing. */
    TOO_FEW_DAYS,
    /** The days cannot tell whether it saves or costs. */
    NO_DIFFERENCE,
    /** It saves, and nothing is bought. */
    SAVES,
    /** It costs more than it saves, even with nothing bought. */
    COSTS_MORE,
    /** It pays back within its life with its interest, at both ends of the interval. */
    PAYS_BACK,
    /** It does so at the upper end only, so what it is worth may be below 0. */
    MAY_PAY_BACK,
    /** It does so at neither end: what it is worth is below 0. */
    NEVER_PAYS_BACK
  }

  /**
   * Years until a price is saved.
   *
   * @param soonest at the upper end of what is saved; empty for never
   * @param middle at the mean; empty for never
   * @param latest at the lower end; empty for never
   */
  public record Years(OptionalDouble soonest, OptionalDouble middle, OptionalDouble latest) {}

  /** What is saved in a year, before running costs. */
  public Interval savedPerYear() {
    return savedPerDay.times(workingDaysPerYear);
  }

  /** What the figures allow to be said. */
  public Verdict verdict() {
    if (savedPerDay.count() < 2) {
      return Verdict.TOO_FEW_DAYS;
    }
    if (savedPerDay.holdsZero()) {
      return Verdict.NO_DIFFERENCE;
    }
    Years years = payback();
    if (years == null) {
      return savedPerDay.high() < 0 ? Verdict.COSTS_MORE : Verdict.SAVES;
    }
    if (years.soonest().isEmpty()) {
      return Verdict.NEVER_PAYS_BACK;
    }
    return years.latest().isEmpty() ? Verdict.MAY_PAY_BACK : Verdict.PAYS_BACK;
  }

  /**
   * Payback without interest, whether or not the purchase lasts that long; null without one. For
   * programs only: people are told {@link #payback()}.
   */
  public @Nullable Years simplePayback() {
    Investment bought = purchase;
    return bought == null
        ? null
        : new Years(
            bought.paybackYears(savedPerYear().high()),
            bought.paybackYears(savedPerYear().middle()),
            bought.paybackYears(savedPerYear().low()));
  }

  /**
   * The one payback that people are told: with the interest of the purchase, if it has any, and
   * within its life. An end is empty where what the purchase is worth is below 0 there; null
   * without a purchase.
   */
  public @Nullable Years payback() {
    Investment bought = purchase;
    return bought == null
        ? null
        : new Years(
            bought.discountedPaybackYears(savedPerYear().high()),
            bought.discountedPaybackYears(savedPerYear().middle()),
            bought.discountedPaybackYears(savedPerYear().low()));
  }

  /** Net present value of the purchase; null without one. */
  public @Nullable Interval netPresentValue() {
    Investment bought = purchase;
    if (bought == null) {
      return null;
    }
    Interval saved = savedPerYear();
    return new Interval(
        bought.netPresentValue(saved.middle()),
        bought.netPresentValue(saved.low()),
        bought.netPresentValue(saved.high()),
        saved.count());
  }
}
