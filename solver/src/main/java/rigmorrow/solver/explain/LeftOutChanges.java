package rigmorrow.solver.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Change.Kind;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.IfThen;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.hand.Places;
import rigmorrow.solver.hand.Timed;
import rigmorrow.solver.hand.Trial;
import rigmorrow.solver.timeline.Sequences;

/** What would make room for a job that is left out, each thing by itself. */
final class LeftOutChanges {
  private final Question question;
  private final String job;
  private final List<IfThen> answers = new ArrayList<>();

  LeftOutChanges(Question question) {
    this.question = question;
    this.job = question.job().id();
  }

  /** Those that help first, the cheapest first; the others in the order they were tried. */
  List<IfThen> all() {
    ShotJob shot = question.job();
    if (shot.must()) {
      later(Kind.PROMISE_LATER);
    }
    if (shot.leavesAt() != null) {
      later(Kind.COLLECTION_LATER);
    }
    if (shot.arrivesAt() != null) {
      bestPlace(Change.of(Kind.SAMPLE_THERE, job));
    }
    boolean shared =
        question.batch().shotList().jobs().stream()
            .anyMatch(one -> !one.id().equals(job) && one.sample().equals(shot.sample()));
    if (shared) {
      bestPlace(Change.of(Kind.SAMPLE_NOT_SHARED, job));
    }
    if (question.pin() != null && !question.fixed().contains(job)) {
      bestPlace(Change.of(Kind.NOT_PINNED, job));
    }
    Set<String> kits = new HashSet<>();
    Set<String> rigs = new HashSet<>();
    for (int rig = 0; rig < question.batch().floor().rigs().size(); rig++) {
      if (question.trial().takes(rig, job)) {
        Rig one = question.batch().floor().rigs().get(rig);
        kits.addAll(question.facts().work(shot, one).kits());
        rigs.add(one.id());
      }
    }
    FloorChanges.of(question, kits, rigs, 3600, 7200, 14_400).forEach(this::bestPlace);
    instead();
    answers.sort(
        Comparator.comparing((IfThen one) -> !one.helps())
            .thenComparing(one -> one.helps() ? one.cost() : question.now().cost(), Cost.CHEAPEST));
    return answers;
  }

  private void bestPlace(Change change) {
    boolean enough =
        change.kind() == Kind.LONGER_HOURS
            && answers.stream()
                .anyMatch(one -> one.helps() && one.change().kind() == Kind.LONGER_HOURS);
    if (!enough) {
      Trial trial = question.with(change);
      answer(
          change,
          trial,
          new Places(trial, question.orders(), job, question.fixed()).everywhere().best());
    }
  }

  /**
   * By how much a promise or a collection would have to be later: what a place breaks without the
   * rule and what it breaks with it differ by just that.
   */
  private void later(Kind kind) {
    Trial forgiving = question.on(new ChangedBatch(question.batch(), job).forgiving(kind));
    long allowed = question.now().cost().hard();
    Orders best = null;
    Sequences bestScore = null;
    long least = Long.MAX_VALUE;
    for (int rig = 0; rig < question.batch().floor().rigs().size(); rig++) {
      if (!question.trial().takes(rig, job)) {
        continue;
      }
      int length = question.orders().length(rig);
      for (int place = question.orders().firstFree(rig, question.fixed());
          place <= length;
          place++) {
        Orders there = question.orders().with(rig, place, job);
        Sequences score = forgiving.score(there);
        if (score.hard() <= allowed) {
          long amount = question.trial().score(there).hard() - score.hard();
          if (amount < least
              || (amount == least && bestScore != null && score.betterThan(bestScore))) {
            least = amount;
            best = there;
            bestScore = score;
          }
        }
      }
    }
    if (best != null && least > 0 && least < Integer.MAX_VALUE / 4) {
      Change change = new Change(kind, job, (int) least);
      answer(change, question.with(change), best);
    }
  }

  /** Takes the place of each other job in turn. */
  private void instead() {
    Orders best = null;
    Sequences bestScore = null;
    String bestOut = "";
    for (int rig = 0; rig < question.orders().byRig().size(); rig++) {
      for (String out : question.orders().byRig().get(rig)) {
        if (question.trial().takes(rig, job) && question.pin(out) == null) {
          Orders swapped = question.orders().insteadOf(out, job);
          Sequences score = question.trial().score(swapped);
          if (bestScore == null || score.betterThan(bestScore)) {
            best = swapped;
            bestScore = score;
            bestOut = out;
          }
        }
      }
    }
    answer(Change.of(Kind.INSTEAD_OF, bestOut), question.trial(), best);
  }

  private void answer(Change change, Trial trial, @Nullable Orders orders) {
    if (orders != null) {
      Timed then = trial.decode(orders);
      boolean helps = then.cost().hard() <= question.now().cost().hard();
      answers.add(new IfThen(change, helps, then.times(job), then.cost()));
    }
  }
}
