package rigmorrow.solver.timeline;

/**
 * Moments of the decode that was kept last, one after each so many jobs, and those of the decode
 * that is tried now. A change leaves everything as it is until the decode asks for the first place
 * that it touches, so that a try is taken up at the last moment before.
 */
final class Marks {
  private static final int MARKS = 16;
  private static final int FEWEST_JOBS = 4;

  private final int jobsBetween;
  private final Moment[] kept;
  private final Moment[] tried;
  private final JobTimes keptTimes;
  private int keptCount;
  private int triedFrom;
  private int triedCount;

  Marks(CompiledBatch batch) {
    jobsBetween = Math.max(FEWEST_JOBS, batch.jobCount() / MARKS);
    int most = batch.jobCount() / jobsBetween;
    kept = new Moment[most];
    tried = new Moment[most];
    for (int i = 0; i < most; i++) {
      kept[i] = new Moment(batch);
      tried[i] = new Moment(batch);
    }
    keptTimes = new JobTimes(batch);
  }

  /** A decode is tried from nothing. */
  void open() {
    triedFrom = 0;
    triedCount = 0;
  }

  /**
   * A change is tried: the decode is set to the last moment that it leaves as it is.
   *
   * @return false when there is none and the decode has to begin with nothing
   */
  boolean open(int rig, int from, int otherRig, int otherFrom, Moment now, JobTimes times) {
    int mark = keptCount;
    while (mark > 0
        && (kept[mark - 1].place[rig] >= from || kept[mark - 1].place[otherRig] >= otherFrom)) {
      mark--;
    }
    triedFrom = mark;
    triedCount = mark;
    if (mark == 0) {
      return false;
    }
    now.copy(kept[mark - 1]);
    times.copy(keptTimes);
    return true;
  }

  /** When the jobs of the decode that was kept last are captured and off their rigs. */
  JobTimes times() {
    return keptTimes;
  }

  /** Number of jobs that are done when the next moment is remembered. */
  int next() {
    return (triedCount + 1) * jobsBetween;
  }

  /** Remembers a moment of the try. */
  void put(Moment now) {
    tried[triedCount++].copy(now);
  }

  /** What was tried is kept. */
  void keep(JobTimes times) {
    for (int mark = triedFrom; mark < triedCount; mark++) {
      Moment old = kept[mark];
      kept[mark] = tried[mark];
      tried[mark] = old;
    }
    keptCount = triedCount;
    keptTimes.copy(times);
  }
}
