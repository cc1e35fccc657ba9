package rigmorrow.solver.timeline;

import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.work.JobWork;

/**
 * A batch as primitive arrays, which is what the decoder and the search read. Holds only jobs that
 * at least one rig can take; the others are in {@link #excluded}. Jobs, rigs and operators are
 * numbers here: positions in {@link #jobs}, {@link #rigs} and {@link #crew}.
 */
public final class CompiledBatch {
  /** Stands for no limit in time. */
  static final int NEVER = Integer.MAX_VALUE / 4;

  /** One cache line for all that the decoder asks about a job on a rig. */
  static final int WORK_STRIDE = 16;

  static final int LOAD_SECONDS = 0;
  static final int LOAD_MASK = 1;
  static final int CAPTURE_SECONDS = 2;
  static final int UNLOAD_SECONDS = 3;
  static final int UNLOAD_MASK = 4;
  static final int KIT_MASK = 5;
  static final int TURNS = 6;
  static final int FLAGS = 7;

  /** Where the request begins in a row of the changeover matrix. */
  static final int REQUEST_AT = 8;

  static final int READY = 9;
  static final int DUE = 10;
  static final int WEIGHT = 11;
  static final int SAMPLE = 12;
  static final int LEAVE = 13;
  static final int PIN_START = 14;
  static final int JOB = 15;

  static final int FLAG_TWO_LOAD = 1;
  static final int FLAG_TWO_UNLOAD = 2;
  static final int FLAG_ATTENDED = 4;
  static final int FLAG_FITS = 8;
  static final int FLAG_MUST = 16;

  final Batch batch;
  final PlanClock clock;
  final List<ShotJob> jobs;
  final List<Rig> rigs;

  /**
   * Operators with the fewest skills first: of those who are free, the one least needed elsewhere.
   */
  final List<Operator> crew;

  final List<Kit> kits;
  final List<LeftOut> excluded;
  final List<Setup> requests;
  final Map<Long, JobWork> works;

  /** For job j on rig r, {@link #WORK_STRIDE} numbers from (j * rigs + r) * stride. */
  final int[] work;

  final int[] request;
  final int[] release;
  final int[] leave;
  final int[] due;
  final boolean[] must;
  final int[] weight;
  final int[] leftOutWeight;

  /** Number of the sample where several jobs share it, -1 where it has one job. */
  final int[] sample;

  final int sampleCount;

  /** Spans of each rig and operator as start, end, start, end ... and one open span at the end. */
  final int[][] rigHours;

  final int[][] crewHours;

  final boolean[] twoStepsAtOnce;
  final int[] ringLimit;
  final int[] ringTurns;
  final int[] ringSeconds;
  final int[] ringMask;

  /** First unit of each kit; one more than kits. */
  final int[] kitUnits;

  final int[] kitAlign;
  final int[] kitPeople;
  final int[] kitMask;
  final int[] unitPlace;

  /** Seconds from place p to rig r at p * rigs + r; place r is rig r itself. */
  final int[] fetch;

  final List<String> places;
  final List<String> units;

  final int[] pinRig;
  final int[] pinPlace;
  final int[] pinStart;
  final int[] frozen;
  final boolean pinned;

  /** Pinned jobs that no plan can do. */
  final int excludedPins;

  final int latenessPerMinute;
  final int changeoverPerMinute;
  final int finishingPerMinute;

  final int horizon;
  final int firstOpening;
  final int allOperators;

  /** Points for the jobs that no plan can do. */
  final long excludedWeight;

  CompiledBatch(BatchCompiler from) {
    this.batch = from.batch;
    this.clock = from.clock;
    this.jobs = List.copyOf(from.jobs);
    this.rigs = from.floor.rigs();
    this.crew = from.crew;
    this.kits = from.floor.kits();
    this.excluded = List.copyOf(from.excluded);
    this.requests = List.copyOf(from.requests.keySet());
    this.works = Map.copyOf(from.works);
    this.work = from.work;
    this.request = from.request;
    this.release = from.release;
    this.leave = from.leave;
    this.due = from.due;
    this.must = from.must;
    this.weight = from.weight;
    this.leftOutWeight = from.leftOutWeight;
    this.sample = from.sample;
    this.sampleCount = from.sampleCount;
    this.rigHours = from.rigHours;
    this.crewHours = from.crewHours;
    this.twoStepsAtOnce = from.twoStepsAtOnce;
    this.ringLimit = from.ringLimit;
    this.ringTurns = from.ringTurns;
    this.ringSeconds = from.ringSeconds;
    this.ringMask = from.ringMask;
    this.kitUnits = from.kitUnits;
    this.kitAlign = from.kitAlign;
    this.kitPeople = from.kitPeople;
    this.kitMask = from.kitMask;
    this.unitPlace = from.unitPlace;
    this.fetch = from.fetch;
    this.places = List.copyOf(from.places);
    this.units = List.copyOf(from.units);
    this.pinRig = from.pinRig;
    this.pinPlace = from.pinPlace;
    this.pinStart = from.pinStart;
    this.frozen = from.frozen;
    this.pinned = from.pinned;
    this.excludedPins = from.excludedPins;
    Weights weights = batch.floor().weights();
    this.latenessPerMinute = weights.latenessPerMinute();
    this.changeoverPerMinute = weights.changeoverPerMinute();
    this.finishingPerMinute = weights.finishingPerMinute();
    this.horizon = from.clock.horizonSeconds();
    this.firstOpening = from.firstOpening;
    this.excludedWeight = from.excludedWeight;
    this.allOperators = (int) ((1L << crew.size()) - 1);
  }

