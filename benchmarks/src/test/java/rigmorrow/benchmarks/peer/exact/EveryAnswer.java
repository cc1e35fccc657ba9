package rigmorrow.benchmarks.peer.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.work.JobWork;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.NextJob;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * Tries every sequence of every choice of jobs through the one decoder, or shows that what it does
 * not try is no better than the best it has.
 *
 * <p>The decoder asks for a rig's next job when the rig is free, in an order that only what was
 * chosen before decides. So every plan is one path of answers, a job or "nothing more on this rig",
 * and a beginning of a path says when each rig was asked and in which state it was. Below is what
 * no end of the path can undercut, where people, kit, ring and tails are taken as free:
 *
 * <ul>
 *   <li>A job begins no sooner than its rig was asked and it is ready; its setup, load, capture and
 *       unload follow each other, and its rig is not asked again before they are over.
 *   <li>A job that is not chosen yet begins no sooner than the first of the rigs that are not
 *       closed is asked, and takes no less setup than after any other job or at first, attributes
 *       that job leaves open counted as nothing. Where it would be late for a must or for its
 *       sample even so, it is left out or breaks a hard rule, and so it is if no rig is left.
 *   <li>Lateness, changeovers and finishing time so far only grow.
 * </ul>
 *
 * <p>This holds where nobody shares a changeover, since then its parts add up.
 *
 * <p>The solver's tests have {@code EveryPlan}, which puts jobs into queues and leaves nothing out:
 * shorter, but too slow for the days looked at here. The two share nothing but the decoder.
 */
final class EveryAnswer {
  private static final int STOP = -1;

  private final BatchFacts facts;
  private final CompiledBatch batch;
  private final Timeline timeline;
  private final Weights weights;
  private final int jobs;
  private final int rigs;
  private final boolean prune;
  private final int[][] toCapture;
  private final int[][] plain;
  private final int[] leastSetup;
  private final Path path = new Path();
  private final List<Integer> choices = new ArrayList<>();
  private Sequences best;
  private long decodes;

  /**
   * @param incumbent a plan to beat
   * @param prune false to try everything
   */
  EveryAnswer(CompiledBatch batch, Sequences incumbent, boolean prune) {
    this.facts = new BatchFacts(batch);
    this.batch = batch;
    this.timeline = new Timeline(batch);
    this.weights = facts.floor().weights();
    this.jobs = batch.jobCount();
    this.rigs = batch.rigCount();
    this.prune = prune;
    this.best = incumbent;
    this.toCapture = new int[jobs][rigs];
    this.plain = new int[jobs][rigs];
    this.leastSetup = new int[jobs];
    Arrays.fill(leastSetup, Integer.MAX_VALUE);
    List<SetupCosts> costs = SetupCosts.ofAll(facts);
    for (int rig = 0; rig < rigs; rig++) {
      if (facts.twoStepsAtOnce(rig)) {
        throw new IllegalArgumentException("a shared changeover does not add up");
      }
      for (int job = 0; job < jobs; job++) {
        if (batch.fits(job, rig)) {
          figures(job, rig, costs.get(rig));
        }
      }
    }
  }

  private void figures(int job, int rig, SetupCosts costs) {
    JobWork work = facts.work(job, rig);
    toCapture[job][rig] = work.load().seconds() + work.captureSeconds();
    plain[job][rig] = batch.plainSeconds(job, rig);
    leastSetup[job] = Math.min(leastSetup[job], costs.between(SetupCosts.INITIAL, job).seconds());
    for (int other = 0; other < jobs; other++) {
      if (other != job && batch.fits(other, rig)) {
        leastSetup[job] = Math.min(leastSetup[job], costs.between(other, job).seconds());
      }
    }
  }

  /** The best plan of all, or the incumbent when nothing is better. */
  Sequences best() {
    go();
    return best;
  }

  /** How many times the decoder ran. */
  long decodes() {
    return decodes;
  }

