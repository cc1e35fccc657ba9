package rigmorrow.solver.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How much time several rigs or people have together up to each second. */
final class OpenTime {
  /** Seconds at which the number of those there changes, ascending. */
  private final int[] from;

  /** How many are there from then on. */
  private final int[] there;

  /** Seconds of all together before then. */
  private final long[] before;

  /**
   * @param hours of each, as start, end, start, end ... within the plan; spans may overlap
   */
  OpenTime(List<int[]> hours) {
    TreeMap<Integer, Integer> changes = new TreeMap<>();
    for (int[] one : hours) {
      for (int i = 0; i < one.length; i += 2) {
        changes.merge(one[i], 1, Integer::sum);
        changes.merge(one[i + 1], -1, Integer::sum);
      }
    }
    this.from = new int[changes.size()];
    this.there = new int[changes.size()];
    this.before = new long[changes.size()];
    int at = 0;
    for (Map.Entry<Integer, Integer> change : changes.entrySet()) {
      from[at] = change.getKey();
      there[at] = change.getValue() + (at == 0 ? 0 : there[at - 1]);
      before[at] = at == 0 ? 0 : before[at - 1] + (long) there[at - 1] * (from[at] - from[at - 1]);
      at++;
    }
  }

  /** Seconds of all together in the whole plan. */
  long inAll() {
    return before.length == 0 ? 0 : before[before.length - 1];
  }

  /**
   * First second by which all together have had so much time.
   *
   * @param otherwise what to answer when they never have
   */
  int reached(long seconds, int otherwise) {
    if (seconds <= 0) {
      return 0;
    }
    for (int i = 0; i + 1 < from.length; i++) {
      if (before[i + 1] >= seconds) {
        return from[i] + (int) ((seconds - before[i] + there[i] - 1) / there[i]);
      }
    }
    return otherwise;
  }

  /** The seconds in which at least one of them is there, as start, end, start, end ... */
  int[] anyThere() {
    List<Integer> spans = new ArrayList<>();
    for (int i = 0; i < from.length; i++) {
      boolean was = i > 0 && there[i - 1] > 0;
      if (there[i] > 0 != was) {
        spans.add(from[i]);
      }
    }
    return spans.stream().mapToInt(Integer::intValue).toArray();
  }

  /** What two lists of spans have in common; neither overlaps itself. */
  static int[] both(int[] one, int[] other) {
    List<Integer> spans = new ArrayList<>();
    for (int i = 0; i < one.length; i += 2) {
      for (int k = 0; k < other.length; k += 2) {
        int start = Math.max(one[i], other[k]);
        int end = Math.min(one[i + 1], other[k + 1]);
        if (start < end) {
          spans.add(start);
          spans.add(end);
        }
      }
    }
    return spans.stream().mapToInt(Integer::intValue).toArray();
  }
}
