package rigmorrow.model.outside;

import java.util.Locale;

/**
 * One figure from outside beside ours.
 *
 * @param name which figure of its check; empty where there is only one
 * @param expected as it is printed, or as it is worked out apart from what is tested
 * @param ours as it is shown
 * @param holds true when ours is what it should be
 */
public record Figure(String name, String expected, String ours, boolean holds) {
  /**
   * A number that is printed with some decimals.
   *
   * @param tolerance most difference, on either side
   */
  public static Figure near(String name, String expected, double tolerance, double ours) {
    double printed = Double.parseDouble(expected);
    int point = expected.indexOf('.');
    int decimals = point < 0 ? 0 : expected.length() - point - 1;
    String shown = String.format(Locale.ROOT, "%." + (decimals + 2) + "f", ours);
    return new Figure(name, expected, shown, Math.abs(ours - printed) <= tolerance);
  }

  /**
   * A number that is rounded to the decimals it is printed with. One without decimals must be met
   * exactly.
   */
  public static Figure rounded(String name, String expected, double ours) {
    int point = expected.indexOf('.');
    double half = 0.5 * Math.pow(10, point + 1 - expected.length());
    return near(name, expected, point < 0 ? 0 : half + 1e-9, ours);
  }

  /** A number within bounds. */
  public static Figure between(String name, double low, double high, double ours) {
    String expected = String.format(Locale.ROOT, "%.0f to %.0f", low, high);
    String shown = String.format(Locale.ROOT, "%.2f", ours);
    return new Figure(name, expected, shown, ours >= low && ours <= high);
  }

  /** A number with a bound that nothing can be below. */
  public static Figure atLeast(String name, long bound, long ours) {
    return new Figure(name, "at least " + bound, Long.toString(ours), ours >= bound);
  }

  /** A number that must be met exactly. */
  public static Figure equal(String name, long expected, long ours) {
    return new Figure(name, Long.toString(expected), Long.toString(ours), expected == ours);
  }

  /** A text that must be met exactly. */
  public static Figure equal(String name, String expected, String ours) {
    return new Figure(name, expected, ours, expected.equals(ours));
  }

  /**
   * A best value that is not always reached.
   *
   * @param best nothing is better
   * @param bar most that is put up with
   */
  public static Figure atMost(String name, long best, long bar, long ours) {
    String gap =
        ours == best
            ? ""
            : String.format(Locale.ROOT, " (+%.1f %%; bar %d)", 100.0 * (ours - best) / best, bar);
    return new Figure(name, Long.toString(best), ours + gap, ours >= best && ours <= bar);
  }
}
