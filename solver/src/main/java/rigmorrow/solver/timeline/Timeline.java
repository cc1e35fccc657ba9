package rigmorrow.solver.timeline;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.work.ChangeoverModel;

/**
 * The one decoder: from each rig's sequence to every start and end. A deterministic event
 * simulation in whole seconds; the only place that knows time.
 *
 * <p>A job runs changeover (attended), load and align (attended), capture (unattended unless its
 * recipe says otherwise), unload (attended). Requests for people are served first come, first
 * served: by the second of the request, then the job's weight, then rig order; each gets the
 * soonest start there is and keeps it. A job takes its kit, its sample and its first people
 * together or waits. A job does not start where it could not end before its rig closes.
 *
 * <p>One instance serves one thread and any number of decodes; a decode allocates nothing once the
 * changeover rows it meets are known.
 */
public final class Timeline {
  private static final int START = 0;
  private static final int LOAD = 1;
  private static final int UNLOAD = 2;
  private static final long IDLE = Long.MAX_VALUE;

  /** Waits for kit or a sample whose end is not known yet. */
  private static final long BLOCKED = Long.MAX_VALUE - 1;

  private static final int TIME_SHIFT = 20;
  private static final int WEIGHT_SHIFT = 8;
  private static final int RIG_MASK = (1 << WEIGHT_SHIFT) - 1;
  private static final int HIGHEST_WEIGHT = 1000;

  /** A job on a rig that cannot take it breaks the plan as badly as a day's delay. */
  private static final long WRONG_RIG_SECONDS = 86_400;

  private final CompiledBatch batch;
  private final SetupTable[] tables;
  private final CrewDesk crew;
  private final KitStore kit;
  private final RigGate gate;
  private final TwoHands hands = new TwoHands();
  private final int rigs;

  private final int[] work;
  private final int[] ringLimit;

  private final int[][] sequence;
  private final int[] length;
  private final long[] key;

  /** What breaks a tie between requests of one second: the job's weight, then the rig. */
  private final int[] rank;

  private final int[] phase;

  /** Where the work of a rig's current job begins in {@link #work}. */
  private final int[] current;

  private final int[] place;
  private final int[] state;
  private final int[] turns;
  private final int[] warmAt;
  private final int[] freeAt;

  private @Nullable NextJob nextJob;
  private @Nullable Trace trace;

  private long hard;
  private long lateWeighted;
  private long changeoverSeconds;
  private int finishedAt;

  /** Where a decode that has become too bad is given up. */
  private long hardLimit;

  private long softLimit;
  private long leastChangeoverSeconds;
  private int leastEnd;

  private final int[] captureEnd;

  /**
   * @param batch to decode plans of
   */
  public Timeline(CompiledBatch batch) {
    this.batch = batch;
    this.rigs = batch.rigCount();
    ChangeoverModel changeovers = new ChangeoverModel(batch.batch.floor());
    CrewMask crewMask = new CrewMask(batch.crew);
    this.tables = new SetupTable[rigs];
    for (int rig = 0; rig < rigs; rig++) {
      tables[rig] =
          new SetupTable(
              batch.rigs.get(rig),
              batch.twoStepsAtOnce[rig],
              changeovers,
              batch.requests,
              crewMask);
    }
    this.crew = new CrewDesk(batch);
    this.kit = new KitStore(batch);
    this.gate = new RigGate(batch);
    this.work = batch.work;
    this.ringLimit = batch.ringLimit;
    this.sequence = new int[rigs][batch.jobCount()];
    this.length = new int[rigs];
    this.key = new long[rigs];
    this.rank = new int[rigs];
    this.phase = new int[rigs];
    this.current = new int[rigs];
    this.place = new int[rigs];
    this.state = new int[rigs];
    this.turns = new int[rigs];
    this.warmAt = new int[rigs];
    this.freeAt = new int[rigs];
    this.captureEnd = new int[batch.jobCount()];
  }

  /** Where to write a rig's sequence before {@link #decode}. */
  public int[] sequence(int rig) {
    return sequence[rig];
  }

  /** Says how many jobs stand in {@link #sequence(int)}. */
  public void setLength(int rig, int jobs) {
    length[rig] = jobs;
  }

  /** Number of jobs in a rig's sequence. */
  public int length(int rig) {
    return length[rig];
  }

  /** Decodes the sequences; the results are read from the methods below. */
  public void decode() {
    decodeWithin(Long.MAX_VALUE, Long.MAX_VALUE, 0, 0);
  }

