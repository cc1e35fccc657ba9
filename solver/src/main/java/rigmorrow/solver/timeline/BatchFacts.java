package rigmorrow.solver.timeline;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.work.JobWork;

/**
 * What is known of a batch before any plan: hours, the parts of each job on each rig, kit and
 * rings. For other ways of planning and for those who reason about all plans at once, in the
 * numbers that {@link Sequences} and {@link Timeline} go by. Times are seconds from the plan's
 * origin.
 */
public final class BatchFacts {
  private final CompiledBatch batch;
  private final CrewMask masks;

  /**
   * @param batch whose facts to tell
   */
  public BatchFacts(CompiledBatch batch) {
    this.batch = batch;
    this.masks = new CrewMask(batch.crew);
  }

  /** The floor that is planned. */
  public Floor floor() {
    return batch.batch.floor();
  }

  /** A rig by its number. */
  public Rig rig(int rig) {
    return batch.rigs.get(rig);
  }

  /** The setup that has this number among those asked for. */
  public Setup setup(int request) {
    return batch.requests.get(request);
  }

  /** True when two people share each changeover of the rig. */
  public boolean twoStepsAtOnce(int rig) {
    return batch.twoStepsAtOnce[rig];
  }

  /** Numbers of the rigs that can take a job. */
  public BitSet rigsOf(int job) {
    BitSet rigs = new BitSet();
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      rigs.set(rig, batch.fits(job, rig));
    }
    return rigs;
  }

  /** Seconds of placing and aligning. */
  public int loadSeconds(int job, int rig) {
    return at(job, rig, CompiledBatch.LOAD_SECONDS);
  }

  /** Seconds of taking the pictures. */
  public int captureSeconds(int job, int rig) {
    return at(job, rig, CompiledBatch.CAPTURE_SECONDS);
  }

  /** Seconds of taking the item off. */
  public int unloadSeconds(int job, int rig) {
    return at(job, rig, CompiledBatch.UNLOAD_SECONDS);
  }

  /** True when those who load stay until the pictures are taken. */
  public boolean attended(int job, int rig) {
    return (at(job, rig, CompiledBatch.FLAGS) & CompiledBatch.FLAG_ATTENDED) != 0;
  }

  /** How many people load. */
  public int loadPeople(int job, int rig) {
    return (at(job, rig, CompiledBatch.FLAGS) & CompiledBatch.FLAG_TWO_LOAD) != 0 ? 2 : 1;
  }

  /** How many people unload. */
  public int unloadPeople(int job, int rig) {
    return (at(job, rig, CompiledBatch.FLAGS) & CompiledBatch.FLAG_TWO_UNLOAD) != 0 ? 2 : 1;
  }

  /** Operators who may be in charge of loading, as bits. */
  public int loadLeads(int job, int rig) {
    return at(job, rig, CompiledBatch.LOAD_MASK);
  }

  /** Operators who may be in charge of unloading, as bits. */
  public int unloadLeads(int job, int rig) {
    return at(job, rig, CompiledBatch.UNLOAD_MASK);
  }

  /** Kit that a job needs on a rig, as bits. */
  public int kits(int job, int rig) {
    return at(job, rig, CompiledBatch.KIT_MASK);
  }

  /** Turns of the plate. */
  public int turns(int job, int rig) {
    return at(job, rig, CompiledBatch.TURNS);
  }

  /** Second by which the sample of a job leaves, or a number beyond any plan. */
  public int leaves(int job) {
    return batch.leave[job];
  }

  /** True when the promise of a job must be kept. */
  public boolean must(int job) {
    return batch.must[job];
  }

  /** Number of the sample that several jobs share, or -1. */
  public int sample(int job) {
    return batch.sample[job];
  }

  /** Number of samples that several jobs share. */
  public int sampleCount() {
    return batch.sampleCount;
  }

  /** Number of operators; they are numbered as in the bits. */
  public int operatorCount() {
    return batch.crew.size();
  }

  /** Number of kits; they are numbered as in the bits. */
  public int kitCount() {
    return batch.kits.size();
  }

  /** Number of units of a kit. */
  public int kitUnits(int kit) {
    return batch.kitUnits[kit + 1] - batch.kitUnits[kit];
  }

  /**
   * The least hands-on seconds of bringing a kit to a rig for the first time; 0 where a unit is
   * there from the start. A unit comes from where the floor has it or from another rig.
   */
  public int leastKitSeconds(int kit, int rig) {
    int least = Integer.MAX_VALUE;
    for (int unit = batch.kitUnits[kit]; unit < batch.kitUnits[kit + 1]; unit++) {
      if (batch.unitPlace[unit] == rig) {
        return 0;
      }
      least = Math.min(least, batch.fetch[batch.unitPlace[unit] * batch.rigCount() + rig]);
    }
    for (int other = 0; other < batch.rigCount(); other++) {
      if (other != rig) {
        least = Math.min(least, batch.fetch[other * batch.rigCount() + rig]);
      }
    }
    return least + batch.kitAlign[kit];
  }

  /** Most turns of a rig's plate ring between two services; beyond any plan where there is none. */
  public int ringLimit(int rig) {
    return batch.ringLimit[rig];
  }

  /** Turns of a rig's plate ring since its last service. */
  public int ringTurns(int rig) {
    return batch.ringTurns[rig];
  }

  /** Hands-on seconds of a service of a rig's plate ring. */
  public int ringSeconds(int rig) {
    return batch.ringSeconds[rig];
  }

  /** Spans in which a rig is open and staffed, as start, end, start, end ... */
  public int[] rigHours(int rig) {
    return withinThePlan(batch.rigHours[rig]);
  }

  /** Spans in which an operator is at work, as start, end, start, end ... */
  public int[] crewHours(int operator) {
    return withinThePlan(batch.crewHours[operator]);
  }

  /** Second at which the plan ends. */
  public int horizon() {
    return batch.horizon;
  }

  /** Second from which the finishing time is counted. */
  public int firstOpening() {
    return batch.firstOpening;
  }

  /** Points for the jobs that no plan can do. */
  public long excludedPoints() {
    return batch.excludedWeight;
  }

  /** The batch that is asked about. */
  public CompiledBatch batch() {
    return batch;
  }

  /** An operator by number; those with the fewest skills come first. */
  public Operator operator(int operator) {
    return batch.crew.get(operator);
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

  /** Latest second at which a pinned job may start, or a number beyond any plan. */
  public int latestStart(int job) {
    int at = job * batch.rigs.size() * CompiledBatch.WORK_STRIDE;
    return batch.work[at + CompiledBatch.PIN_START];
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

  /** Without the last span, which stands for "after the plan". */
  private static int[] withinThePlan(int[] hours) {
    return Arrays.copyOf(hours, hours.length - 2);
  }

  private int at(int job, int rig, int field) {
    return batch.work[(job * batch.rigCount() + rig) * CompiledBatch.WORK_STRIDE + field];
  }
}
