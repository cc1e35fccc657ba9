package rigmorrow.solver.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.LateChange;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.hand.Places;
import rigmorrow.solver.hand.Timed;
import rigmorrow.solver.hand.Trial;

/** What each rig is for a job, every place on it decoded. */
final class RigAnswers {
  private final Question question;
  private final Orders others;
  private final int here;
  private final int place;

  RigAnswers(Question question) {
    this.question = question;
    this.others = question.orders().without(question.job().id());
    this.here = question.orders().rigOf(question.job().id());
    this.place = here < 0 ? -1 : question.orders().byRig().get(here).indexOf(question.job().id());
  }

  /** In floor order; empty for a job that needs measuring. */
  List<RigAnswer> all() {
    List<RigAnswer> answers = new ArrayList<>();
    List<Rig> rigs = question.batch().floor().rigs();
    for (RigFit fit : question.fit().rigs()) {
      int rig = rigs.stream().map(Rig::id).toList().indexOf(fit.rig());
      answers.add(answer(rig, fit));
    }
    return answers;
  }

  private RigAnswer answer(int rig, RigFit fit) {
    Trial base = question.trial();
    int longest = base.longestOpenSeconds(rig);
    if (!fit.fits()) {
      RigAnswer.Kind kind = RigAnswer.Kind.MISFIT;
      return new RigAnswer(fit.rig(), kind, fit.reasons(), 0, longest, false, 0, null);
    }
    String job = question.job().id();
    int needed = base.neededSeconds(rig, job);
    Pin pin = question.pin();
    if (question.fixed().contains(job)) {
      RigAnswer.Kind kind = rig == here ? RigAnswer.Kind.HERE : RigAnswer.Kind.FIXED;
      return new RigAnswer(fit.rig(), kind, List.of(), needed, longest, false, 0, null);
    }
    boolean elsewhere = pin != null && !pin.rig().equals(fit.rig());
    Trial trial = elsewhere ? question.unpinned() : base;
    if (rig != here && !trial.takes(rig, job)) {
      RigAnswer.Kind kind = RigAnswer.Kind.TOO_LONG;
      return new RigAnswer(fit.rig(), kind, List.of(), needed, longest, elsewhere, 0, null);
    }
    RigAnswer.Kind kind = rig == here ? RigAnswer.Kind.HERE : RigAnswer.Kind.POSSIBLE;
    Places places =
        new Places(trial, others, job, question.fixed()).onExcept(rig, rig == here ? place : -1);
    Move best = places.best() == null ? null : move(trial, places.best());
    return new RigAnswer(
        fit.rig(), kind, List.of(), needed, longest, elsewhere, places.tried(), best);
  }

  /** What orders with the job elsewhere come to, held against the plan. */
  Move move(Trial trial, Orders orders) {
    Timed now = question.now();
    Timed then = trial.decode(orders);
    String job = question.job().id();
    return new Move(
        then.times(job),
        then.cost(),
        then.cost().against(now.cost()),
        lateChanges(now, then, job),
        then.cost().hard() == 0 ? List.of() : newBreaches(now, trial, then));
  }

  private static List<LateChange> lateChanges(Timed now, Timed then, String job) {
    Map<String, Integer> before = late(now);
    List<LateChange> changes = new ArrayList<>();
    late(then)
        .forEach(
            (one, after) -> {
              int was = before.getOrDefault(one, after);
              if (was != after && !one.equals(job)) {
                changes.add(new LateChange(one, was, after));
              }
            });
    changes.sort(
        Comparator.comparingInt(
                (LateChange one) -> -Math.abs(one.afterSeconds() - one.beforeSeconds()))
            .thenComparing(LateChange::job));
    return changes;
  }

  private static Map<String, Integer> late(Timed decoded) {
    Map<String, Integer> late = new HashMap<>();
    for (RigPlan rig : decoded.plan().rigs()) {
      for (PlannedJob one : rig.jobs()) {
        late.put(one.job(), one.lateSeconds());
      }
    }
    return late;
  }

  private List<Breach> newBreaches(Timed now, Trial trial, Timed then) {
    List<Breach> old =
        now.cost().hard() == 0
            ? List.of()
            : PlanChecker.check(question.trial().batch(), now.plan());
    return PlanChecker.check(trial.batch(), then.plan()).stream()
        .filter(breach -> amount(old, breach) < breach.amount())
        .toList();
  }

  private static long amount(List<Breach> old, Breach like) {
    return old.stream()
        .filter(one -> one.rule() == like.rule() && one.where().equals(like.where()))
        .mapToLong(Breach::amount)
        .max()
        .orElse(0);
  }

  /**
   * Of the cheapest places on each rig, the one that makes the plan better; else the cheapest at
   * which the job is less late and no more rules are broken. Null when none is that needs no pin
   * lifted; a dearer place might be less late all the same.
   */
  static @Nullable Move helpful(List<RigAnswer> answers, Timed now, String job) {
    Move cheapest = cheapest(answers);
    if (cheapest == null || cheapest.standing() == Standing.BETTER) {
      return cheapest;
    }
    int late = now.times(job).lateSeconds();
    return answers.stream()
        .filter(answer -> !answer.withoutItsPin())
        .map(RigAnswer::best)
        .filter(java.util.Objects::nonNull)
        .filter(move -> move.times().lateSeconds() < late)
        .filter(move -> move.cost().hard() <= now.cost().hard())
        .min(Comparator.comparing(Move::cost, Cost.CHEAPEST))
        .orElse(null);
  }

  /** The best place of all rigs that need no pin lifted; null when there is none. */
  static @Nullable Move cheapest(List<RigAnswer> answers) {
    return answers.stream()
        .filter(answer -> !answer.withoutItsPin())
        .map(RigAnswer::best)
        .filter(java.util.Objects::nonNull)
        .min(Comparator.comparing(Move::cost, Cost.CHEAPEST))
        .orElse(null);
  }
}