  /**
   * Decodes the sequences, but gives up as soon as the plan is known to be worse than allowed.
   *
   * @param hard most that may break hard rules
   * @param soft most that {@link CompiledBatch#softSeconds} may come to
   * @param leastSetupSeconds known to be needed in all, so that the end is foreseen sooner; 0 when
   *     nothing is known
   * @param leastEnd second before which the last job is known not to end; 0 when nothing is known
   * @return false when it was given up; then the results mean nothing
   */
  public boolean decodeWithin(long hard, long soft, long leastSetupSeconds, int leastEnd) {
    hardLimit = hard;
    softLimit = soft;
    leastChangeoverSeconds = leastSetupSeconds;
    this.leastEnd = leastEnd;
    return run(null, null);
  }

  /** Builds the sequences as it decodes, asking for the next job whenever a rig is free. */
  public void build(NextJob chooser) {
    for (int rig = 0; rig < rigs; rig++) {
      length[rig] = 0;
    }
    unlimited();
    run(chooser, null);
  }

  /** Decodes the sequences and remembers every time. */
  Trace trace() {
    Trace remembered = new Trace(batch.jobCount(), batch.kits.size());
    unlimited();
    run(null, remembered);
    return remembered;
  }

  /** What breaks hard rules, mostly seconds; 0 for a workable plan. */
  public long hard() {
    return hard;
  }

  /** Sum over jobs of weight times seconds after the promise. */
  public long lateWeighted() {
    return lateWeighted;
  }

  /** Hands-on changeover seconds of all rigs. */
  public long changeoverSeconds() {
    return changeoverSeconds;
  }

  /** Second at which the last job ends; 0 when there is none. */
  public int finishedAt() {
    return finishedAt;
  }

  /** Hands-on setup seconds if a job followed on a rig as it is now, without kit and ring. */
  public int setupSecondsNow(int rig, int job) {
    int request = batch.request[job] * SetupTable.STRIDE;
    return tables[rig].row(state[rig], request)[request + SetupTable.ATTENDED];
  }

  /** Hands-on setup seconds between two jobs that follow each other on a rig, from scratch. */
  public int setupSecondsBetween(int rig, int from, int to) {
    int first = batch.request[from] * SetupTable.STRIDE;
    int then = batch.request[to] * SetupTable.STRIDE;
    int after = tables[rig].row(0, first)[first + SetupTable.NEXT];
    return tables[rig].row(after, then)[then + SetupTable.ATTENDED];
  }

  /** Second at which a job that was just decoded is captured. */
  public int captureEnd(int job) {
    return captureEnd[job];
  }

  /** Second at which a rig's last job ended; 0 when it had none. */
  public int endOf(int rig) {
    return freeAt[rig];
  }

  int[] row(int rig, int state, int request) {
    return tables[rig].row(state, request);
  }

  private void unlimited() {
    hardLimit = Long.MAX_VALUE;
    softLimit = Long.MAX_VALUE;
    leastChangeoverSeconds = 0;
    leastEnd = 0;
  }

  /** False when it was given up. */
  private boolean run(@Nullable NextJob chooser, @Nullable Trace into) {
    nextJob = chooser;
    trace = into;
    hard = 0;
    lateWeighted = 0;
    changeoverSeconds = 0;
    finishedAt = 0;
    crew.open();
    gate.open();
    kit.open();
    for (int rig = 0; rig < rigs; rig++) {
      place[rig] = -1;
      state[rig] = 0;
      turns[rig] = batch.ringTurns[rig];
      freeAt[rig] = 0;
      next(rig);
    }
    while (true) {
      // The rig's number is part of its key, so that the soonest is found without a branch.
      long soonest = key[0];
      for (int other = 1; other < rigs; other++) {
        soonest = Math.min(soonest, key[other]);
      }
      if (soonest >= BLOCKED) {
        return true;
      }
      int time = (int) (soonest >> TIME_SHIFT);
      int rig = (int) soonest & RIG_MASK;
      switch (phase[rig]) {
        case START -> start(rig, time);
        case LOAD -> load(rig, time);
        default -> {
          unload(rig, time);
          if (hard > hardLimit || softSoFar() > softLimit) {
            return false;
          }
        }
      }
    }
  }

  private long softSoFar() {
    return batch.softSeconds(
        lateWeighted,
        Math.max(changeoverSeconds, leastChangeoverSeconds),
        Math.max(finishedAt, leastEnd));
  }

  /** Puts the rig's next job before the desk, or sets the rig idle. */
  private void next(int rig) {
    int at = ++place[rig];
    if (at >= length[rig] && !chooseNext(rig)) {
      key[rig] = IDLE;
      return;
    }
    int job = sequence[rig][at];
    int mine = (job * rigs + rig) * CompiledBatch.WORK_STRIDE;
    current[rig] = mine;
    rank[rig] = (HIGHEST_WEIGHT - work[mine + CompiledBatch.WEIGHT]) << WEIGHT_SHIFT | rig;
    phase[rig] = START;
    if (batch.pinned) {
      holdPins(rig, at, job);
    }
    ask(rig, Math.max(freeAt[rig], work[mine + CompiledBatch.READY]));
  }

