package rigmorrow.solver.bound;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * A bound on the second at which the last job ends.
 *
 * <p>Until then every {@link Bottleneck} must have had as much time as all jobs take of it, less
 * what leaving jobs out can give back ({@link Removable}); and every job that is too heavy to be
 * left out must have had time for itself alone.
 */
final class FinishingBound {
  private final CompiledBatch batch;
  private final BatchFacts facts;
  private final Alone alone;

  FinishingBound(CompiledBatch batch, BatchFacts facts, Alone alone) {
    this.batch = batch;
    this.facts = facts;
    this.alone = alone;
  }

  /**
   * Seconds from the first opening to the last end.
   *
   * @param leftOut points for jobs that may be left out
   */
  long seconds(List<Bottleneck> bottlenecks, long leftOut) {
    int last =
        IntStream.range(0, batch.jobCount())
            .filter(job -> batch.leftOutWeight(job) > leftOut && alone.possible(job))
            .map(alone::ended)
            .max()
            .orElse(0);
    for (Bottleneck one : bottlenecks) {
      long[] weights = Arrays.stream(one.jobs()).mapToLong(batch::leftOutWeight).toArray();
      long needed = one.needed() - Removable.mostValue(one.saved(), weights, leftOut);
      last = Math.max(last, one.time().reached(needed, facts.horizon()));
    }
    return Math.max(0, last - facts.firstOpening());
  }
}
