package rigmorrow.solver.timeline;

/**
 * The second clock of a {@link RigWalk}: on it each job waits as long as it did in the plan that
 * was kept last. A guess, no bound: who waits changes with every change. Sequences that are not
 * changed come to what they came to.
 */
final class WaitingClock {
  private final CompiledBatch batch;
  private final Timeline timeline;
  private final int[] work;

  /** Seconds that a job waited in all until it was captured, and from then until it was off. */
  private final int[] untilCaptured;

  private final int[] untilOff;

  /** Seconds more than it takes that a job needed before its rig closed, or it would have begun. */
  private final int[] moreRoom;

  /** For each rig, weighted seconds late before each place and after the last. */
  private final long[][] keptLate;

  private int freeAt;
  private int span;
  private long late;

  WaitingClock(CompiledBatch batch, Timeline timeline) {
    this.batch = batch;
    this.timeline = timeline;
    this.work = batch.work;
    this.untilCaptured = new int[batch.jobCount()];
    this.untilOff = new int[batch.jobCount()];
    this.moreRoom = new int[batch.jobCount()];
    this.keptLate = new long[batch.rigCount()][batch.jobCount() + 1];
  }

  /** Sets the clock to before a place of a rig, as it was kept. */
  void resume(int rig, int place) {
    freeAt = place == 0 ? 0 : timeline.keptEnd(timeline.sequence(rig)[place - 1]);
    span = 0;
    late = keptLate[rig][place];
  }

  /**
   * Goes on by one job.
   *
   * @param at where the work of the job on the rig begins
   * @param seconds that it takes without waiting
   * @param secondsUntilCaptured of these until it is captured
   */
  void step(int rig, int at, int seconds, int secondsUntilCaptured) {
    int job = work[at + CompiledBatch.JOB];
    int captured =
        start(rig, at, seconds + moreRoom[job]) + secondsUntilCaptured + untilCaptured[job];
    addLate(at, captured);
    freeAt = captured + work[at + CompiledBatch.UNLOAD_SECONDS] + untilOff[job];
  }

  /**
   * Reads from the plan that was kept how long a job waits, and goes on by it; from a rig's first
   * job to its last.
   */
  void keep(int rig, int place, int at, int seconds, int secondsUntilCaptured) {
    int job = work[at + CompiledBatch.JOB];
    int captured = timeline.keptCaptureEnd(job);
    int begin = start(rig, at, seconds);
    int room = 0;
    while (captured > closing(rig, begin)) {
      // Waiting pushed it over a closing: with so much to do it would not have fitted before.
      room = closing(rig, begin) - begin - seconds + 1;
      begin = start(rig, at, seconds + room);
    }
    moreRoom[job] = room;
    untilCaptured[job] = captured - begin - secondsUntilCaptured;
    freeAt = timeline.keptEnd(job);
    untilOff[job] = freeAt - captured - work[at + CompiledBatch.UNLOAD_SECONDS];
    addLate(at, captured);
    keptLate[rig][place + 1] = late;
  }

  /** Weight times seconds after the promise, summed. */
  long late() {
    return late;
  }

  /** The same of a rig in the plan that was kept last. */
  long keptLate(int rig) {
    return keptLate[rig][timeline.length(rig)];
  }

  private void addLate(int at, int captured) {
    int lateSeconds = captured - work[at + CompiledBatch.DUE];
    if (lateSeconds > 0) {
      late += (long) lateSeconds * work[at + CompiledBatch.WEIGHT];
    }
  }

  private int start(int rig, int at, int needed) {
    int[] spans = batch.rigHours[rig];
    int asked = Math.max(freeAt, work[at + CompiledBatch.READY]);
    span = Spans.of(spans, span, asked);
    return Math.max(asked, spans[Spans.openFor(spans, span, asked, needed)]);
  }

  private int closing(int rig, int second) {
    int[] spans = batch.rigHours[rig];
    return spans[Spans.of(spans, span, second) + 1];
  }
}
