package rigmorrow.solver.search;

import java.util.SplittableRandom;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.RigWalk;

/**
 * Draws the changes that the search tries: one job or a whole run of one setup is put where it adds
 * the least setup, beside a job that goes well with it or anywhere, or changes places with another.
 * On a list of several days most jobs stand in the midst of a run and most places are days away: it
 * mostly starts from where something is set up and puts a job where it is in time. Often it starts
 * from a job that is late, or from the rig that ends last. Never proposes a job on a rig that
 * cannot take it and never touches what is running or done.
 */
final class ChangeDraw {
  private static final int PATIENCE = 1000;
  private static final int LONGEST_STRETCH = 4;

  /** One draw in so many starts from what is left out, from what is late, or from the last rig. */
  private static final int BACKLOG_ODDS = 8;

  private static final int CHEAPEST_PERCENT = 30;

  /** The same two where the end of the last rig is all that counts. */
  private static final int LAST_ODDS_FOR_THE_END = 2;

  private static final int CHEAPEST_PERCENT_FOR_THE_END = 60;
  private static final int RUNS_PERCENT = 50;

  /** The same where rigs close in between. */
  private static final int RUNS_PERCENT_FOR_DAYS = 75;

  private static final int MORE_RUNS = 2;
  private static final int LATE_ODDS = 4;
  private static final int LAST_ODDS = 4;

  /** One place in so many need not be in time where rigs close in between. */
  private static final int ANY_TIME_ODDS = 8;

  /** So many jobs with no setup before or after them are passed over, if need be, there. */
  private static final int SETTLED_PASSED = 4;

  private final CompiledBatch batch;
  private final Neighbours neighbours;
  private final WorkQueues queues;
  private final TroubleSpots troubles;
  private final RigWalk walk;
  private final SplittableRandom random;
  private final int backlog;
  private final int lastOdds;
  private final int cheapestPercent;
  private final boolean inTime;
  private final int runsPercent;
  private final int settledPassed;

  ChangeDraw(
      CompiledBatch batch,
      Neighbours neighbours,
      WorkQueues queues,
      TroubleSpots troubles,
      RigWalk walk,
      SplittableRandom random) {
    boolean end = batch.onlyFinishingCounts();
    this.lastOdds = end ? LAST_ODDS_FOR_THE_END : LAST_ODDS;
    this.cheapestPercent = end ? CHEAPEST_PERCENT_FOR_THE_END : CHEAPEST_PERCENT;
    this.inTime = batch.closesInBetween();
    this.runsPercent = inTime ? RUNS_PERCENT_FOR_DAYS : RUNS_PERCENT;
    this.settledPassed = inTime ? SETTLED_PASSED : 0;
    this.walk = walk;
    this.batch = batch;
    this.neighbours = neighbours;
    this.queues = queues;
    this.troubles = troubles;
    this.random = random;
    this.backlog = queues.backlog();
  }

  /** Draws a change; false when there seems to be none. */
  boolean draw(Change into) {
    if (batch.jobCount() == 0 || backlog == 0) {
      return false;
    }
    for (int tries = 0; tries < PATIENCE; tries++) {
      if (drawOnce(into)) {
        return true;
      }
    }
    return false;
  }

  private boolean drawOnce(Change into) {
    int job = start();
    int queue = queues.queueOf(job);
    int at = queues.placeOf(job);
    if (at < queues.frozen(queue)) {
      return false;
    }
    if (queue != backlog && random.nextInt(100) < runsPercent) {
      return runs(queue, at, into);
    }
    if (random.nextInt(100) < cheapestPercent) {
      return whereCheapest(queue, at, into);
    }
    int kind = random.nextInt(100);
    if (kind < 45) {
      return beside(queue, at, 1, into);
    }
    if (kind < 60) {
      return anywhere(queue, at, 1, into);
    }
    if (kind < 82) {
      return swap(queue, at, 1, 1, into);
    }
    int stretch = Math.min(2 + random.nextInt(LONGEST_STRETCH - 1), queues.length(queue) - at);
    return kind < 92
        ? anywhere(queue, at, stretch, into)
        : swap(queue, at, stretch, 1 + random.nextInt(LONGEST_STRETCH), into);
  }

  /** The job that a change starts from. */
  private int start() {
    int leftOut = queues.length(backlog);
    if (leftOut > 0 && random.nextInt(BACKLOG_ODDS) == 0) {
      return queues.jobs(backlog)[random.nextInt(leftOut)];
    }
    if (troubles.lateCount() > 0 && random.nextInt(LATE_ODDS) == 0) {
      int late = troubles.late(random.nextInt(troubles.lateCount()));
      // What runs before it may be the better thing to move.
      return random.nextBoolean()
          ? late
          : queues.jobs(queues.queueOf(late))[random.nextInt(queues.placeOf(late) + 1)];
    }
    if (troubles.lastRig() >= 0 && random.nextInt(lastOdds) == 0) {
      int rig = troubles.lastRig();
      return queues.jobs(rig)[random.nextInt(queues.length(rig))];
    }
    int job = random.nextInt(batch.jobCount());
    for (int passed = 0; passed < settledPassed && settled(job); passed++) {
      job = random.nextInt(batch.jobCount());
    }
    return job;
  }

  /** True in the midst of a run: nothing is set up right before the job or after it. */
  private boolean settled(int job) {
    int queue = queues.queueOf(job);
    return queue != backlog && walk.setupAround(queue, queues.placeOf(job)) == 0;
  }

