package rigmorrow.solver.timeline;

import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * Walks single rigs as if nobody and nothing had to be waited for: no queue for people, kit or
 * samples. What a walk comes to is what the decode comes to where nothing is shared, and otherwise
 * less: waiting only ever makes a job later and fetching kit a changeover longer. It costs a
 * fraction of a decode and never decides a plan: {@link Timeline} does.
 *
 * <p>A second clock runs beside it, on which everybody waits as they did: {@link WaitingClock}.
 *
 * <p>Remembers the walk of the sequences as they were kept last, place by place, so that a change
 * is walked from where it begins.
 */
public final class RigWalk {
  private static final int STRIDE = 5;
  private static final int FREE_AT = 0;
  private static final int STATE = 1;
  private static final int TURNS = 2;
  private static final int SETUP = 3;
  private static final int HARD = 4;
  private static final long MOST_HARD = 1_000_000_000;

  private final CompiledBatch batch;
  private final Timeline timeline;
  private final int rigs;
  private final int[] work;

  /** For each rig, {@link #STRIDE} numbers before each place and after the last. */
  private final int[][] kept;

  /** For each rig, weighted seconds late before each place and after the last. */
  private final long[][] keptLate;

  /** Runs only where lateness counts: it tells nothing else. */
  private final @Nullable WaitingClock waiting;

  private int freeAt;
  private int state;
  private int turns;
  private int setup;
  private long hard;
  private long late;
  private int span;

  /** What the job that was measured last takes without waiting, and until it is captured. */
  private int seconds;

  private int secondsUntilCaptured;

  /**
   * @param timeline whose sequences are walked
   */
  public RigWalk(CompiledBatch batch, Timeline timeline) {
    this.batch = batch;
    this.timeline = timeline;
    this.rigs = batch.rigCount();
    this.work = batch.work;
    this.kept = new int[rigs][(batch.jobCount() + 1) * STRIDE];
    this.keptLate = new long[rigs][batch.jobCount() + 1];
    this.waiting = batch.latenessCounts() ? new WaitingClock(batch, timeline) : null;
    for (int rig = 0; rig < rigs; rig++) {
      kept[rig][TURNS] = batch.ringTurns[rig];
    }
  }

  /**
   * Walks a rig's sequence as it stands; the results are read from the methods below.
   *
   * @param from first place that may differ from what was kept
   */
  public void walk(int rig, int from) {
    resume(rig, from);
    int[] sequence = timeline.sequence(rig);
    int length = timeline.length(rig);
    for (int at = from; at < length; at++) {
      step(rig, sequence[at]);
    }
  }

  /** As {@link #walk}, and remembers it. */
  public void keep(int rig, int from) {
    resume(rig, from);
    int[] sequence = timeline.sequence(rig);
    int length = timeline.length(rig);
    for (int at = from; at < length; at++) {
      step(rig, sequence[at]);
      int to = (at + 1) * STRIDE;
      kept[rig][to + FREE_AT] = freeAt;
      kept[rig][to + STATE] = state;
      kept[rig][to + TURNS] = turns;
      kept[rig][to + SETUP] = setup;
      kept[rig][to + HARD] = (int) Math.min(MOST_HARD, hard);
      keptLate[rig][at + 1] = late;
    }
  }

  /**
   * Reads how long everybody waits in the plan that the timeline kept last. To be called when all
   * changed rigs were kept.
   */
  public void keepWaits() {
    if (waiting != null) {
      for (int rig = 0; rig < rigs; rig++) {
        keepWaits(rig, waiting);
      }
    }
  }

  private void keepWaits(int rig, WaitingClock clock) {
    int[] sequence = timeline.sequence(rig);
    int length = timeline.length(rig);
    clock.resume(rig, 0);
    for (int place = 0; place < length; place++) {
      int at = (sequence[place] * rigs + rig) * CompiledBatch.WORK_STRIDE;
      state = kept[rig][place * STRIDE + STATE];
      turns = kept[rig][place * STRIDE + TURNS];
      measure(rig, at);
      clock.keep(rig, place, at, seconds, secondsUntilCaptured);
    }
  }

