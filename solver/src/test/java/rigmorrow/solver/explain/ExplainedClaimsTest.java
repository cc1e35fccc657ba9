package rigmorrow.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.IfThen;
import rigmorrow.model.explain.LateChange;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** Every claim is made come true, by code that is not the explainer's, and must do what it says. */
class ExplainedClaimsTest {
  private static final int JOBS_PER_BATCH = 3;
  private static final int MOST_JOBS_TO_TRY_ALL = 14;

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void holdsWhatItSaysOfSenselessPlans(long seed) {
    Batch batch = RandomFloors.batch(seed);
    Random random = new Random(seed);
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences sequences = RandomSequences.of(compiled, random, 3);
    Plan plan = new Redone(batch).plan(ids(batch, compiled, sequences));
    checkSome(batch, plan, random);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void holdsWhatItSaysOfDispatchedPlans(long seed) {
    Batch batch =
        seed % 3 == 0 ? RandomFloors.twoRigs(seed, 1, 9) : RandomFloors.withPins(1000 + seed, 12);
    checkSome(batch, FloorSolver.dispatch(batch), new Random(seed));
  }

  private static Map<String, List<String>> ids(
      Batch batch, CompiledBatch compiled, Sequences sequences) {
    Map<String, List<String>> orders = new java.util.HashMap<>();
    for (int rig = 0; rig < batch.floor().rigs().size(); rig++) {
      orders.put(
          batch.floor().rigs().get(rig).id(),
          sequences.byRig().get(rig).stream().map(compiled::jobId).toList());
    }
    return orders;
  }

  private static void checkSome(Batch batch, Plan plan, Random random) {
    Explainer explainer = new Explainer(batch, plan);
    List<ShotJob> jobs = new ArrayList<>(batch.shotList().jobs());
    java.util.Collections.shuffle(jobs, random);
    for (ShotJob job : jobs.subList(0, Math.min(JOBS_PER_BATCH, jobs.size()))) {
      check(batch, plan, job, explainer.explain(job.id()));
    }
  }

  private static void check(Batch batch, Plan plan, ShotJob job, Explanation answer) {
    assertThat(answer.differing()).isEmpty();
    Redone.holds(answer.cost(), batch, plan);
    assertThat(plan.job(job.id()).isPresent())
        .isEqualTo(answer.status() == Explanation.Status.PLANNED);
    if (answer.times() != null) {
      Redone.holds(answer.times(), plan, job.id());
    }
    FitCheck fits = new FitCheck(batch.floor());
    List<RigFit> fit = fits.of(job).rigs();
    assertThat(answer.rigs())
        .extracting(RigAnswer::rig)
        .isEqualTo(fit.stream().map(RigFit::rig).toList());
    for (int i = 0; i < fit.size(); i++) {
      assertThat(answer.rigs().get(i).misfits()).isEqualTo(fit.get(i).reasons());
      checkRig(batch, plan, job, answer, answer.rigs().get(i));
    }
    for (IfThen one : answer.changes()) {
      checkChange(batch, plan, job, answer, one);
    }
  }

  private static void checkRig(
      Batch batch, Plan plan, ShotJob job, Explanation answer, RigAnswer rig) {
    Move best = rig.best();
    if (best == null) {
      return;
    }
    Batch then =
        rig.withoutItsPin()
            ? new Claim(batch, job.id()).of(Change.of(Change.Kind.NOT_PINNED, job.id()))
            : batch;
    Redone redone = new Redone(then);
    Map<String, List<String>> others = Redone.orders(plan);
    others.values().forEach(jobs -> jobs.remove(job.id()));
    Map<String, List<String>> moved = put(others, job.id(), rig.rig(), best.times().place());
    Plan after = redone.plan(moved);
    assertThat(best.times().rig()).isEqualTo(rig.rig());
    Redone.holds(best.times(), after, job.id());
    Redone.holds(best.cost(), batch, after);
    Sequences score = redone.score(moved);
    Sequences now = new Redone(batch).score(Redone.orders(plan));
    // A job that no order can have weighs the same in both.
    assertThat(best.standing())
        .isEqualTo(
            score.betterThan(now)
                ? Standing.BETTER
                : now.betterThan(score) ? Standing.WORSE : Standing.EQUAL);
    checkLateness(plan, after, job, best);
    List<Breach> before = PlanChecker.check(batch, plan);
    assertThat(best.breaches())
        .isEqualTo(
            PlanChecker.check(then, after).stream()
                .filter(one -> before.stream().noneMatch(was -> asBad(was, one)))
                .toList());
    if (batch.shotList().jobs().size() <= MOST_JOBS_TO_TRY_ALL) {
      nothingCheaper(batch, redone, others, job, answer, rig, score);
    }
  }

  private static boolean asBad(Breach was, Breach now) {
    return was.rule() == now.rule()
        && was.where().equals(now.where())
        && was.amount() >= now.amount();
  }

  private static void nothingCheaper(
      Batch batch,
      Redone redone,
      Map<String, List<String>> others,
      ShotJob job,
      Explanation answer,
      RigAnswer rig,
      Sequences best) {
    int tried = 0;
    int front = firstFree(batch, others.get(rig.rig()));
    for (int place = front; place <= others.get(rig.rig()).size(); place++) {
      boolean here =
          answer.times() != null
              && answer.times().rig().equals(rig.rig())
              && answer.times().place() == place;
      if (!here) {
        tried++;
        Sequences there = redone.score(put(others, job.id(), rig.rig(), place));
        assertThat(there.betterThan(best)).isFalse();
      }
    }
    assertThat(rig.placesTried()).isEqualTo(tried);
  }

  /** Place behind the last job of a rig that is running or done. */
  private static int firstFree(Batch batch, List<String> jobs) {
    int free = 0;
    for (Pin pin : batch.shotList().pins()) {
      if (pin.state() != PinState.PLANNED) {
        free = Math.max(free, jobs.indexOf(pin.job()) + 1);
      }
    }
    return free;
  }

  private static void checkLateness(Plan before, Plan after, ShotJob job, Move best) {
    List<LateChange> changes = new ArrayList<>();
    before.rigs().stream()
        .flatMap(rig -> rig.jobs().stream())
        .map(PlannedJob::job)
        .filter(one -> !one.equals(job.id()))
        .forEach(
            one -> {
              int was = before.job(one).orElseThrow().lateSeconds();
              int will = after.job(one).orElseThrow().lateSeconds();
              if (was != will) {
                changes.add(new LateChange(one, was, will));
              }
            });
    assertThat(best.lateChanges()).containsExactlyInAnyOrderElementsOf(changes);
  }

  private static void checkChange(
      Batch batch, Plan plan, ShotJob job, Explanation answer, IfThen one) {
    Change change = one.change();
    Map<String, List<String>> orders = Redone.orders(plan);
    switch (change.kind()) {
      case WITHOUT_JOB, INSTEAD_OF -> orders.values().forEach(ids -> ids.remove(change.subject()));
      case FIRST_ON_RIG -> {
        List<String> ids = orders.get(one.times().rig());
        ids.remove(job.id());
        ids.add(firstFree(batch, ids), job.id());
      }
      case ALONE -> {
        Set<String> stay = new HashSet<>();
        batch.shotList().pins().stream()
            .filter(pin -> pin.state() != PinState.PLANNED)
            .forEach(pin -> stay.add(pin.job()));
        stay.add(job.id());
        orders.values().forEach(ids -> ids.removeIf(id -> !stay.contains(id)));
      }
      default -> {}
    }
    if (answer.times() == null) {
      orders = put(orders, job.id(), one.times().rig(), one.times().place());
    }
    Batch changed = new Claim(batch, job.id()).of(change);
    Plan then = new Redone(changed).plan(orders);
    Redone.holds(one.times(), then, job.id());
    Redone.holds(one.cost(), changed, then);
    if (answer.times() != null) {
      assertThat(one.helps())
          .isEqualTo(one.times().captureEndSecond() < answer.times().captureEndSecond());
    } else {
      assertThat(one.helps()).isEqualTo(then.figures().hard() <= plan.figures().hard());
      if (change.seconds() > 0 && change.kind() != Change.Kind.LONGER_HOURS) {
        noLessWillDo(batch, plan, job, change);
      }
    }
  }

  /** With a second less no place keeps the rules that the plan keeps. */
  private static void noLessWillDo(Batch batch, Plan plan, ShotJob job, Change change) {
    Change less = new Change(change.kind(), change.subject(), change.seconds() - 1);
    Batch changed = new Claim(batch, job.id()).of(less);
    Redone redone = new Redone(changed);
    Map<String, List<String>> orders = Redone.orders(plan);
    for (RigFit fit : new FitCheck(batch.floor()).of(job).rigs()) {
      List<String> ids = orders.get(fit.rig());
      for (int place = firstFree(batch, ids); fit.fits() && place <= ids.size(); place++) {
        long hard = redone.score(put(orders, job.id(), fit.rig(), place)).hard();
        assertThat(hard).isGreaterThan(plan.figures().hard());
      }
    }
  }

  private static Map<String, List<String>> put(
      Map<String, List<String>> orders, String job, String rig, int place) {
    Map<String, List<String>> put = new java.util.HashMap<>();
    orders.forEach((id, jobs) -> put.put(id, new ArrayList<>(jobs)));
    put.get(rig).add(place, job);
    return put;
  }
}
