package rigmorrow.app.whatif;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.OptionalDouble;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.statistic.Interval;

/** Money and lengths of time as a manager reads them: no more digits than mean anything. */
public final class MoneyText {
  private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_UP);
  private static final double WHOLE_FROM = 10;
  private static final int STORED_DECIMALS = 9;
  private static final int MONTHS = 12;
  private static final int MOST_IN_MONTHS = 36;

  private final String currency;

  /**
   * @param currency ISO 4217 code
   */
  public MoneyText(String currency) {
    this.currency = currency;
  }

  /** An amount with its currency, to three digits: "24,100 EUR". */
  public String amount(double value) {
    return number(value) + " " + currency;
  }

  /** An amount to three digits, whole from 10 on: "24,100", "96", "3.4". */
  public static String number(double value) {
    return number(value, Math.abs(value) >= WHOLE_FROM || value == 0);
  }

  /** A round number beside an axis. */
  public static String tick(double value) {
    return number(value).replaceAll("\\.0$", "");
  }

  /** How many times as much: "7.35". */
  public static String ratio(double value) {
    return String.format(Locale.ROOT, "%.2f", value + 0.0).replaceAll("^-0\\.00$", "0.00");
  }

  /** An amount to the whole unit: "1,634 EUR". */
  public String whole(double value) {
    return String.format(Locale.ROOT, "%,.0f", value).replaceAll("^-0$", "0") + " " + currency;
  }

  static String number(double value, boolean whole) {
    BigDecimal rounded = new BigDecimal(value).round(THREE_DIGITS);
    BigDecimal shown = rounded.setScale(whole ? 0 : 1, RoundingMode.HALF_UP);
    String text = String.format(Locale.ROOT, whole ? "%,.0f" : "%,.1f", shown);
    return text.matches("-0(\\.0)?") ? text.substring(1) : text;
  }

  /** From and to: "60 to 133 EUR"; one amount where both are the same. */
  public String range(double low, double high) {
    boolean whole = whole(low, high);
    String from = number(low, whole);
    String to = number(high, whole);
    return (from.equals(to) ? from : from + " to " + to) + " " + currency;
  }

  /** A figure with its interval: "96 EUR (60 to 133)". */
  public String interval(Interval interval) {
    boolean whole = whole(interval.low(), interval.high());
    String middle = number(interval.middle(), whole);
    String low = number(interval.low(), whole);
    String high = number(interval.high(), whole);
    String ends = low.equals(high) ? "" : " (" + low + " to " + high + ")";
    return middle + " " + currency + ends;
  }

  /** Whether both ends are told without decimals. */
  static boolean whole(double low, double high) {
    double size = Math.max(Math.abs(low), Math.abs(high));
    return size >= WHOLE_FROM || size == 0;
  }

  /** Payback from the soonest to the latest, rounded outwards: "17 to 38 months". */
  public static String payback(Payoff.Years years) {
    OptionalDouble soonest = years.soonest();
    if (soonest.isEmpty()) {
      return "never";
    }
    OptionalDouble latest = years.latest();
    if (latest.isEmpty()) {
      return "from " + soonest(years) + " to never";
    }
    if (soonest.equals(latest)) {
      return length(latest.getAsDouble());
    }
    boolean months = latest.getAsDouble() * MONTHS <= MOST_IN_MONTHS;
    String from = digits(soonest.getAsDouble(), RoundingMode.FLOOR, months);
    String to = digits(latest.getAsDouble(), RoundingMode.CEILING, months);
    String unit = months ? " months" : " years";
    return from.equals(to) ? length(latest.getAsDouble()) : from + " to " + to + unit;
  }

  /** The soonest payback, rounded down: "17 months"; "never" where there is none. */
  public static String soonest(Payoff.Years years) {
    OptionalDouble soonest = years.soonest();
    return soonest.isEmpty() ? "never" : length(soonest.getAsDouble(), RoundingMode.FLOOR, true);
  }

  /** A length of time in months, or in years where it is long. */
  public static String length(double years) {
    return length(years, RoundingMode.HALF_UP, years * MONTHS <= MOST_IN_MONTHS);
  }

  private static String length(double years, RoundingMode rounding, boolean inMonths) {
    boolean months = inMonths && years * MONTHS <= MOST_IN_MONTHS;
    String digits = digits(years, rounding, months);
    if (!months) {
      return digits + " years";
    }
    return switch (digits) {
      case "0" -> "less than 1 month";
      case "1" -> "1 month";
      default -> digits + " months";
    };
  }

  private static String digits(double years, RoundingMode rounding, boolean months) {
    BigDecimal exact = new BigDecimal(months ? years * MONTHS : years);
    // What is 1.4 but for the way a computer stores it is not rounded down to 1.3.
    BigDecimal value = exact.setScale(STORED_DECIMALS, RoundingMode.HALF_UP);
    return value.setScale(months || years >= 100 ? 0 : 1, rounding).toPlainString();
  }
}
