package rigmorrow.solver.bound;

import java.util.stream.IntStream;

/**
 * How much can go when things are left out, by the knapsack problem in fractions (Dantzig 1957):
 * what gives most for its weight goes first, and of the last thing a part. No choice of whole
 * things is better. In whole numbers, rounded to the safe side.
 */
final class Removable {
  private Removable() {}

  /**
   * The most value that can be left out.
   *
   * @param value of each thing; what is not above 0 stays
   * @param weight of each thing, at least 0
   * @param weightLimit that may be left out; what weighs more on its own stays
   * @return a number that no choice exceeds
   */
  static long mostValue(long[] value, long[] weight, long weightLimit) {
    long left = weightLimit;
    long sum = 0;
    for (int i : mostForItsWeight(value, weight)) {
      if (weight[i] > weightLimit) {
        continue;
      }
      if (weight[i] > left) {
        return sum + roundedUp(value[i] * left, weight[i]);
      }
      left -= weight[i];
      sum += value[i];
    }
    return sum;
  }

  /**
   * The least weight that must be left out so that at least so much value goes.
   *
   * @return a number that no choice falls below; the weight of all things where all of them are not
   *     enough
   */
  static long leastWeight(long[] value, long[] weight, long valueToGo) {
    long left = valueToGo;
    long sum = 0;
    for (int i : mostForItsWeight(value, weight)) {
      if (left <= 0) {
        return sum;
      }
      if (value[i] > left) {
        return sum + roundedUp(weight[i] * left, value[i]);
      }
      left -= value[i];
      sum += weight[i];
    }
    return sum;
  }

  private static int[] mostForItsWeight(long[] value, long[] weight) {
    return IntStream.range(0, value.length)
        .filter(i -> value[i] > 0)
        .boxed()
        .sorted((i, k) -> Long.compare(weight[i] * value[k], weight[k] * value[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static long roundedUp(long dividend, long divisor) {
    return -Math.floorDiv(-dividend, divisor);
  }
}
