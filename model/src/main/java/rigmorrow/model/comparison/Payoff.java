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
    /** It saves enough to pay back, at both ends of the interval. */
    PAYS_BACK,
    /** It saves, but at the lower end less than it costs to keep. */
    MAY_PAY_BACK,
    /** What it saves does not pay what it costs to keep. */
    NEVER_PAYS_BACK
  }

  /**
   * Years until the price is saved.
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
    if (savedPerDay.high() < 0) {
      return purchase == null ? Verdict.COSTS_MORE : Verdict.NEVER_PAYS_BACK;
    }
    if (purchase == null) {
      return Verdict.SAVES;
    }
    Interval net = savedPerYear().plus(-purchase.runningPerYear());
    if (net.high() <= 0) {
      return Verdict.NEVER_PAYS_BACK;
    }
    return net.low() <= 0 ? Verdict.MAY_PAY_BACK : Verdict.PAYS_BACK;
  }

  /** Simple payback; empty without a purchase. */
  public @Nullable Years payback() {
    Investment bought = purchase;
    return bought == null
        ? null
        : new Years(
            bought.paybackYears(savedPerYear().high()),
            bought.paybackYears(savedPerYear().middle()),
            bought.paybackYears(savedPerYear().low()));
  }

  /** Payback with interest, within the purchase's life; empty without a purchase. */
  public @Nullable Years discountedPayback() {
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