  private boolean chooseNext(int rig) {
    if (nextJob == null) {
      return false;
    }
    int job = nextJob.choose(rig, freeAt[rig], this);
    if (job == NextJob.NONE) {
      return false;
    }
    sequence[rig][length[rig]++] = job;
    return true;
  }

  private void holdPins(int rig, int at, int job) {
    if (batch.pinPlace[job] >= 0 && batch.pinPlace[job] != at) {
      hard += Math.abs(batch.pinPlace[job] - at);
    }
    if (batch.pinRig[job] >= 0 && batch.pinRig[job] != rig) {
      hard += WRONG_RIG_SECONDS;
    }
  }

  /** A request of the rig's current job: earlier first, then heavier, then rig order. */
  private void ask(int rig, int time) {
    key[rig] = (long) time << TIME_SHIFT | rank[rig];
  }

  private void start(int rig, int time) {
    int at = current[rig];
    int kits = work[at + CompiledBatch.KIT_MASK];
    int sample = work[at + CompiledBatch.SAMPLE];
    if ((kits | (sample + 1)) != 0) {
      int free = kit.freeAt(kits, sample);
      if (free > time) {
        if (trace != null) {
          trace.held(work[at + CompiledBatch.JOB], time, kits, sample, kit);
        }
        if (free == KitStore.HELD) {
          key[rig] = BLOCKED;
        } else {
          ask(rig, free);
        }
        return;
      }
    }
    int request = work[at + CompiledBatch.REQUEST_AT];
    int[] row = tables[rig].row(state[rig], request);
    int attended = row[request + SetupTable.ATTENDED];
    int tail = row[request + SetupTable.TAIL_AND_PEOPLE] & SetupTable.TAIL_BITS;
    int people = row[request + SetupTable.TAIL_AND_PEOPLE] >>> SetupTable.PEOPLE_SHIFT;
    int mask = row[request + SetupTable.MASK];
    boolean service =
        turns[rig] + work[at + CompiledBatch.TURNS] > ringLimit[rig] && turns[rig] > 0;
    if (kits != 0) {
      kit.choose(kits, rig, time);
    }
    if (service || (kits != 0 && kit.people() > 0)) {
      int more = (service ? batch.ringSeconds[rig] : 0) + (kits == 0 ? 0 : kit.seconds());
      mask &= (service ? batch.ringMask[rig] : -1) & (kits == 0 ? -1 : kit.mask());
      people = Math.max(Math.max(people, 1), kits == 0 ? 0 : kit.people());
      attended += more;
      if (batch.twoStepsAtOnce[rig]) {
        share(rig, at, service, kits);
        attended = hands.attendedSeconds();
        tail = hands.tailSeconds();
        people = hands.people();
      }
    }
    int loadSeconds = work[at + CompiledBatch.LOAD_SECONDS];
    int rest =
        Math.max(loadSeconds, tail)
            + work[at + CompiledBatch.CAPTURE_SECONDS]
            + work[at + CompiledBatch.UNLOAD_SECONDS];
    int begin;
    if (attended > 0) {
      begin = crew.ask(mask, people == 2, time, attended);
    } else {
      begin = firstLoad(at, time, tail);
    }
    int opens = gate.opens(rig, begin, attended + rest);
    if (opens != begin) {
      if (trace != null) {
        trace.closed(work[at + CompiledBatch.JOB], time, begin);
      }
      ask(rig, opens);
      return;
    }
    hard += Math.max(0, begin - work[at + CompiledBatch.PIN_START]);
    if (trace != null) {
      trace.start(
          work[at + CompiledBatch.JOB], state[rig], gate.closesAt(rig), service, kits, rig, kit);
      trace.begin(work[at + CompiledBatch.JOB], time);
    }
    if ((kits | (sample + 1)) != 0) {
      kit.take(kits, sample, rig);
    }
    turns[rig] = (service ? 0 : turns[rig]) + work[at + CompiledBatch.TURNS];
    state[rig] = row[request + SetupTable.NEXT];
    changeoverSeconds += attended;
    if (attended == 0) {
      warmAt[rig] = begin + tail;
      takeLoad(rig, at, begin);
      return;
    }
    int end = begin + attended;
    crew.take(end);
    warmAt[rig] = end + tail;
    if (trace != null) {
      trace.changeover(work[at + CompiledBatch.JOB], begin, end, crew);
    }
    phase[rig] = LOAD;
    ask(rig, end);
  }

