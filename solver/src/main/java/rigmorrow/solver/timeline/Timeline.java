package rigmorrow.solver.timeline;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.setup.ChangeoverStep;

/**
 * The one decoder: from each rig's sequence to every start and end. A deterministic event
 * simulation in whole seconds; the only place that knows time.
 *
 * <p>A job runs changeover (attended), load and align (attended), capture (unattended unless its
 * recipe says otherwise), unload (attended). Requests for people are served first come, first
 * served: by the second of the request, then the job's weight, then rig order; each gets the
 * soonest start there is and keeps it. A job takes its kit, its sample and its first people
 * together or waits. A rig that kit is taken off for another one stands still meanwhile: the other
 * one waits until it is between two jobs, and it starts none until the piece has gone. A job does
 * not start where it could not end before its rig closes.
 *
 * <p>One instance serves one thread and any number of decodes; a decode allocates nothing once the
 * changeover rows it meets are known.
 */
public final class Timeline {
  /** A rig is between two jobs, or has no more. */
  static final int START = 0;

  private static final int LOAD = 1;
  private static final int UNLOAD = 2;

  private static final long IDLE = Long.MAX_VALUE;

  /** Waits for kit or a sample whose end is not known yet. */
  private static final long BLOCKED = Long.MAX_VALUE - 1;

  /** Waits for a rig to be between two jobs, so that kit can be taken off it. */
  private static final long AWAITS_RIG = BLOCKED - 1;

  private static final int TIME_SHIFT = 20;
  private static final int WEIGHT_SHIFT = 8;
  private static final int RIG_MASK = (1 << WEIGHT_SHIFT) - 1;
  private static final int HIGHEST_WEIGHT = 1000;

  /** Puts a request behind those that come first in their second; above every rank. */
  private static final int AFTER_THE_FIRST = 1 << (TIME_SHIFT - 2);

  /** A job on a rig that cannot take it breaks the plan as badly as a day's delay. */
  private static final long WRONG_RIG_SECONDS = 86_400;

  private final CompiledBatch batch;
  private final Moment now;
  private final CrewDesk crew;
  private final KitStore kit;
  private final RigGate gate;
  private final ChangeoverDesk changeovers;
  private final @Nullable Marks marks;
  private final int rigs;

  private final int[] work;

  private final int[][] sequence;
  private final int[] length;
  private final long[] key;
  private final int[] rank;
  private final int[] phase;
  private final int[] current;
  private final int[] place;
  private final int[] state;
  private final int[] turns;
  private final int[] warmAt;
  private final int[] freeAt;

  private @Nullable NextJob nextJob;
  private @Nullable Trace trace;

  /** Number of jobs done at which the next mark is set; 0 when none are. */
  private int nextMark;

  private boolean givenUp;

  private final JobTimes times;

  /**
   * @param batch to decode plans of
   */
  public Timeline(CompiledBatch batch) {
    this(batch, null);
  }

  /**
   * One that takes changes of what was kept up in the middle: {@link #keep}, {@link #decodeChange}.
   */
  public static Timeline forChanges(CompiledBatch batch) {
    return new Timeline(batch, new Marks(batch));
  }

  private Timeline(CompiledBatch batch, @Nullable Marks marks) {
    this.batch = batch;
    this.marks = marks;
    this.now = new Moment(batch);
    this.rigs = batch.rigCount();
    this.crew = new CrewDesk(batch, now);
    this.kit = new KitStore(batch, now);
    this.changeovers = new ChangeoverDesk(batch, kit);
    this.gate = new RigGate(batch, now);
    this.work = batch.work;
    this.sequence = new int[rigs][batch.jobCount()];
    this.length = new int[rigs];
    this.key = now.key;
    this.rank = now.rank;
    this.phase = now.phase;
    this.current = now.current;
    this.place = now.place;
    this.state = now.state;
    this.turns = now.turns;
    this.warmAt = now.warmAt;
    this.freeAt = now.freeAt;
    this.times = new JobTimes(batch);
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
    if (marks != null) {
      marks.open();
    }
    begin(null, null);
    run(null);
  }

  /**
   * Decodes sequences that are those that were kept last but for changes of one rig or two: what
   * comes before these is not decoded again. Only with {@link #forChanges}.
   *
   * @param rig that is changed; the number of rigs for the backlog
   * @param from its first place that may differ, a place behind the last one included
   * @param otherRig as {@code rig}, or the same
   * @param otherFrom as {@code from}
   * @param within what is good enough
   * @return false when it was given up; then the results mean nothing
   */
  public boolean decodeChange(int rig, int from, int otherRig, int otherFrom, Limit within) {
    Marks known = Objects.requireNonNull(marks);
    nextJob = null;
    trace = null;
    if (!known.open(rig, from, otherRig, otherFrom, now, times)) {
      begin(null, null);
    }
    return run(within);
  }

