package rigmorrow.solver.bound;

import java.util.List;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * The door to the bounds of a batch: what no workable plan can be below, found without any plan.
 * The proofs stand with the parts: {@link LeftOutBound}, {@link LatenessBound}, {@link SetupBound},
 * {@link OtherChangeovers}, {@link FinishingBound}. Made by rounds of a fixed number, never by the
 * clock: the same batch gives the same bounds.
 */
public final class LowerBound {
  private final CompiledBatch batch;
  private final BatchFacts facts;
  private final Alone alone;
  private final SetupKinds kinds;
  private final SetupBound setups;
  private final List<Bottleneck> bottlenecks;
  private final long leftOutPoints;

  private LowerBound(CompiledBatch batch) {
    this.batch = batch;
    this.facts = new BatchFacts(batch);
    Alone unchanged = new Alone(batch, facts, (job, rig) -> 0);
    SetupKinds unchecked = new SetupKinds(batch, facts, unchanged::rigs);
    this.alone = new Alone(batch, facts, unchecked::entrySeconds);
    this.kinds = new SetupKinds(batch, facts, alone::rigs);
    this.setups = new SetupBound(kinds, batch.rigCount());
    this.bottlenecks = new Bottlenecks(batch, facts, alone, kinds, setups).all();
    this.leftOutPoints = new LeftOutBound(batch, alone).points(bottlenecks);
  }

  /** Works out what holds for all plans of a batch. */
  public static LowerBound of(CompiledBatch batch) {
    return new LowerBound(batch);
  }

  /**
   * Bounds on the parts of every workable plan that leaves out jobs of at most so many points. The
   * more may be left out the lower they are, so a plan is held against its own points: then none
   * that is as good in what it leaves out is below them.
   *
   * @param leftOut points for all jobs left out, with those that fit no rig
   */
  public PlanBounds among(long leftOut) {
    long gone = facts.excludedPoints() + alone.impossiblePoints();
    long mayGo = Math.max(0, leftOut - gone);
    Weights weights = facts.floor().weights();
    long late = new LatenessBound(batch, facts, alone).weightedSeconds(bottlenecks, mayGo);
    long finishing = new FinishingBound(batch, facts, alone).seconds(bottlenecks, mayGo);
    return new PlanBounds(
        facts.excludedPoints() + leftOutPoints,
        points(late, weights.latenessPerMinute()),
        points(changeoverSeconds(mayGo), weights.changeoverPerMinute()),
        points(finishing, weights.finishingPerMinute()));
  }

  private long changeoverSeconds(long mayGo) {
    long[] value = new long[kinds.count()];
    long[] weight = new long[kinds.count()];
    for (int kind = 0; kind < value.length; kind++) {
      value[kind] = setups.partsOf(kind);
    }
    for (int job = 0; job < batch.jobCount(); job++) {
      if (kinds.of(job) >= 0) {
        weight[kinds.of(job)] += batch.leftOutWeight(job);
      }
    }
    long parts = setups.parts() - Removable.mostValue(value, weight, mayGo);
    long setupSeconds = -Math.floorDiv(-Math.max(0, parts), SetupBound.PARTS);
    return setupSeconds + new OtherChangeovers(batch, facts, alone, mayGo).seconds();
  }

  /** Rounded up as the plan's own figures are, so that a bound that is reached is equal. */
  private static long points(long seconds, int perMinute) {
    return -Math.floorDiv(-seconds * perMinute, 60L);
  }
}