  /** Puts jobs beside one that goes well with the first of them. */
  private boolean beside(int queue, int at, int count, Change into) {
    int job = queues.jobs(queue)[at];
    int near = neighbours.pick(job, random);
    return near != job
        && put(
            queue, at, count, queues.queueOf(near), queues.placeOf(near) + random.nextInt(2), into);
  }

  /** Puts a job where it adds the least setup on a rig that is drawn. */
  private boolean whereCheapest(int queue, int at, Change into) {
    int job = queues.jobs(queue)[at];
    int to = random.nextInt(backlog);
    int from = queues.frozen(to);
    int until = queues.length(to);
    if (inTime && random.nextInt(ANY_TIME_ODDS) != 0) {
      until = queues.firstCapturedAfter(to, batch.due(job));
      from = Math.max(from, Math.min(until, queues.firstCapturedAfter(to, batch.ready(job))));
    }
    return from <= until
        && fit(queue, at, 1, to)
        && put(queue, at, 1, to, walk.cheapestPlace(to, job, from, until, random), into);
  }

  private boolean anywhere(int queue, int at, int count, Change into) {
    int to = random.nextInt(backlog);
    return put(queue, at, count, to, random.nextInt(queues.length(to) + 1), into);
  }

  /** Moves or swaps whole runs: jobs that stand together and ask for the same setup. */
  private boolean runs(int queue, int at, Change into) {
    int first = queues.firstOfRun(queue, at);
    int end = queues.endOfRun(queue, at);
    int more = random.nextInt(MORE_RUNS);
    for (int i = 0; i < more && end < queues.length(queue); i++) {
      end = queues.endOfRun(queue, end);
    }
    int count = end - first;
    int kind = random.nextInt(4);
    if (kind == 0) {
      return beside(queue, first, count, into);
    }
    if (kind == 1) {
      return betweenRuns(queue, first, count, into);
    }
    int job = queues.jobs(queue)[first];
    int other = kind == 2 ? neighbours.pick(job, random) : random.nextInt(batch.jobCount());
    int otherQueue = queues.queueOf(other);
    int otherAt = queues.placeOf(other);
    if (otherQueue == backlog || otherAt < queues.frozen(otherQueue)) {
      return false;
    }
    int otherFirst = queues.firstOfRun(otherQueue, otherAt);
    return swap(
        queue,
        first,
        count,
        otherQueue,
        otherFirst,
        queues.endOfRun(otherQueue, otherAt) - otherFirst,
        into);
  }

  private boolean betweenRuns(int queue, int first, int count, Change into) {
    int to = random.nextInt(backlog);
    int length = queues.length(to);
    int target = length == 0 ? 0 : random.nextInt(length + 1);
    return put(
        queue, first, count, to, target == length ? target : queues.firstOfRun(to, target), into);
  }

  /**
   * @param target place counted with the jobs still in
   */
  private boolean put(int queue, int at, int count, int to, int target, Change into) {
    // Where what is running or done is not planned, a queue may be shorter than its frozen part.
    boolean place = target >= queues.frozen(to) && target <= queues.length(to);
    if (!place || !fit(queue, at, count, to) || !mayStand(queues.jobs(queue)[at], to, target)) {
      return false;
    }
    if (queue != to) {
      into.set(queue, at, count, to, target, 0);
      return true;
    }
    if (target >= at && target <= at + count) {
      return false;
    }
    // The jobs change places with those between here and there.
    if (target > at) {
      into.set(queue, at, count, queue, at + count, target - at - count);
    } else {
      into.set(queue, target, at - target, queue, at, count);
    }
    return queue != backlog;
  }

  private boolean swap(int queue, int at, int count, int mostOther, Change into) {
    int job = queues.jobs(queue)[at];
    int other =
        random.nextBoolean() ? neighbours.pick(job, random) : random.nextInt(batch.jobCount());
    int otherQueue = queues.queueOf(other);
    int otherAt = queues.placeOf(other);
    int otherCount = Math.min(mostOther, queues.length(otherQueue) - otherAt);
    return swap(queue, at, count, otherQueue, otherAt, otherCount, into);
  }

  private boolean swap(
      int queue, int at, int count, int otherQueue, int otherAt, int otherCount, Change into) {
    if (otherAt < queues.frozen(otherQueue)
        || !fit(queue, at, count, otherQueue)
        || !fit(otherQueue, otherAt, otherCount, queue)
        || !mayStand(queues.jobs(queue)[at], otherQueue, otherAt)
        || (otherCount > 0 && !mayStand(queues.jobs(otherQueue)[otherAt], queue, at))) {
      return false;
    }
    if (queue == otherQueue
        && (queue == backlog || (at < otherAt + otherCount && otherAt < at + count))) {
      return false;
    }
    into.set(queue, at, count, otherQueue, otherAt, otherCount);
    return true;
  }

  private boolean mayStand(int job, int queue, int place) {
    return !inTime || queues.inTime(job, queue, place) || random.nextInt(ANY_TIME_ODDS) == 0;
  }

  private boolean fit(int queue, int at, int count, int to) {
    if (to == queue) {
      return true;
    }
    int[] jobs = queues.jobs(queue);
    for (int i = at; i < at + count; i++) {
      if (to == backlog ? batch.pinnedRig(jobs[i]) >= 0 : !batch.fits(jobs[i], to)) {
        return false;
      }
    }
    return true;
  }
}