  /**
   * The sequences as they were just decoded are those that changes are changes of.
   *
   * @throws IllegalStateException when they were not decoded to the end with marks
   */
  public void keep() {
    if (nextMark == 0 || givenUp) {
      throw new IllegalStateException("no decode that came to its end");
    }
    Objects.requireNonNull(marks).keep(times);
  }

  /** Builds the sequences as it decodes, asking for the next job whenever a rig is free. */
  public void build(NextJob chooser) {
    for (int rig = 0; rig < rigs; rig++) {
      length[rig] = 0;
    }
    begin(chooser, null);
    run(null);
  }

  /** Decodes the sequences and remembers every time. */
  Trace trace() {
    Trace remembered = new Trace(batch.jobCount(), batch.kits.size());
    begin(null, remembered);
    run(null);
    return remembered;
  }

  /** What breaks hard rules, mostly seconds; 0 for a workable plan. */
  public long hard() {
    return now.hard;
  }

  /** Sum over jobs of weight times seconds after the promise. */
  public long lateWeighted() {
    return now.lateWeighted;
  }

  /** Hands-on changeover seconds of all rigs. */
  public long changeoverSeconds() {
    return now.changeoverSeconds;
  }

  /** Second at which the last job ends; 0 when there is none. */
  public int finishedAt() {
    return now.finishedAt;
  }

  /** Hands-on setup seconds if a job followed on a rig as it is now, without kit and ring. */
  public int setupSecondsNow(int rig, int job) {
    return changeovers.setupSeconds(rig, state[rig], job);
  }

  /** Hands-on setup seconds between two jobs that follow each other on a rig, from scratch. */
  public int setupSecondsBetween(int rig, int from, int to) {
    return changeovers.setupSecondsBetween(rig, from, to);
  }

  /** Second at which a job that was just decoded is captured. */
  public int captureEnd(int job) {
    return times.captureEnd[job];
  }

  /** Second at which a job is captured in the sequences that were kept last. */
  public int keptCaptureEnd(int job) {
    return Objects.requireNonNull(marks).times().captureEnd[job];
  }

  /** Second at which a job is off its rig in the sequences that were kept last. */
  public int keptEnd(int job) {
    return Objects.requireNonNull(marks).times().end[job];
  }

  /** Second at which a rig's last job ended; 0 when it had none. */
  public int endOf(int rig) {
    return freeAt[rig];
  }

  int[] row(int rig, int state, int request) {
    return changeovers.row(rig, state, request);
  }

  private void begin(@Nullable NextJob chooser, @Nullable Trace into) {
    nextJob = chooser;
    trace = into;
    now.open(batch);
    crew.open();
    gate.open();
    kit.open();
    for (int rig = 0; rig < rigs; rig++) {
      next(rig);
    }
  }

  /** Goes on from where it is; false when it was given up. */
  private boolean run(@Nullable Limit within) {
    givenUp = false;
    nextMark = marks == null || nextJob != null || trace != null ? 0 : marks.next();
    while (true) {
      // The rig's number is part of its key, so that the soonest is found without a branch.
      long soonest = key[0];
      for (int other = 1; other < rigs; other++) {
        soonest = Math.min(soonest, key[other]);
      }
      if (soonest >= AWAITS_RIG) {
        return true;
      }
      int time = (int) (soonest >> TIME_SHIFT);
      int rig = (int) soonest & RIG_MASK;
      switch (phase[rig]) {
        case START -> start(rig, time);
        case LOAD -> load(rig, time);
        default -> {
          unload(rig, time);
          if (within != null && within.passedBy(now, batch)) {
            givenUp = true;
            return false;
          }
          if (now.done == nextMark) {
            mark();
          }
        }
      }
    }
  }

  private void mark() {
    Marks mine = Objects.requireNonNull(marks);
    mine.put(now);
    nextMark = mine.next();
  }

