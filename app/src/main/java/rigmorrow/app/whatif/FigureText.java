package rigmorrow.app.whatif;

import java.util.List;
import java.util.Locale;
import rigmorrow.app.report.Durations;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.statistic.Interval;

/** The figures with their names and units. */
public final class FigureText {
  /** In the order they are told; costs by what they are for are told elsewhere. */
  public static final List<Figure> TOLD =
      List.of(
          Figure.LEFT_OUT,
          Figure.KEPT,
          Figure.LATE_HOURS,
          Figure.FINISHED,
          Figure.CHANGEOVER_HOURS,
          Figure.OVERTIME_HOURS,
          Figure.CREW_USE,
          Figure.ALLOCATION,
          Figure.UTILISATION,
          Figure.COST);

  private static final long MINUTES_PER_HOUR = 60;
  private static final int HOURS_PER_DAY = 24;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final long SECONDS_PER_MINUTE = 60;

  private final MoneyText money;

  /**
   * @param currency ISO 4217 code
   */
  public FigureText(String currency) {
    this.money = new MoneyText(currency);
  }

  /** What a figure is called. */
  public static String name(Figure figure) {
    return switch (figure) {
      case COST -> "Cost of a day";
      case REGULAR_PAY -> "Regular pay of a day";
      case OTHER_COST -> "Other cost of a day";
      case LEFT_OUT -> "Jobs left out a day";
      case KEPT -> "Promises kept";
      case LATE_HOURS -> "Late hours a day, weighted";
      case FINISHED -> "Last job ends";
      case CHANGEOVER_HOURS -> "Hands-on changeovers a day";
      case OVERTIME_HOURS -> "Overtime a day";
      case CREW_USE -> "Hands-on share of paid hours";
      case ALLOCATION -> "Rigs: allocation efficiency";
      case UTILISATION -> "Rigs: utilisation efficiency";
    };
  }

  /** What a figure is called where there is little room. */
  public static String shortName(Figure figure) {
    return switch (figure) {
      case COST -> "Cost";
      case REGULAR_PAY -> "Pay";
      case OTHER_COST -> "Other cost";
      case LEFT_OUT -> "Left out";
      case KEPT -> "Kept";
      case LATE_HOURS -> "Late";
      case FINISHED -> "Last end";
      case CHANGEOVER_HOURS -> "Change-overs";
      case OVERTIME_HOURS -> "Overtime";
      case CREW_USE -> "Crew";
      case ALLOCATION -> "Rigs AE";
      case UTILISATION -> "Rigs UE";
    };
  }

  /** A value with its unit. */
  public String value(Figure figure, double value) {
    return switch (figure) {
      case COST, REGULAR_PAY, OTHER_COST -> money.whole(value);
      case FINISHED -> clock(value);
      case LEFT_OUT -> decimal(value);
      case CHANGEOVER_HOURS, OVERTIME_HOURS -> length(value);
      default -> decimal(value) + unit(figure);
    };
  }

  /**
   * A difference with its sign, unit and interval: "-23 min (-31 to -15)", "+5 min (-1 h 10 min to
   * +1 h)".
   */
  public String difference(Figure figure, Interval difference) {
    boolean whole = MoneyText.whole(difference.low(), difference.high());
    String unit = length(figure) ? "" : unit(figure);
    String middle = signed(figure, difference.middle(), whole);
    String low = signed(figure, difference.low(), whole);
    String high = signed(figure, difference.high(), whole);
    if (length(figure) && !(low + high).contains("h")) {
      low = low.replace(" min", "");
      high = high.replace(" min", "");
    }
    return middle + unit + " (" + low + " to " + high + ")";
  }

  /** True where a difference is a length of time; late hours are weighted and are none. */
  private static boolean length(Figure figure) {
    return switch (figure) {
      case FINISHED, CHANGEOVER_HOURS, OVERTIME_HOURS -> true;
      default -> false;
    };
  }

  private String unit(Figure figure) {
    return switch (figure) {
      case COST, REGULAR_PAY, OTHER_COST -> money.amount(0).substring(1);
      case LEFT_OUT -> "";
      case KEPT, CREW_USE, ALLOCATION, UTILISATION -> " %";
      case LATE_HOURS, FINISHED, CHANGEOVER_HOURS, OVERTIME_HOURS -> " h";
    };
  }

  private static String signed(Figure figure, double value, boolean whole) {
    String text =
        switch (figure) {
          case COST, REGULAR_PAY, OTHER_COST -> MoneyText.number(value, whole);
          case FINISHED, CHANGEOVER_HOURS, OVERTIME_HOURS -> minutes(value);
          default -> decimal(value);
        };
    String plain = text.matches("-0(\\.0| min)?") ? text.substring(1) : text;
    return value > 0 && !plain.matches("0(\\.0| min)?") ? "+" + plain : plain;
  }

  /** A length to the nearest minute, so that a row adds up as well as rounding allows. */
  private static String length(double hours) {
    boolean unseen = hours > 0 && nearestMinute(hours) == 0;
    return unseen ? "less than 1 min" : minutes(hours);
  }

  /** A difference to the nearest minute: rounded up, one that is next to nothing would show. */
  private static String minutes(double hours) {
    long minutes = nearestMinute(Math.abs(hours));
    return (hours < 0 ? "-" : "") + Durations.of(minutes * SECONDS_PER_MINUTE);
  }

  /** By way of whole seconds: as a double, 31 minutes in hours are a little more than 31. */
  private static long nearestMinute(double hours) {
    return Math.round(Math.round(hours * SECONDS_PER_HOUR) / (double) SECONDS_PER_MINUTE);
  }

  /** Per cent, with a decimal where there is one: "20 %", "12.5 %". */
  public static String percent(double value) {
    return decimal(value).replaceAll("\\.0$", "") + " %";
  }

  /** A demand in words: "20 % fewer jobs". */
  public static String demand(double percent) {
    return percent == 0
        ? "demand as it was"
        : percent(Math.abs(percent)) + " " + (percent > 0 ? "more" : "fewer") + " jobs";
  }

  /** One decimal. */
  public static String decimal(double value) {
    String text = String.format(Locale.ROOT, "%,.1f", value);
    return text.equals("-0.0") ? "0.0" : text;
  }

  /** Hours from midnight as a time of day; the days after the first are counted. */
  public static String clock(double hours) {
    long minutes = nearestMinute(hours);
    long day = minutes / (HOURS_PER_DAY * MINUTES_PER_HOUR);
    long hour = minutes / MINUTES_PER_HOUR % HOURS_PER_DAY;
    String time = String.format(Locale.ROOT, "%02d:%02d", hour, minutes % MINUTES_PER_HOUR);
    return day == 0 ? time : "day " + (day + 1) + " " + time;
  }
}
