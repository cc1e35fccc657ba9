package rigmorrow.benchmarks.compare;

import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import rigmorrow.model.statistic.Bootstrap;

/**
 * The geometric mean of some ratios with a bootstrap interval.
 *
 * @param mean of the ratios
 * @param low 2.5th percentile of the means of the draws
 * @param high 97.5th percentile
 * @param count of ratios
 */
public record Interval(double mean, double low, double high, int count) {
  private static final int SEED = 1;

  /**
   * Draws the ratios again and again, see {@link Bootstrap}.
   *
   * @param ratios at least one, all above 0
   */
  public static Interval of(List<Double> ratios) {
    if (ratios.isEmpty() || ratios.stream().anyMatch(ratio -> !(ratio > 0))) {
      throw new IllegalArgumentException(ratios + "; accepted: at least one, all above 0");
    }
    double[] logs = ratios.stream().mapToDouble(Math::log).toArray();
    RandomGenerator random = new Well19937c(SEED);
    var drawn = Bootstrap.of(logs.length, picked -> geometricMean(logs, picked), random::nextInt);
    return new Interval(drawn.middle(), drawn.low(), drawn.high(), drawn.count());
  }

  private static double geometricMean(double[] logs, int[] picked) {
    double sum = 0;
    for (int index : picked) {
      sum += logs[index];
    }
    return Math.exp(sum / picked.length);
  }
}
