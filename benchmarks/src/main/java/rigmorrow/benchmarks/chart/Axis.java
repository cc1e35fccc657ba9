package rigmorrow.benchmarks.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * From values to places: even steps where the values are close to each other, otherwise equal
 * ratios.
 */
final class Axis {
  private static final double RATIO_FROM = 1.8;
  private static final double FEW_FROM = 8;
  private static final double[] STEPS = {1, 2, 5};

  /** For a narrow range. */
  private static final double[] FINE_STEPS = {1, 1.2, 1.5, 2, 3, 4, 5, 7};

  private static final int MOST_TICKS = 8;

  private final double low;
  private final double high;
  private final boolean ratios;
  private final double from;
  private final double to;

  /**
   * @param least of the values, above 0
   * @param most of the values
   * @param from place of the least
   * @param to place of the most
   */
  Axis(double least, double most, double from, double to) {
    this.ratios = most / least > RATIO_FROM;
    double room = ratios ? Math.pow(most / least, 0.03) : Math.max(0.01, (most - least) * 0.04);
    this.low = ratios ? least / room : least - room;
    this.high = ratios ? most * room : most + room;
    this.from = from;
    this.to = to;
  }

  double place(double value) {
    double share =
        ratios ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
    return from + (to - from) * share;
  }

  /** Round values on the axis. */
  List<Double> ticks() {
    List<Double> ticks = ratios ? inRatios() : inSteps();
    while (ticks.size() > MOST_TICKS) {
      List<Double> fewer = new ArrayList<>();
      for (int i = 0; i < ticks.size(); i += 2) {
        fewer.add(ticks.get(i));
      }
      ticks = fewer;
    }
    return ticks;
  }

  private List<Double> inRatios() {
    List<Double> ticks = new ArrayList<>();
    for (int power = -6; power <= 12; power++) {
      for (double step : high / low > FEW_FROM ? STEPS : FINE_STEPS) {
        double tick = step * Math.pow(10, power);
        if (tick >= low * 0.999 && tick <= high * 1.001) {
          ticks.add(tick);
        }
      }
    }
    return ticks;
  }

  private List<Double> inSteps() {
    double raw = (high - low) / 6;
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    double step = power * 10;
    for (double one : STEPS) {
      if (one * power >= raw) {
        step = one * power;
        break;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (double at = Math.ceil(low / step); at * step <= high; at++) {
      ticks.add(at * step);
    }
    return ticks;
  }

  static String label(double value) {
    return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
  }
}