  /**
   * The place on a rig where one more job adds the least setup, as the rig was kept; of several one
   * at random.
   *
   * @param from first place that may be taken
   * @param until last one, at most the number of jobs there
   */
  public int cheapestPlace(int rig, int job, int from, int until, SplittableRandom random) {
    int[] sequence = timeline.sequence(rig);
    int length = timeline.length(rig);
    int request = requestAt(job, rig);
    int best = from;
    int least = Integer.MAX_VALUE;
    int alike = 0;
    for (int at = from; at <= until; at++) {
      int before = kept[rig][at * STRIDE + STATE];
      int[] row = timeline.row(rig, before, request);
      int more = row[request + SetupTable.ATTENDED];
      if (at < length) {
        int then = requestAt(sequence[at], rig);
        more +=
            timeline.row(rig, row[request + SetupTable.NEXT], then)[then + SetupTable.ATTENDED]
                - timeline.row(rig, before, then)[then + SetupTable.ATTENDED];
      }
      if (more > least) {
        continue;
      }
      alike = more == least ? alike + 1 : 1;
      least = more;
      if (alike == 1 || random.nextInt(alike) == 0) {
        best = at;
      }
    }
    return best;
  }

  /** Setup seconds on the way to a place and away from it, as the rig was kept. */
  public int setupAround(int rig, int at) {
    int next = Math.min(at + 2, timeline.length(rig));
    return kept[rig][next * STRIDE + SETUP] - kept[rig][at * STRIDE + SETUP];
  }

  private int requestAt(int job, int rig) {
    return work[(job * rigs + rig) * CompiledBatch.WORK_STRIDE + CompiledBatch.REQUEST_AT];
  }

  /** Second at which the rig's last job ends; 0 when there is none. */
  public int end() {
    return freeAt;
  }

  /** Hands-on changeover seconds without fetching kit. */
  public int setupSeconds() {
    return setup;
  }

  /** Weight times seconds after the promise, summed. */
  public long lateWeighted() {
    return late;
  }

  /**
   * The same if every job waits as long as it did in the plan that was kept last; 0 where lateness
   * does not count.
   */
  public long lateWeightedWaiting() {
    return waiting == null ? 0 : waiting.late();
  }

  /** The same of a rig's jobs in the plan that was kept last. */
  public long keptLateWeighted(int rig) {
    return waiting == null ? 0 : waiting.keptLate(rig);
  }

  /** What breaks hard rules even without waiting. */
  public long hard() {
    return hard;
  }

  private void resume(int rig, int place) {
    int at = place * STRIDE;
    freeAt = kept[rig][at + FREE_AT];
    state = kept[rig][at + STATE];
    turns = kept[rig][at + TURNS];
    setup = kept[rig][at + SETUP];
    hard = kept[rig][at + HARD];
    late = keptLate[rig][place];
    span = 0;
    if (waiting != null) {
      waiting.resume(rig, place);
    }
  }

  private void step(int rig, int job) {
    int at = (job * rigs + rig) * CompiledBatch.WORK_STRIDE;
    setup += measure(rig, at);
    int[] spans = batch.rigHours[rig];
    int start = Math.max(freeAt, work[at + CompiledBatch.READY]);
    span = Spans.of(spans, span, start);
    int begin = Math.max(start, spans[Spans.openFor(spans, span, start, seconds)]);
    int lateSeconds = begin + secondsUntilCaptured - work[at + CompiledBatch.DUE];
    int end = begin + seconds;
    if (lateSeconds > 0) {
      late += (long) lateSeconds * work[at + CompiledBatch.WEIGHT];
      hard += (work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_MUST) == 0 ? 0 : lateSeconds;
    }
    hard +=
        Math.max(0, end - Math.min(work[at + CompiledBatch.LEAVE], batch.horizon))
            + Math.max(0, begin - work[at + CompiledBatch.PIN_START]);
    freeAt = end;
    if (waiting != null) {
      waiting.step(rig, at, seconds, secondsUntilCaptured);
    }
  }

  /**
   * Sets how long a job takes from the state as it is, goes on to the next, and tells its setup.
   */
  private int measure(int rig, int at) {
    int request = work[at + CompiledBatch.REQUEST_AT];
    int[] row = timeline.row(rig, state, request);
    int attended = row[request + SetupTable.ATTENDED];
    int tail = row[request + SetupTable.TAIL_AND_PEOPLE] & SetupTable.TAIL_BITS;
    if (turns + work[at + CompiledBatch.TURNS] > batch.ringLimit[rig] && turns > 0) {
      int service = batch.ringSeconds[rig];
      attended = batch.twoStepsAtOnce[rig] ? Math.max(attended, service) : attended + service;
      turns = 0;
    }
    turns += work[at + CompiledBatch.TURNS];
    state = row[request + SetupTable.NEXT];
    secondsUntilCaptured =
        attended
            + Math.max(work[at + CompiledBatch.LOAD_SECONDS], tail)
            + work[at + CompiledBatch.CAPTURE_SECONDS];
    seconds = secondsUntilCaptured + work[at + CompiledBatch.UNLOAD_SECONDS];
    return attended;
  }
}