  private int firstLoad(int at, int time, int tail) {
    int seconds = handsOnLoad(at, tail);
    return seconds == 0
        ? time
        : crew.ask(
            work[at + CompiledBatch.LOAD_MASK],
            (work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_TWO_LOAD) != 0,
            time,
            seconds);
  }

  /** People's time from the start of loading: the load alone, or to the end of attended capture. */
  private int handsOnLoad(int at, int untilWarm) {
    int load = work[at + CompiledBatch.LOAD_SECONDS];
    return (work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_ATTENDED) == 0
        ? load
        : Math.max(load, untilWarm) + work[at + CompiledBatch.CAPTURE_SECONDS];
  }

  private void load(int rig, int time) {
    int at = current[rig];
    int begin = firstLoad(at, time, Math.max(0, warmAt[rig] - time));
    takeLoad(rig, at, begin);
  }

  /** The people found last load the job from {@code begin}; then its capture is known. */
  private void takeLoad(int rig, int at, int begin) {
    int end = begin + work[at + CompiledBatch.LOAD_SECONDS];
    int captureStart = Math.max(end, warmAt[rig]);
    int captureEnd = captureStart + work[at + CompiledBatch.CAPTURE_SECONDS];
    boolean attended = (work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_ATTENDED) != 0;
    int until = attended ? captureEnd : end;
    if (until > begin) {
      crew.take(until);
    }
    this.captureEnd[work[at + CompiledBatch.JOB]] = captureEnd;
    int late = captureEnd - work[at + CompiledBatch.DUE];
    if (late > 0) {
      lateWeighted += (long) late * work[at + CompiledBatch.WEIGHT];
      hard += (work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_MUST) == 0 ? 0 : late;
    }
    if (trace != null) {
      trace.load(work[at + CompiledBatch.JOB], begin, end, until > begin ? crew : null);
      trace.capture(work[at + CompiledBatch.JOB], warmAt[rig], captureStart, captureEnd);
    }
    phase[rig] = UNLOAD;
    ask(rig, captureEnd);
  }

  private void unload(int rig, int time) {
    int at = current[rig];
    int seconds = work[at + CompiledBatch.UNLOAD_SECONDS];
    int begin = time;
    if (seconds > 0) {
      boolean two = (work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_TWO_UNLOAD) != 0;
      begin = crew.ask(work[at + CompiledBatch.UNLOAD_MASK], two, time, seconds);
      crew.take(begin + seconds);
    }
    int end = begin + seconds;
    if (trace != null) {
      trace.unload(work[at + CompiledBatch.JOB], begin, end, seconds > 0 ? crew : null);
    }
    int kits = work[at + CompiledBatch.KIT_MASK];
    int sample = work[at + CompiledBatch.SAMPLE];
    if ((kits | (sample + 1)) != 0) {
      kit.giveBack(kits, sample, rig, end);
      wakeBlocked(end);
    }
    hard +=
        Math.max(0, end - work[at + CompiledBatch.LEAVE]) + Math.max(0, end - gate.closesAt(rig));
    hard += Math.max(0, end - batch.horizon);
    if ((work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_FITS) == 0) {
      hard += WRONG_RIG_SECONDS;
    }
    finishedAt = Math.max(finishedAt, end);
    freeAt[rig] = end;
    next(rig);
  }

  private void wakeBlocked(int time) {
    for (int other = 0; other < rigs; other++) {
      if (key[other] == BLOCKED) {
        int ready = Math.max(freeAt[other], work[current[other] + CompiledBatch.READY]);
        ask(other, Math.max(time, ready));
      }
    }
  }

  /** Shares all steps of a changeover in the order they are done: ring, kit, setup. */
  private void share(int rig, int at, boolean service, int kits) {
    hands.open();
    if (service) {
      hands.add(batch.ringSeconds[rig], 0, 1);
    }
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int one = Integer.numberOfTrailingZeros(rest);
      int from = kit.place(kit.chosen(rig, one));
      if (from != rig) {
        int seconds = batch.fetch[from * rigs + rig] + batch.kitAlign[one];
        hands.add(seconds, 0, batch.kitPeople[one]);
      }
    }
    int[] parts =
        tables[rig].parts(state[rig], work[at + CompiledBatch.REQUEST_AT] / SetupTable.STRIDE);
    for (int i = 0; i < parts.length; i += 3) {
      hands.add(parts[i], parts[i + 1], parts[i + 2]);
    }
  }

  /** The setup steps from a state on a rig. */
  List<ChangeoverStep> setupSteps(int rig, int fromState, int job) {
    return tables[rig].steps(fromState, batch.request[job]);
  }
}
