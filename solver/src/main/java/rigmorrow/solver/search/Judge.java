package rigmorrow.solver.search;

import java.util.SplittableRandom;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Limit;
import rigmorrow.solver.timeline.RigWalk;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * Tries changes on the plan that the search stands at and keeps those that are allowed. Most are
 * turned down by walking the changed rigs alone; the rest are decoded, and only the decode lets a
 * change in.
 */
final class Judge {
  /**
   * A change that looks too bad only if everything else waits as it does now is decoded once in so
   * many times all the same.
   */
  private static final int DOUBT_ODDS = 16;

  /**
   * So is one that changes nothing if everything waits as it does now: where many jobs ask for the
   * same setup, that is what most changes do. Where changeovers do not count, all of them are
   * decoded: to be late less, jobs that are in time have to change places too.
   */
  private static final int NOTHING_ODDS = 16;

  private final CompiledBatch batch;
  private final Timeline timeline;
  private final WorkQueues queues;
  private final TroubleSpots troubles;
  private final SplittableRandom random;
  private final RigWalk walk;
  private final Walked now;
  private final Walked changed;
  private final Limit limit = new Limit();

  private long hard;
  private long medium;
  private long soft;
  private long pinsLeftOut;
  private long changeoverSeconds;
  private int finishedAt;

  private long decodes;
  private long judged;

  Judge(
      CompiledBatch batch,
      Timeline timeline,
      WorkQueues queues,
      TroubleSpots troubles,
      RigWalk walk,
      SplittableRandom random) {
    this.batch = batch;
    this.timeline = timeline;
    this.queues = queues;
    this.troubles = troubles;
    this.random = random;
    this.walk = walk;
    this.now = new Walked(batch.rigCount());
    this.changed = new Walked(batch.rigCount());
  }

