package rigmorrow.solver.timeline;

import java.util.Arrays;
import java.util.Collection;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.work.JobWork;

/**
 * What another way of planning may ask about a compiled batch, in the numbers that {@link
 * Sequences} and {@link Timeline} go by. Times are seconds from the plan's origin.
 */
public final class BatchFacts {
  private final CompiledBatch batch;
  private final CrewMask masks;

  /**
   * @param batch to ask about
   */
  public BatchFacts(CompiledBatch batch) {
    this.batch = batch;
    this.masks = new CrewMask(batch.crew);
  }

  /** The batch that is asked about. */
  public CompiledBatch batch() {
    return batch;
  }

  /** The floor of the batch. */
  public Floor floor() {
    return batch.batch.floor();
  }

  /** A rig by its number. */
  public Rig rig(int rig) {
    return batch.rigs.get(rig);
  }

  /** An operator by number; those with the fewest skills come first. */
  public Operator operator(int operator) {
    return batch.crew.get(operator);
  }

  /** Number of operators. */
  public int operatorCount() {
    return batch.crew.size();
  }

  /** Operators who have all of the skills, as bits. */
  public int skilled(Collection<String> skills) {
    return masks.of(skills);
  }

  /**
   * What a job asks for on a rig.
   *
   * @throws IllegalArgumentException when the rig cannot take the job
   */
  public JobWork work(int job, int rig) {
    return batch.jobWork(job, rig);
  }

  /** When a rig is open and could be unloaded, as start, end, start, end ... within the plan. */
  public int[] rigHours(int rig) {
    return withinPlan(batch.rigHours[rig]);
  }

  /** When an operator works, as start, end, start, end ... within the plan. */
  public int[] operatorHours(int operator) {
    return withinPlan(batch.crewHours[operator]);
  }

  /** Second by which a job's sample must be off its rig, or a number beyond any plan. */
  public int leave(int job) {
    return batch.leave[job];
  }

  /** True when a job that is planned must keep its promise. */
  public boolean must(int job) {
    return batch.must[job];
  }

  /** Number of a sample that several jobs share, or -1. */
  public int sample(int job) {
    return batch.sample[job];
  }

  /** Latest second at which a pinned job may start, or a number beyond any plan. */
  public int latestStart(int job) {
    int at = job * batch.rigs.size() * CompiledBatch.WORK_STRIDE;
    return batch.work[at + CompiledBatch.PIN_START];
  }

  /** True when two people may share a changeover on a rig. */
  public boolean sharesChangeovers(int rig) {
    return batch.twoStepsAtOnce[rig];
  }

  /** Second at which the first rig opens: finishing time counts from here. */
  public int firstOpening() {
    return batch.firstOpening;
  }

  /** Second at which the plan ends. */
  public int horizon() {
    return batch.horizon;
  }

  /** True when two jobs ask for exactly the same in everything, so that they may change places. */
  public boolean alike(int job, int other) {
    int length = batch.rigs.size() * CompiledBatch.WORK_STRIDE;
    for (int at = 0; at < length; at++) {
      boolean own = at % CompiledBatch.WORK_STRIDE == CompiledBatch.JOB;
      if (!own && batch.work[job * length + at] != batch.work[other * length + at]) {
        return false;
      }
    }
    return batch.leftOutWeight[job] == batch.leftOutWeight[other]
        && batch.pinRig[job] < 0
        && batch.pinRig[other] < 0;
  }

  /** The hours without the open span after the plan. */
  private static int[] withinPlan(int[] hours) {
    return Arrays.copyOf(hours, hours.length - 2);
  }
}
