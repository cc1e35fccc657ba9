package rigmorrow.solver.search;

import java.util.Arrays;

/**
 * How hot simulated annealing is. What a typical change loses grows with the day, so it is
 * measured: a few hundred changes are tried on the start plan. Cools geometrically.
 */
final class Heat {
  private static final int MOST_SAMPLES = 400;
  private static final double QUANTILE = 0.1;
  private static final double HOT = 2;
  private static final double COLD = 0.03;

  private final double unit;

  private Heat(double unit) {
    this.unit = unit;
  }

  /**
   * Samples changes on the plan that the judge stands at.
   *
   * @param decodes that the search may do, of which a tenth is the most for this; 0 for no limit
   */
  static Heat measure(Judge judge, ChangeDraw draw, Change change, long decodes) {
    int samples = decodes == 0 ? MOST_SAMPLES : (int) Math.min(MOST_SAMPLES, decodes / 10);
    long[] losses = new long[samples];
    int count = 0;
    for (int i = 0; i < samples && draw.draw(change); i++) {
      long loss = judge.lossOf(change);
      if (loss > 0) {
        losses[count++] = loss;
      }
    }
    if (count == 0) {
      return new Heat(1);
    }
    Arrays.sort(losses, 0, count);
    return new Heat(Math.max(1, losses[(int) (QUANTILE * count)]));
  }

  /**
   * Mean of the soft seconds that may be lost.
   *
   * @param spent part of the effort, 0 to 1
   */
  double at(double spent) {
    return unit * HOT * StrictMath.pow(COLD / HOT, spent);
  }
}
