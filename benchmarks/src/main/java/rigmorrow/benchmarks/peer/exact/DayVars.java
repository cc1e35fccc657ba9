package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.work.JobWork;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * The variables of every job: which rig it is on, and the seconds at which its parts begin and end.
 * Parts follow each other: changeover, load, capture, unload; between them the rig may wait.
 */
final class DayVars {
  final CpModel model = new CpModel();
  final BatchFacts facts;
  final CompiledBatch batch;
  final int jobs;
  final int rigs;

  /** False when every job must be planned. */
  final boolean mayLeaveOut;

  /** Start of the changeover, or of loading where there is none. */
  final IntVar[] start;

  /** Hands-on seconds of the changeover. */
  final IntVar[] changeover;

  final IntVar[] changeoverEnd;

  /** Kit moves and ring service, which come before the setup. */
  final IntVar[] before;

  final IntVar[] loadStart;
  final IntVar[] captureEnd;
  final IntVar[] unloadStart;
  final IntVar[] end;

  /** From start to end. */
  final IntVar[] whole;

  /** True when a job is on a rig; null where it does not fit. */
  final @Nullable Literal[][] on;

  /** True when a job is left out. */
  final Literal[] out;

  /** Jobs that fit a rig. */
  final List<List<Integer>> fitting = new ArrayList<>();

  DayVars(BatchFacts facts, boolean mayLeaveOut) {
    this.facts = facts;
    this.mayLeaveOut = mayLeaveOut;
    this.batch = facts.batch();
    this.jobs = batch.jobCount();
    this.rigs = batch.rigCount();
    this.start = times("start");
    this.changeover = times("changeover");
    this.changeoverEnd = times("changeoverEnd");
    this.before = times("before");
    this.loadStart = times("loadStart");
    this.captureEnd = times("captureEnd");
    this.unloadStart = times("unloadStart");
    this.end = times("end");
    this.whole = times("whole");
    this.on = new Literal[jobs][rigs];
    this.out = new Literal[jobs];
    for (int rig = 0; rig < rigs; rig++) {
      fitting.add(new ArrayList<>());
    }
    for (int job = 0; job < jobs; job++) {
      place(job);
      follow(job);
    }
  }

  private IntVar[] times(String name) {
    IntVar[] times = new IntVar[jobs];
    for (int job = 0; job < jobs; job++) {
      times[job] = model.newIntVar(0, facts.horizon(), name + job);
    }
    return times;
  }

  /** A job is on one rig or left out. */
  private void place(int job) {
    List<Literal> choices = new ArrayList<>();
    for (int rig = 0; rig < rigs; rig++) {
      if (batch.fits(job, rig)) {
        Literal here = model.newBoolVar("on" + job + "_" + rig);
        on[job][rig] = here;
        choices.add(here);
        fitting.get(rig).add(job);
      }
    }
    out[job] = model.newBoolVar("out" + job);
    choices.add(out[job]);
    model.addExactlyOne(choices);
    if (!mayLeaveOut || batch.pinnedRig(job) >= 0) {
      model.addEquality(out[job], 0);
    }
  }

  private void follow(int job) {
    model.addEquality(sum(start[job], changeover[job]), changeoverEnd[job]);
    model.addLessOrEqual(changeoverEnd[job], loadStart[job]);
    LinearArgument capture = seconds(job, JobWork::captureSeconds);
    LinearArgument load = seconds(job, work -> work.load().seconds());
    LinearArgument unload = seconds(job, work -> work.unload().seconds());
    model.addGreaterOrEqual(captureEnd[job], sum(loadStart[job], load, capture));
    model.addGreaterOrEqual(unloadStart[job], captureEnd[job]);
    model.addEquality(end[job], sum(unloadStart[job], unload));
    model.addEquality(sum(start[job], whole[job]), end[job]);
    for (int rig = 0; rig < rigs; rig++) {
      Literal here = on[job][rig];
      if (here != null) {
        within(job, here);
      }
    }
  }

  private void within(int job, Literal here) {
    model.addGreaterOrEqual(start[job], Math.max(0, batch.ready(job))).onlyEnforceIf(here);
    if (facts.leaves(job) < facts.horizon()) {
      model.addLessOrEqual(end[job], facts.leaves(job)).onlyEnforceIf(here);
    }
    if (facts.latestStart(job) < facts.horizon()) {
      model.addLessOrEqual(start[job], facts.latestStart(job)).onlyEnforceIf(here);
    }
    if (facts.must(job)) {
      model.addLessOrEqual(captureEnd[job], batch.due(job)).onlyEnforceIf(here);
    }
  }

  /** A figure that depends on the rig a job is on; 0 when the job is left out. */
  LinearArgument seconds(int job, ToIntFunction<JobWork> figure) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int rig = 0; rig < rigs; rig++) {
      Literal here = on[job][rig];
      if (here != null) {
        sum.addTerm(here, figure.applyAsInt(facts.work(job, rig)));
      }
    }
    return sum;
  }

  static LinearExprBuilder sum(LinearArgument... parts) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (LinearArgument part : parts) {
      sum.add(part);
    }
    return sum;
  }

  /** Hints at where and when the jobs of a plan are; the model's changeovers are never longer. */
  void hint(KnownPlan plan) {
    for (int job = 0; job < jobs; job++) {
      PlannedJob planned = plan.of(job);
      model.addHint(out[job], planned == null);
      for (int rig = 0; rig < rigs; rig++) {
        Literal here = on[job][rig];
        if (here != null) {
          model.addHint(here, plan.rig[job] == rig);
        }
      }
      if (planned == null) {
        for (IntVar[] time :
            List.of(start, changeoverEnd, loadStart, captureEnd, unloadStart, end, whole)) {
          model.addHint(time[job], 0);
        }
      } else {
        int begin = planned.whole().start();
        model.addHint(start[job], begin);
        model.addHint(loadStart[job], planned.load().span().start());
        model.addHint(captureEnd[job], planned.capture().end());
        model.addHint(unloadStart[job], planned.unload().span().start());
        model.addHint(end[job], planned.whole().end());
        model.addHint(whole[job], planned.whole().end() - begin);
      }
    }
  }
}
