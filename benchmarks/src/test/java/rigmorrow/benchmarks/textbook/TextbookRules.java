package rigmorrow.benchmarks.textbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/** The optima of textbook problems, by the rule or by trying everything; never by our solver. */
final class TextbookRules {
  private TextbookRules() {}

  /** Least maximum lateness on one machine: jobs by due time (Jackson 1955). */
  static int leastMaximumLateness(int[] seconds, int[] due) {
    int most = Integer.MIN_VALUE;
    int time = 0;
    for (int job : order(due.length, Comparator.comparingInt(one -> due[one]))) {
      time += seconds[job];
      most = Math.max(most, time - due[job]);
    }
    return most;
  }

  /** Least weighted sum of completion times on one machine: by seconds over weight (Smith 1956). */
  static long leastWeightedCompletion(int[] seconds, int[] weights) {
    Comparator<Integer> ratio =
        Comparator.comparingDouble(one -> (double) seconds[one] / weights[one]);
    long sum = 0;
    long time = 0;
    for (int job : order(seconds.length, ratio)) {
      time += seconds[job];
      sum += time * weights[job];
    }
    return sum;
  }

  /**
   * Least sum of completion times on identical machines: the shortest job next, on the machine that
   * is free first (Conway, Maxwell, Miller 1967).
   */
  static long leastCompletion(int machines, int[] seconds) {
    return inList(machines, sorted(seconds)).stream().mapToLong(Integer::longValue).sum();
  }

  /** Makespan of the longest job next, on the machine that is free first (Graham 1969). */
  static int longestFirst(int machines, int[] seconds) {
    List<Integer> longest = new ArrayList<>(sorted(seconds));
    Collections.reverse(longest);
    return Collections.max(inList(machines, longest));
  }

  /** The times at which jobs end when each takes the machine that is free first. */
  private static List<Integer> inList(int machines, List<Integer> seconds) {
    PriorityQueue<Integer> free = new PriorityQueue<>(Collections.nCopies(machines, 0));
    List<Integer> ends = new ArrayList<>();
    for (int one : seconds) {
      int end = free.remove() + one;
      ends.add(end);
      free.add(end);
    }
    return ends;
  }

  /** No schedule of identical machines ends sooner, not even one that interrupts (McNaughton). */
  static int leastMakespanBound(int machines, int[] seconds) {
    int sum = Arrays.stream(seconds).sum();
    return Math.max((sum + machines - 1) / machines, Arrays.stream(seconds).max().orElseThrow());
  }

  /** Least makespan of two identical machines: the sum of some jobs that is nearest to half. */
  static int leastMakespanOfTwo(int[] seconds) {
    int sum = Arrays.stream(seconds).sum();
    boolean[] reached = new boolean[sum + 1];
    reached[0] = true;
    for (int one : seconds) {
      for (int total = sum; total >= one; total--) {
        reached[total] |= reached[total - one];
      }
    }
    return IntStream.rangeClosed((sum + 1) / 2, sum)
        .filter(t -> reached[t])
        .findFirst()
        .orElseThrow();
  }

  /**
   * Least weight of late jobs on one machine, by trying every set of jobs in time: a set can be in
   * time when it is by due time.
   */
  static int leastLateWeight(int[] seconds, int[] due, int[] weights) {
    List<Integer> byDue = order(due.length, Comparator.comparingInt(one -> due[one]));
    int least = Integer.MAX_VALUE;
    for (int set = 0; set < 1 << due.length; set++) {
      int time = 0;
      int late = 0;
      for (int job : byDue) {
        boolean in = (set >>> job & 1) != 0;
        time += in ? seconds[job] : 0;
        late += in ? 0 : weights[job];
        late = in && time > due[job] ? Integer.MAX_VALUE / 2 : late;
        if (late >= least) {
          break;
        }
      }
      least = Math.min(least, late);
    }
    return least;
  }

  /**
   * Least number of late jobs on one machine: by due time, and whenever one would be late the
   * longest so far is given up (Moore 1968).
   */
  static int leastNumberLate(int[] seconds, int[] due) {
    PriorityQueue<Integer> kept = new PriorityQueue<>(Comparator.reverseOrder());
    int time = 0;
    for (int job : order(due.length, Comparator.comparingInt(one -> due[one]))) {
      kept.add(seconds[job]);
      time += seconds[job];
      if (time > due[job]) {
        time -= kept.remove();
      }
    }
    return due.length - kept.size();
  }

  private static List<Integer> sorted(int[] seconds) {
    return Arrays.stream(seconds).sorted().boxed().toList();
  }

  private static List<Integer> order(int count, Comparator<Integer> by) {
    return IntStream.range(0, count).boxed().sorted(by).toList();
  }
}
