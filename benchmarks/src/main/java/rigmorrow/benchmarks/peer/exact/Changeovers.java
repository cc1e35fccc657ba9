package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.work.JobWork;

/**
 * How long each changeover takes: the step between two jobs and the extra steps one after the
 * other. Where two people share a changeover it takes at least as long as each of these: how they
 * would share is left to the decoder, so the model is never slower than the decoder.
 */
final class Changeovers {
  private final DayVars day;
  private final CpModel model;
  private final List<List<Arc>> arcsTo = new ArrayList<>();
  private final List<List<Extra>> extrasOf = new ArrayList<>();

  Changeovers(DayVars day, RigRoutes routes, List<Extra> extras) {
    this.day = day;
    this.model = day.model;
    for (int job = 0; job < day.jobs; job++) {
      arcsTo.add(new ArrayList<>());
      extrasOf.add(new ArrayList<>());
    }
    routes.arcs.forEach(arc -> arcsTo.get(arc.to()).add(arc));
    extras.forEach(extra -> extrasOf.get(extra.job()).add(extra));
    for (int job = 0; job < day.jobs; job++) {
      handsOn(job);
      warm(job);
    }
  }

  /** Arcs that lead to a job. */
  List<Arc> arcsTo(int job) {
    return arcsTo.get(job);
  }

  /** Extra steps of a job. */
  List<Extra> extrasOf(int job) {
    return extrasOf.get(job);
  }

  private boolean shared(Extra extra) {
    return day.facts.twoStepsAtOnce(extra.rig());
  }

  private void handsOn(int job) {
    LinearExprBuilder seconds = LinearExpr.newBuilder();
    LinearExprBuilder first = LinearExpr.newBuilder();
    for (Arc arc : arcsTo(job)) {
      seconds.addTerm(arc.taken(), arc.cost().seconds());
    }
    boolean share = false;
    for (Extra extra : extrasOf(job)) {
      if (shared(extra)) {
        share = true;
        model.addGreaterOrEqual(day.changeover[job], extra.seconds()).onlyEnforceIf(extra.done());
      } else {
        seconds.addTerm(extra.done(), extra.seconds());
        if (extra.first()) {
          first.addTerm(extra.done(), extra.seconds());
        }
      }
    }
    if (share) {
      model.addGreaterOrEqual(day.changeover[job], seconds);
    } else {
      model.addEquality(day.changeover[job], seconds);
    }
    model.addEquality(day.before[job], first);
  }

  /** Capture begins when loading and warm-up are both over. */
  private void warm(int job) {
    LinearExprBuilder warm = DayVars.sum(day.start[job], day.before[job]);
    boolean any = false;
    for (Arc arc : arcsTo(job)) {
      if (arc.cost().warmSeconds() > arc.cost().seconds()) {
        warm.addTerm(arc.taken(), arc.cost().warmSeconds());
        any = true;
      }
    }
    if (any) {
      warm.add(day.seconds(job, JobWork::captureSeconds));
      model.addGreaterOrEqual(day.captureEnd[job], warm);
    }
    for (Extra extra : extrasOf(job)) {
      if (extra.warmSeconds() > extra.seconds()) {
        IntVar end = day.captureEnd[job];
        int after = extra.warmSeconds() + day.facts.work(job, extra.rig()).captureSeconds();
        model
            .addGreaterOrEqual(end, DayVars.sum(day.start[job], day.before[job]).add(after))
            .onlyEnforceIf(extra.done());
      }
    }
  }

  /** Hints at the seconds that each changeover takes in the model. */
  void hint(KnownPlan plan, Set<Literal> done) {
    for (int job = 0; job < day.jobs; job++) {
      int seconds = 0;
      int first = 0;
      int least = 0;
      for (Arc arc : arcsTo(job)) {
        seconds += RigRoutes.in(plan, arc) ? arc.cost().seconds() : 0;
      }
      for (Extra extra : extrasOf(job)) {
        boolean is = done.contains(extra.done());
        model.addHint(extra.done(), is);
        if (is && shared(extra)) {
          least = Math.max(least, extra.seconds());
        } else if (is) {
          seconds += extra.seconds();
          first += extra.first() ? extra.seconds() : 0;
        }
      }
      seconds = Math.max(seconds, least);
      model.addHint(day.changeover[job], seconds);
      model.addHint(day.before[job], first);
      if (plan.rig[job] != KnownPlan.NONE) {
        PlannedJob planned = Objects.requireNonNull(plan.of(job));
        model.addHint(day.changeoverEnd[job], planned.whole().start() + (long) seconds);
      }
    }
  }
}
