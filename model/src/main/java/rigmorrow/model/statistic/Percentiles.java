package rigmorrow.model.statistic;

import java.util.Arrays;
import rigmorrow.model.check.Require;

/**
 * Percentiles of some values, by the rule of the NIST/SEMATECH e-Handbook of Statistical Methods,
 * 7.2.6.2: of n ordered values the place of percentile p is p (n + 1) / 100, and between two values
 * the percentile lies between them in proportion.
 */
public final class Percentiles {
  private static final double HUNDRED = 100;

  private final double[] ordered;

  /**
   * @param values in any order, at least one
   */
  public Percentiles(double... values) {
    Require.that(values.length > 0, "values", "empty", "at least one");
    ordered = values.clone();
    Arrays.sort(ordered);
  }

  /**
   * A percentile.
   *
   * @param percent 0 to 100; what lies outside the outermost values is the nearer of them
   */
  public double at(double percent) {
    Require.between("percent", percent, 0, HUNDRED);
    double place = percent * (ordered.length + 1) / HUNDRED;
    int below = (int) Math.floor(place);
    if (below < 1) {
      return ordered[0];
    }
    if (below >= ordered.length) {
      return ordered[ordered.length - 1];
    }
    double low = ordered[below - 1];
    return low + (place - below) * (ordered[below] - low);
  }
}
