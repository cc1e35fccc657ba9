package rigmorrow.app.whatif.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * Places values on an axis.
 *
 * @param low value at its beginning
 * @param high value at its end, above {@code low}
 */
record Scale(double low, double high) {
  private static final int MOST_TICKS = 7;
  private static final double[] STEPS = {1, 2, 5, 10};

  /** An axis for values, with some room on both sides, and its ends at ticks. */
  static Scale around(double least, double most) {
    double span = most - least;
    double room = span > 0 ? span * 0.04 : Math.max(1, Math.abs(most)) * 0.1;
    double step = step(span + 2 * room);
    double low = Math.floor((least - room) / step) * step;
    return new Scale(low, Math.ceil((most + room) / step) * step);
  }

  /** Where a value stands, as a part of the axis; what lies outside stands at the nearer end. */
  double part(double value) {
    return Math.max(0, Math.min(1, (value - low) / (high - low)));
  }

  /** Round values along the axis with their places from its beginning. */
  List<Mark> ticks(DoubleFunction<String> text) {
    return ticks(text, step(high - low));
  }

  /** Values so far apart along the axis. */
  List<Mark> ticks(DoubleFunction<String> text, double step) {
    return values(step).stream()
        .map(value -> new Mark(text.apply(value), Mark.Side.LEFT, part(value)))
        .toList();
  }

  /** Values so far apart along an axis that goes up. */
  List<Mark> ticksUp(DoubleFunction<String> text, double step) {
    return values(step).stream()
        .map(value -> new Mark(text.apply(value), Mark.Side.TOP, 1 - part(value)))
        .toList();
  }

  /** Round values along the axis. */
  List<Double> values() {
    return values(step(high - low));
  }

  private List<Double> values(double step) {
    List<Double> values = new ArrayList<>();
    double first = Math.ceil(low / step - 1e-9);
    for (double count = first; count * step <= high + 1e-9 * step; count++) {
      values.add(count * step + 0.0); // never minus zero
    }
    return values;
  }

  private static double step(double span) {
    double rough = span / MOST_TICKS;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double step : STEPS) {
      if (step * power >= rough) {
        return step * power;
      }
    }
    return 10 * power;
  }

  static String percent(double part) {
    return String.format(Locale.ROOT, "%.2f%%", 100 * part);
  }
}