  /** Follows the choices made so far and tries every answer to the next question. */
  private void go() {
    decodes++;
    timeline.build(path.begin());
    if (path.askedRig == STOP) {
      // Nothing was asked beyond the choices: this is a whole plan.
      Sequences made = Sequences.of(batch, timeline);
      if (made.betterThan(best)) {
        best = made;
      }
      return;
    }
    int rig = path.askedRig;
    if (prune && hopeless()) {
      return;
    }
    boolean[] chosen = path.chosen.clone();
    for (int job = 0; job < jobs; job++) {
      if (!chosen[job] && batch.fits(job, rig)) {
        answer(job);
      }
    }
    answer(STOP);
  }

  private void answer(int choice) {
    choices.add(choice);
    go();
    choices.remove(choices.size() - 1);
  }

  private boolean hopeless() {
    long medium = 0;
    long late = path.late;
    long setup = path.setup;
    long finish = 0;
    for (int rig = 0; rig < rigs; rig++) {
      finish = Math.max(finish, path.free[rig]);
    }
    for (int job = 0; job < jobs; job++) {
      if (!path.chosen[job]) {
        long soonest = soonestCapture(job);
        boolean lost = soonest == Long.MAX_VALUE;
        lost |= !lost && facts.must(job) && soonest > batch.due(job);
        medium += lost ? batch.leftOutWeight(job) : 0;
        late += lost ? 0 : batch.weight(job) * Math.max(0, soonest - batch.due(job));
        setup += lost ? 0 : leastSetup[job];
        finish = lost ? finish : Math.max(finish, soonest);
      }
    }
    if (path.hard > best.hard() || medium > best.medium()) {
      return true;
    }
    long soft =
        Math.max(late, path.lateSoFar) * weights.latenessPerMinute()
            + Math.max(setup, path.changeoverSoFar) * weights.changeoverPerMinute()
            + Math.max(0, finish - facts.firstOpening()) * weights.finishingPerMinute();
    // Left out more than it must, a plan would be worse on the level that counts first.
    return medium == best.medium() && soft >= best.soft();
  }

  /** No later choice has the job's pictures sooner; the largest number when no rig is left. */
  private long soonestCapture(int job) {
    long soonest = Long.MAX_VALUE;
    for (int rig = 0; rig < rigs; rig++) {
      if (batch.fits(job, rig) && !path.closed[rig]) {
        long begin = Math.max(path.free[rig], Math.max(0, batch.ready(job)));
        if (begin + plain[job][rig] <= batch.latestEnd(job, rig)) {
          soonest = Math.min(soonest, begin + toCapture[job][rig]);
        }
      }
    }
    return soonest;
  }

  /** Answers with the choices made so far, and notes the first question beyond them. */
  private final class Path implements NextJob {
    private final boolean[] chosen = new boolean[64];
    private final boolean[] closed = new boolean[64];

    /** Seconds before which a rig is not asked again. */
    private final long[] free = new long[64];

    private int at;
    private int askedRig;
    private long late;
    private long setup;
    private long lateSoFar;
    private long changeoverSoFar;
    private long hard;

    Path begin() {
      Arrays.fill(chosen, false);
      Arrays.fill(closed, false);
      Arrays.fill(free, 0);
      at = 0;
      askedRig = STOP;
      late = 0;
      setup = 0;
      return this;
    }

    @Override
    public int choose(int rig, int time, Timeline decoding) {
      if (at < choices.size()) {
        int choice = choices.get(at++);
        if (choice == STOP) {
          closed[rig] = true;
          return NONE;
        }
        chosen[choice] = true;
        int seconds = decoding.setupSecondsNow(rig, choice);
        long begin = (long) Math.max(time, Math.max(0, batch.ready(choice))) + seconds;
        setup += seconds;
        late +=
            batch.weight(choice) * Math.max(0, begin + toCapture[choice][rig] - batch.due(choice));
        free[rig] = begin + plain[choice][rig];
        return choice;
      }
      if (askedRig == STOP) {
        askedRig = rig;
        free[rig] = time;
        lateSoFar = decoding.lateWeighted();
        changeoverSoFar = decoding.changeoverSeconds();
        hard = decoding.hard();
      }
      return NONE;
    }
  }
}
