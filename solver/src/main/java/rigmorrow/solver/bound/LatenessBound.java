package rigmorrow.solver.bound;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * A bound on the weighted seconds after promises; the greater of two.
 *
 * <p>Each job alone: it is late by at least what it is late with nothing else planned.
 *
 * <p>Each {@link Bottleneck}: of jobs that all count 1, the k-th whose pictures are taken cannot
 * have them before the bottleneck had time for the k least parts, whichever jobs they are; and the
 * sum of what is late is least when the promises fall due in the order in which jobs are done
 * (exchange of two neighbours). Weights are made of such sums: a job of weight w counts 1 at each
 * of the levels 1 to w, and at each level all jobs that reach it are taken by themselves.
 *
 * <p>When n jobs may be left out at most, each sum loses its last n parts and its n first promises:
 * of any choice of jobs that stay, the k-th promise is no later than the (n + k)-th of all.
 */
final class LatenessBound {
  private final CompiledBatch batch;
  private final BatchFacts facts;
  private final Alone alone;

  LatenessBound(CompiledBatch batch, BatchFacts facts, Alone alone) {
    this.batch = batch;
    this.facts = facts;
    this.alone = alone;
  }

  /**
   * Weighted seconds after promises.
   *
   * @param leftOut points for jobs that may be left out
   */
  long weightedSeconds(List<Bottleneck> bottlenecks, long leftOut) {
    long most = eachAlone(leftOut);
    for (Bottleneck one : bottlenecks) {
      most = Math.max(most, together(one, leftOut));
    }
    return most;
  }

  private long eachAlone(long leftOut) {
    long[] late = new long[batch.jobCount()];
    long[] weights = new long[late.length];
    for (int job = 0; job < late.length; job++) {
      weights[job] = batch.leftOutWeight(job);
      if (alone.possible(job)) {
        long seconds = Math.max(0, alone.captured(job) - batch.due(job));
        late[job] = seconds * batch.weight(job);
      }
    }
    return Arrays.stream(late).sum() - Removable.mostValue(late, weights, leftOut);
  }

  private long together(Bottleneck one, long leftOut) {
    int[] promised =
        IntStream.range(0, one.jobs().length)
            .filter(i -> batch.due(one.jobs()[i]) < facts.horizon())
            .toArray();
    int[] levels =
        Arrays.stream(promised).map(i -> batch.weight(one.jobs()[i])).sorted().distinct().toArray();
    long sum = 0;
    int below = 0;
    for (int level : levels) {
      int[] reach =
          Arrays.stream(promised).filter(i -> batch.weight(one.jobs()[i]) >= level).toArray();
      sum += (level - below) * seconds(one, reach, leftOut);
      below = level;
    }
    return sum;
  }

  private long seconds(Bottleneck one, int[] which, long leftOut) {
    long[] captured = Arrays.stream(which).mapToLong(i -> one.captured()[i]).sorted().toArray();
    long[] rest =
        Arrays.stream(which).mapToLong(i -> one.whole()[i] - one.captured()[i]).sorted().toArray();
    int[] due = Arrays.stream(which).map(i -> batch.due(one.jobs()[i])).sorted().toArray();
    int out = mostLeftOut(one, which, leftOut);
    long needed = 0;
    long late = 0;
    for (int k = 0; k + out < which.length; k++) {
      needed += captured[k] + (k < one.lanes() ? 0 : rest[k - one.lanes()]);
      late += Math.max(0, one.time().reached(needed, facts.horizon()) - due[k + out]);
    }
    return late;
  }

  private int mostLeftOut(Bottleneck one, int[] which, long leftOut) {
    long left = leftOut;
    int count = 0;
    int[] weights =
        Arrays.stream(which).map(i -> batch.leftOutWeight(one.jobs()[i])).sorted().toArray();
    while (count < weights.length && weights[count] <= left) {
      left -= weights[count++];
    }
    return count;
  }
}
