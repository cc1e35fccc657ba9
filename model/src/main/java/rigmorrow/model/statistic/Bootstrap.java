package rigmorrow.model.statistic;

import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.function.ToDoubleFunction;
import rigmorrow.model.check.Require;

/**
 * The percentile bootstrap of Efron (Annals of Statistics 7, 1979): the same number of items is
 * drawn with replacement again and again, and the middle part of what the draws come to is the
 * interval. It asks of the items only that they were drawn alike and apart from each other. With
 * few items it is too narrow: half a dozen days say little.
 */
public final class Bootstrap {
  /** How often is drawn. */
  public static final int DRAWS = 10_000;

  private static final long SEED = 1;
  private static final double LOW_PERCENT = 2.5;
  private static final double HIGH_PERCENT = 97.5;

  private Bootstrap() {}

  /**
   * The 95 % interval of a mean.
   *
   * @param values at least one, all finite
   */
  public static Interval mean(double... values) {
    SplittableRandom random = new SplittableRandom(SEED);
    return mean(values, random::nextInt);
  }

  /**
   * The 95 % interval of a mean, with random numbers of one's own.
   *
   * @param values at least one, all finite
   * @param draw a random whole number from 0 to below its argument
   */
  public static Interval mean(double[] values, IntUnaryOperator draw) {
    for (double value : values) {
      Require.that(Double.isFinite(value), "values", value, "finite numbers");
    }
    return of(values.length, picked -> mean(values, picked), draw);
  }

  /**
   * The 95 % interval of anything that can be worked out from a choice of items.
   *
   * @param count of items, at least 1
   * @param figure of the items that were picked; an item may be picked more than once
   * @param draw a random whole number from 0 to below its argument
   */
  public static Interval of(int count, ToDoubleFunction<int[]> figure, IntUnaryOperator draw) {
    Require.atLeast("count", count, 1);
    int[] picked = new int[count];
    for (int i = 0; i < count; i++) {
      picked[i] = i;
    }
    double middle = figure.applyAsDouble(picked);
    double[] drawn = new double[DRAWS];
    for (int times = 0; times < DRAWS; times++) {
      for (int i = 0; i < count; i++) {
        picked[i] = draw.applyAsInt(count);
      }
      drawn[times] = figure.applyAsDouble(picked);
    }
    Percentiles percentiles = new Percentiles(drawn);
    return new Interval(middle, percentiles.at(LOW_PERCENT), percentiles.at(HIGH_PERCENT), count);
  }

  private static double mean(double[] values, int[] picked) {
    double sum = 0;
    for (int index : picked) {
      sum += values[index];
    }
    return sum / picked.length;
  }
}
