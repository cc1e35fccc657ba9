package rigmorrow.solver.bound;

import java.util.Arrays;
import java.util.List;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * A bound on the points for jobs left out.
 *
 * <p>A job that could not be done alone is in no workable plan. Where the other jobs take more of a
 * {@link Bottleneck} than there is in the whole plan, as much as is missing must be left out, at
 * the least weight ({@link Removable}). The jobs left out for one bottleneck may be those left out
 * for another, so the greatest of these counts, not the sum.
 */
final class LeftOutBound {
  private final CompiledBatch batch;
  private final Alone alone;

  LeftOutBound(CompiledBatch batch, Alone alone) {
    this.batch = batch;
    this.alone = alone;
  }

  /** Points, without those for jobs that fit no rig at all. */
  long points(List<Bottleneck> bottlenecks) {
    long most = 0;
    for (Bottleneck one : bottlenecks) {
      long[] weights = Arrays.stream(one.jobs()).mapToLong(batch::leftOutWeight).toArray();
      long missing = one.needed() - one.time().inAll();
      most = Math.max(most, Removable.leastWeight(one.saved(), weights, missing));
    }
    return alone.impossiblePoints() + most;
  }
}