  /** Puts the rig's next job before the desk, or sets the rig idle. */
  private void next(int rig) {
    int at = ++place[rig];
    phase[rig] = START;
    if (at >= length[rig] && !chooseNext(rig)) {
      key[rig] = IDLE;
      return;
    }
    int job = sequence[rig][at];
    int mine = (job * rigs + rig) * CompiledBatch.WORK_STRIDE;
    current[rig] = mine;
    rank[rig] = (HIGHEST_WEIGHT - work[mine + CompiledBatch.WEIGHT]) << WEIGHT_SHIFT | rig;
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
      now.hard += Math.abs(batch.pinPlace[job] - at);
    }
    if (batch.pinRig[job] >= 0 && batch.pinRig[job] != rig) {
      now.hard += WRONG_RIG_SECONDS;
    }
  }

  /** A request of the rig's current job: earlier first, then heavier, then rig order. */
  private void ask(int rig, int time) {
    key[rig] = (long) time << TIME_SHIFT | AFTER_THE_FIRST | rank[rig];
  }

  /**
   * A request that was there before the next job of the rig that it waits for: before all others.
   */
  private void askFirst(int rig, int time) {
    key[rig] = (long) time << TIME_SHIFT | rank[rig];
  }

  private void start(int rig, int time) {
    int at = current[rig];
    int kits = work[at + CompiledBatch.KIT_MASK];
    int sample = work[at + CompiledBatch.SAMPLE];
    if ((kits | (sample + 1)) != 0) {
      int free = kit.freeAt(kits, sample, rig);
      if (free > time) {
        if (trace != null) {
          trace.held(work[at + CompiledBatch.JOB], time, kits, sample, rig, kit);
        }
        boolean forRig = kit.waitsForARig(kits, rig, time);
        if (free == KitStore.HELD) {
          key[rig] = forRig ? AWAITS_RIG : BLOCKED;
          now.awaitsRig |= forRig;
        } else if (forRig) {
          askFirst(rig, free);
        } else {
          ask(rig, free);
        }
        return;
      }
    }
    changeovers.ask(rig, at, state[rig], turns[rig], kits, time);
    int attended = changeovers.attendedSeconds;
    int tail = changeovers.tailSeconds;
    int loadSeconds = work[at + CompiledBatch.LOAD_SECONDS];
    int rest =
        Math.max(loadSeconds, tail)
            + work[at + CompiledBatch.CAPTURE_SECONDS]
            + work[at + CompiledBatch.UNLOAD_SECONDS];
    int begin;
    if (attended > 0) {
      begin = crew.ask(changeovers.mask, changeovers.people == 2, time, attended);
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
    now.hard += Math.max(0, begin - work[at + CompiledBatch.PIN_START]);
    if (trace != null) {
      trace.start(
          work[at + CompiledBatch.JOB],
          state[rig],
          gate.closesAt(rig),
          changeovers.service,
          kits,
          rig,
          kit);
      trace.begin(work[at + CompiledBatch.JOB], time);
    }
    if ((kits | (sample + 1)) != 0) {
      keepStill(kits, rig, begin);
      kit.take(kits, sample, rig);
    }
    turns[rig] = (changeovers.service ? 0 : turns[rig]) + work[at + CompiledBatch.TURNS];
    state[rig] = changeovers.next;
    now.changeoverSeconds += attended;
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

  /** The rigs that kit is taken off start nothing until it has gone. */
  private void keepStill(int kits, int rig, int begin) {
    int until = begin;
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int one = Integer.numberOfTrailingZeros(rest);
      int from = kit.place(kit.chosen(rig, one));
      if (from == rig) {
        continue;
      }
      until += batch.fetch[from * rigs + rig];
      if (from < rigs) {
        standStill(from, until, 1 << one);
      }
      until += batch.kitAlign[one];
    }
  }

  private void standStill(int rig, int until, int kits) {
    now.stillUntil[rig] = Math.max(now.stillUntil[rig], until);
    if (key[rig] < AWAITS_RIG) {
      int asks = (int) (key[rig] >> TIME_SHIFT);
      if (asks < until) {
        if (trace != null) {
          trace.standsStill(work[current[rig] + CompiledBatch.JOB], asks, kits);
        }
        ask(rig, until);
      }
    }
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
    times.captureEnd[work[at + CompiledBatch.JOB]] = captureEnd;
    int late = captureEnd - work[at + CompiledBatch.DUE];
    if (late > 0) {
      now.lateWeighted += (long) late * work[at + CompiledBatch.WEIGHT];
      now.hard += (work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_MUST) == 0 ? 0 : late;
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
    }
    if ((kits | (sample + 1)) != 0 || now.awaitsRig) {
      wakeBlocked(end);
    }
    now.hard +=
        Math.max(0, end - work[at + CompiledBatch.LEAVE]) + Math.max(0, end - gate.closesAt(rig));
    now.hard += Math.max(0, end - batch.horizon);
    if ((work[at + CompiledBatch.FLAGS] & CompiledBatch.FLAG_FITS) == 0) {
      now.hard += WRONG_RIG_SECONDS;
    }
    now.finishedAt = Math.max(now.finishedAt, end);
    freeAt[rig] = end;
    times.end[work[at + CompiledBatch.JOB]] = end;
    now.done++;
    next(rig);
  }

  private void wakeBlocked(int time) {
    now.awaitsRig = false;
    for (int other = 0; other < rigs; other++) {
      if (key[other] >= AWAITS_RIG && key[other] < IDLE) {
        int soonest = Math.max(time, now.stillUntil[other]);
        if (key[other] == AWAITS_RIG) {
          askFirst(other, soonest);
        } else {
          ask(other, soonest);
        }
      }
    }
  }

  /** The setup steps from a state on a rig. */
  List<ChangeoverStep> setupSteps(int rig, int fromState, int job) {
    return changeovers.steps(rig, fromState, job);
  }
}
