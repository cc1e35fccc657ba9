package rigmorrow.benchmarks.compare;

import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.stat.descriptive.rank.Percentile;

/**
 * The geometric mean of some ratios with a bootstrap interval.
 *
 * @param mean of the ratios
 * @param low 2.5th percentile of the means of the draws
 * @param high 97.5th percentile
 * @param count of ratios
 */
public record Interval(double mean, double low, double high, int count) {
  private static final int DRAWS = 10_000;
  private static final int SEED = 1;
  private static final double LOW_PERCENT = 2.5;

  /**
   * Draws the ratios with replacement, as many as there are, again and again: the percentile
   * bootstrap of Efron (Annals of Statistics 7, 1979).
   *
   * @param ratios at least one, all above 0
   */
  public static Interval of(List<Double> ratios) {
    if (ratios.isEmpty() || ratios.stream().anyMatch(ratio -> !(ratio > 0))) {
      throw new IllegalArgumentException(ratios + "; accepted: at least one, all above 0");
    }
    double[] logs = ratios.stream().mapToDouble(Math::log).toArray();
    RandomGenerator random = new Well19937c(SEED);
    double[] means = new double[DRAWS];
    for (int draw = 0; draw < DRAWS; draw++) {
      double sum = 0;
      for (int i = 0; i < logs.length; i++) {
        sum += logs[random.nextInt(logs.length)];
      }
      means[draw] = Math.exp(sum / logs.length);
    }
    double sum = 0;
    for (double log : logs) {
      sum += log;
    }
    Percentile percentile = new Percentile();
    percentile.setData(means);
    return new Interval(
        Math.exp(sum / logs.length),
        percentile.evaluate(LOW_PERCENT),
        percentile.evaluate(100 - LOW_PERCENT),
        logs.length);
  }
}