  /** Compiles a batch; computes the fit and the work of every job on every rig. */
  public static CompiledBatch of(Batch batch) {
    return of(batch, JobFacts.of(batch.floor()));
  }

  /** Compiles a batch of which the fit and the work are known or asked for elsewhere. */
  public static CompiledBatch of(Batch batch, JobFacts facts) {
    return new BatchCompiler(batch, facts).compile();
  }

  /** What was compiled. */
  public Batch batch() {
    return batch;
  }

  /** Number of jobs that can be planned. */
  public int jobCount() {
    return jobs.size();
  }

  /** Id of a job. */
  public String jobId(int job) {
    return jobs.get(job).id();
  }

  /** Number of rigs. */
  public int rigCount() {
    return rigs.size();
  }

  /** True when the rig can take the job and no pin holds it elsewhere. */
  public boolean fits(int job, int rig) {
    return (work[(job * rigs.size() + rig) * WORK_STRIDE + FLAGS] & FLAG_FITS) != 0;
  }

  /** Number of the setup that a job asks for; jobs with the same number ask for the same. */
  public int request(int job) {
    return request[job];
  }

  /** Number of different setups asked for. */
  public int requestCount() {
    return requests.size();
  }

  /** Second by which a job's pictures are promised, or a number beyond any plan. */
  public int due(int job) {
    return due[job];
  }

  /** Second from which a job may start: its sample is there, and a pinned start has come. */
  public int ready(int job) {
    return Math.max(release[job], pinStart[job]);
  }

  /** How much a job counts when it is late. */
  public int weight(int job) {
    return weight[job];
  }

  /** Hands-on load and unload and capture of a job on a rig, without changeover and waiting. */
  public int plainSeconds(int job, int rig) {
    int at = (job * rigs.size() + rig) * WORK_STRIDE;
    return work[at + LOAD_SECONDS] + work[at + CAPTURE_SECONDS] + work[at + UNLOAD_SECONDS];
  }

  /** Points for leaving a job out. */
  public int leftOutWeight(int job) {
    return leftOutWeight[job];
  }

  /** What leaving jobs out breaks: each pinned job that is in no sequence counts 1. */
  public int pinnedAmong(List<Integer> backlog) {
    return excludedPins + (int) backlog.stream().filter(job -> pinRig[job] >= 0).count();
  }

  /** Second by which a job must be off a rig: its sample leaves, or the rig closes for good. */
  public int latestEnd(int job, int rig) {
    int[] hours = rigHours[rig];
    int closing = hours.length > 2 ? hours[hours.length - 3] : 0;
    return Math.min(leave[job], closing);
  }

  /** The soft score of a timeline that was just decoded: points times 60. */
  public long softSeconds(Timeline timeline) {
    return softSeconds(
        timeline.lateWeighted(), timeline.changeoverSeconds(), timeline.finishedAt());
  }

  /** The soft score of its parts: points times 60. */
  public long softSeconds(long lateWeighted, long changeoverSeconds, int finishedAt) {
    return lateWeighted * latenessPerMinute
        + changeoverSeconds * changeoverPerMinute
        + (long) Math.max(0, finishedAt - firstOpening) * finishingPerMinute;
  }

  /** Points for each minute until the last job ends. */
  public int finishingPerMinute() {
    return finishingPerMinute;
  }

  /** True when some rig closes and opens again: on a list of several days, most of all. */
  public boolean closesInBetween() {
    for (int[] hours : rigHours) {
      // From and to of each span, and of one behind the plan's end.
      if (hours.length > 4) {
        return true;
      }
    }
    return false;
  }

  /** True when a second of lateness costs points. */
  public boolean latenessCounts() {
    return latenessPerMinute > 0;
  }

  /** True when a second of changeover costs points. */
  public boolean changeoversCount() {
    return changeoverPerMinute > 0;
  }

  /** True when neither lateness nor changeovers count, only the end of the last job. */
  public boolean onlyFinishingCounts() {
    return latenessPerMinute == 0 && changeoverPerMinute == 0 && finishingPerMinute > 0;
  }

  /** Number of jobs at the front of a rig that are running or done and cannot be moved. */
  public int frozen(int rig) {
    return frozen[rig];
  }

  /** Where a pinned job must be on its rig, or -1. */
  public int pinnedPlace(int job) {
    return pinPlace[job];
  }

  /** Number of pinned jobs that no rig can take; each counts 1 against any plan. */
  public int excludedPins() {
    return excludedPins;
  }

  /** The longest time for which a rig is open and staffed in one go; 0 when it never is. */
  public int longestOpenSeconds(int rig) {
    int longest = 0;
    for (int i = 0; i + 2 < rigHours[rig].length; i += 2) {
      longest = Math.max(longest, rigHours[rig][i + 1] - rigHours[rig][i]);
    }
    return longest;
  }

  /** Which rig a pinned job must be on, or -1. */
  public int pinnedRig(int job) {
    return pinRig[job];
  }

  JobWork jobWork(int job, int rig) {
    JobWork found = works.get((long) job * rigs.size() + rig);
    if (found == null) {
      throw new IllegalArgumentException(
          jobs.get(job).id() + " cannot be on " + rigs.get(rig).id());
    }
    return found;
  }
}
