package rigmorrow.solver.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * A bound on the hands-on seconds of bringing kit and servicing plate rings, which come on top of
 * the setup steps. Where two people share a changeover they may be hidden behind other steps, so
 * there they count nothing.
 */
final class OtherChangeovers {
  private final CompiledBatch batch;
  private final BatchFacts facts;
  private final Alone alone;
  private final long leftOut;

  /**
   * @param leftOut points for jobs that may be left out; a job that weighs more is in the plan
   */
  OtherChangeovers(CompiledBatch batch, BatchFacts facts, Alone alone, long leftOut) {
    this.batch = batch;
    this.facts = facts;
    this.alone = alone;
    this.leftOut = leftOut;
  }

  /** Seconds of all kits and rings. */
  long seconds() {
    long sum = 0;
    for (int kit = 0; kit < facts.kitCount(); kit++) {
      sum += kit(kit);
    }
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      sum += ring(rig);
    }
    return sum;
  }

  /** Of jobs that share no rig, each needs the kit brought to a rig of its own. */
  private long kit(int kit) {
    List<BitSet> apart = new ArrayList<>();
    long sum = 0;
    for (int job = 0; job < batch.jobCount(); job++) {
      BitSet rigs = alone.rigs(job);
      if (batch.leftOutWeight(job) > leftOut
          && !rigs.isEmpty()
          && apart.stream().noneMatch(rigs::intersects)) {
        long least = leastSeconds(kit, job, rigs);
        if (least > 0) {
          apart.add(rigs);
          sum += least;
        }
      }
    }
    return sum;
  }

  private long leastSeconds(int kit, int job, BitSet rigs) {
    return rigs.stream()
        .mapToLong(
            rig ->
                (facts.kits(job, rig) & 1 << kit) == 0 || facts.twoStepsAtOnce(rig)
                    ? 0
                    : facts.leastKitSeconds(kit, rig))
        .min()
        .orElse(0);
  }

  /** The turns of the jobs that only this rig can take are cut by services into parts in limits. */
  private long ring(int rig) {
    long limit = facts.ringLimit(rig);
    long turns = 0;
    for (int job = 0; job < batch.jobCount(); job++) {
      BitSet rigs = alone.rigs(job);
      if (batch.leftOutWeight(job) > leftOut && rigs.cardinality() == 1 && rigs.get(rig)) {
        turns += facts.turns(job, rig);
        if (facts.turns(job, rig) > limit) {
          return 0;
        }
      }
    }
    if (turns == 0 || facts.twoStepsAtOnce(rig)) {
      return 0;
    }
    long before = Math.min(limit, facts.ringTurns(rig));
    return (before + turns - 1) / limit * facts.ringSeconds(rig);
  }
}