  /** Stands at a plan from now on. */
  void standAt(Sequences plan) {
    queues.set(plan);
    timeline.decode();
    timeline.keep();
    decodes++;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      walk.keep(rig, 0);
      now.put(rig, walk);
    }
    walk.keepWaits();
    now.keepWaits(walk);
    pinsLeftOut = batch.pinnedAmong(plan.backlog());
    medium = plan.medium();
    takeOver(timeline.hard() + pinsLeftOut);
  }

  private void takeOver(long newHard) {
    hard = newHard;
    soft = batch.softSeconds(timeline);
    changeoverSeconds = timeline.changeoverSeconds();
    finishedAt = timeline.finishedAt();
    troubles.read();
  }

  /**
   * Keeps the change when it is allowed, else undoes it.
   *
   * @param allowance most soft seconds that may be lost; nothing hard or medium ever is
   */
  boolean keeps(Change change, long allowance) {
    judged++;
    long newMedium = medium + leftOutMore(change);
    long pinsMore = pinnedMore(change);
    long mostHard = newMedium > medium ? hard - 1 : hard;
    if (mostHard < 0) {
      return false;
    }
    queues.exchange(change);
    walkChanged(change);
    boolean free = newMedium < medium || hard > batch.excludedPins();
    long mostSoft =
        free ? Long.MAX_VALUE : soft + allowance + guide(now.ends) - guide(changed.ends);
    if (changed.hard > mostHard || !promising(mostSoft) || (!free && forNothing())) {
      queues.undo(change);
      return false;
    }
    decodes++;
    long pins = pinsLeftOut + pinsMore;
    limit.set(mostHard - pins, mostSoft, changed.setupSeconds, changed.lastEnd);
    boolean kept =
        timeline.decodeChange(change.left, change.leftAt, change.right, change.rightAt, limit)
            && allowed(timeline.hard() + pins, newMedium, soft + allowance);
    if (!kept) {
      queues.undo(change);
      return false;
    }
    timeline.keep();
    medium = newMedium;
    pinsLeftOut += pinsMore;
    keepWalks(change);
    takeOver(timeline.hard() + pins);
    return true;
  }

  private boolean allowed(long newHard, long newMedium, long mostSoft) {
    if (newHard != hard) {
      return newHard < hard;
    }
    if (newMedium != medium) {
      return newMedium < medium;
    }
    return batch.softSeconds(timeline) + guide(changed.ends) - guide(now.ends) <= mostSoft;
  }

  /** What a change would lose, decoded in full; negative when it wins. Undoes it. */
  long lossOf(Change change) {
    queues.exchange(change);
    walkChanged(change);
    timeline.decode();
    decodes++;
    boolean broken = timeline.hard() + pinsLeftOut > hard;
    long loss = batch.softSeconds(timeline) - soft + guide(changed.ends) - guide(now.ends);
    queues.undo(change);
    return broken || leftOutMore(change) != 0 ? 0 : loss;
  }

  private boolean promising(long mostSoft) {
    if (mostSoft == Long.MAX_VALUE) {
      return true;
    }
    if (batch.softSeconds(changed.lateWeighted, changed.setupSeconds, changed.lastEnd) > mostSoft) {
      return false;
    }
    long guess =
        batch.softSeconds(
            changed.lateWeightedWaiting,
            changed.setupSeconds + changeoverSeconds - now.setupSeconds,
            changed.lastEnd + finishedAt - now.lastEnd);
    return guess <= mostSoft || random.nextInt(DOUBT_ODDS) == 0;
  }

  private boolean forNothing() {
    return batch.changeoversCount()
        && changed.setupSeconds == now.setupSeconds
        && changed.lateWeightedWaiting == now.lateWeightedWaiting
        && changed.lastEnd >= now.lastEnd
        && random.nextInt(NOTHING_ODDS) != 0;
  }

  private void walkChanged(Change change) {
    changed.copy(now);
    if (change.left != queues.backlog()) {
      walk.walk(change.left, change.leftAt);
      changed.put(change.left, walk);
    }
    if (change.right != change.left && change.right != queues.backlog()) {
      walk.walk(change.right, change.rightAt);
      changed.put(change.right, walk);
    }
  }

  private void keepWalks(Change change) {
    queues.settle(change);
    if (change.left != queues.backlog()) {
      walk.keep(change.left, change.leftAt);
    }
    if (change.right != change.left && change.right != queues.backlog()) {
      walk.keep(change.right, change.rightAt);
    }
    walk.keepWaits();
    now.copy(changed);
    now.keepWaits(walk);
  }

  /**
   * Where only the last rig's end counts, most changes come to the same; the mean of all rigs' ends
   * then says which way to go.
   */
  private long guide(long ends) {
    return batch.onlyFinishingCounts() ? ends * batch.finishingPerMinute() / batch.rigCount() : 0;
  }

  /** By how much the change raises the points for what is left out. */
  private long leftOutMore(Change change) {
    if (change.right == queues.backlog() && change.left != change.right) {
      return leftOutWeight(change.left, change.leftAt, change.leftCount)
          - leftOutWeight(change.right, change.rightAt, change.rightCount);
    }
    if (change.left == queues.backlog() && change.left != change.right) {
      return leftOutWeight(change.right, change.rightAt, change.rightCount)
          - leftOutWeight(change.left, change.leftAt, change.leftCount);
    }
    return 0;
  }

  private long leftOutWeight(int queue, int at, int count) {
    int[] jobs = queues.jobs(queue);
    long sum = 0;
    for (int i = at; i < at + count; i++) {
      sum += batch.leftOutWeight(jobs[i]);
    }
    return sum;
  }

  /** Pinned jobs only ever leave the backlog. */
  private long pinnedMore(Change change) {
    if (pinsLeftOut == 0) {
      return 0;
    }
    return change.left == queues.backlog()
        ? -pinned(change.leftAt, change.leftCount)
        : change.right == queues.backlog() ? -pinned(change.rightAt, change.rightCount) : 0;
  }

  private long pinned(int at, int count) {
    int[] jobs = queues.jobs(queues.backlog());
    long sum = 0;
    for (int i = at; i < at + count; i++) {
      sum += batch.pinnedRig(jobs[i]) >= 0 ? 1 : 0;
    }
    return sum;
  }

  /** True when the plan that the search stands at is strictly better. */
  boolean betterThan(Sequences other) {
    if (hard != other.hard()) {
      return hard < other.hard();
    }
    return medium != other.medium() ? medium < other.medium() : soft < other.soft();
  }

  /** The plan that the search stands at. */
  Sequences plan() {
    return queues.sequences(hard, medium, soft);
  }

  /** Number of decodes so far. */
  long decodes() {
    return decodes;
  }

  /** Number of changes judged so far. */
  long judged() {
    return judged;
  }
}
