package rigmorrow.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Change.Kind;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Explanation.Status;
import rigmorrow.model.explain.IfThen;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.Span;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.fixture.RandomFloors;

/** Answers on the fixture floor, worked out by hand. */
class ExplainerTest {
  static LongStream seeds() {
    return LongStream.range(300, 330);
  }

  @Test
  void tellsTheCostOfEveryOtherRigOfOneJob() {
    Batch batch = batch(new JobBuilder("only").build());

    Explanation answer = explain(batch, "only");

    assertThat(answer.status()).isEqualTo(Status.PLANNED);
    assertThat(answer.times().rig()).isEqualTo("table");
    assertThat(answer.before()).isNull();
    assertThat(answer.after()).isNull();
    assertThat(answer.rigs().get(0).kind()).isEqualTo(RigAnswer.Kind.HERE);
    assertThat(answer.rigs().get(0).best()).isNull();
    RigAnswer platform = answer.rigs().get(1);
    assertThat(platform.kind()).isEqualTo(RigAnswer.Kind.POSSIBLE);
    assertThat(platform.placesTried()).isEqualTo(1);
    // 500 s of capture instead of 600 s: done 100 s sooner, at a point a minute.
    assertThat(platform.best().standing()).isEqualTo(Standing.BETTER);
    assertThat(answer.cost().softSixtieths() - platform.best().cost().softSixtieths())
        .isEqualTo(100);
  }

  @Test
  void waitsForPeopleBeforeTheirShift() {
    Explanation answer = explain(batch(new JobBuilder("only").build()), "only");

    assertThat(answer.waits())
        .containsExactly(new Wait(Wait.Reason.CREW_TO_START, new Span(0, 7 * 3600 + 1800)));
  }

  @Test
  void namesTheArrivalAsWhatStandsInTheWay() {
    Batch batch =
        batch(
            new JobBuilder("late")
                .arrivesAt(FloorFixtures.MONDAY.atTime(10, 0))
                .shouldBy(FloorFixtures.MONDAY.atTime(9, 0))
                .build());

    Explanation answer = explain(batch, "late");

    assertThat(answer.times().lateSeconds()).isEqualTo(3600 + 150 + 600);
    IfThen there = change(answer, Kind.SAMPLE_THERE);
    assertThat(there.helps()).isTrue();
    assertThat(there.times().lateSeconds()).isZero();
    assertThat(there.times().captureEndSecond()).isEqualTo(7 * 3600 + 1800 + 150 + 600);
    assertThat(change(answer, Kind.ALONE).helps()).isFalse();
  }

  @Test
  void saysThatAJobNeedsMeasuring() {
    Batch batch = batch(new JobBuilder("unknown").item(new ItemBuilder().massKg(null)).build());

    Explanation answer = explain(batch, "unknown");

    assertThat(answer.status()).isEqualTo(Status.NEEDS_MEASURING);
    assertThat(answer.unmeasured()).containsExactly("massKg");
    assertThat(answer.rigs()).isEmpty();
    assertThat(answer.changes()).isEmpty();
  }

  @Test
  void saysWhyNoRigTakesAJob() {
    Batch batch =
        batch(new JobBuilder("vast").item(new ItemBuilder().size(3000, 2500, 900)).build());

    Explanation answer = explain(batch, "vast");

    assertThat(answer.status()).isEqualTo(Status.FITS_NO_RIG);
    assertThat(answer.rigs()).extracting(RigAnswer::kind).containsOnly(RigAnswer.Kind.MISFIT);
    assertThat(answer.rigs()).allSatisfy(rig -> assertThat(rig.misfits()).isNotEmpty());
    assertThat(answer.changes()).isEmpty();
  }

  @Test
  void findsByHowMuchAPromiseWouldHaveToBeLater() {
    // Soonest pictures: 07:30 and 150 s to load and 500 s, so 10 min 50 s later than promised.
    Batch batch = batch(new JobBuilder("hurry").mustBy(FloorFixtures.MONDAY.atTime(7, 30)).build());

    Explanation answer = explain(batch, "hurry");

    assertThat(answer.status()).isEqualTo(Status.LEFT_OUT);
    RigAnswer platform = answer.rigs().get(1);
    assertThat(platform.best().cost().hard()).isEqualTo(650);
    assertThat(platform.best().breaches()).singleElement().extracting("amount").isEqualTo(650L);
    IfThen later = change(answer, Kind.PROMISE_LATER);
    assertThat(later.change().seconds()).isEqualTo(650);
    assertThat(later.helps()).isTrue();
    assertThat(later.cost().hard()).isZero();
  }

  @Test
  void admitsThatThereWasRoomForAJob() {
    Batch batch = batch(new JobBuilder("forgotten").build());
    Plan plan = FloorSolver.dispatch(batch);
    Plan without =
        changed(
            plan,
            plan.rigs().stream().map(rig -> new RigPlan(rig.rig(), List.of())).toList(),
            List.of(new LeftOut("forgotten", LeftOut.Cause.NO_ROOM, List.of("No."))));

    Explanation answer = new Explainer(batch, without).explain("forgotten");

    assertThat(answer.status()).isEqualTo(Status.LEFT_OUT);
    assertThat(answer.rigs())
        .extracting(RigAnswer::best)
        .extracting(Move::standing)
        .containsOnly(Standing.BETTER);
    assertThat(answer.changes()).isEmpty();
  }

  @Test
  void triesOtherRigsWithoutThePinAndSaysSo() {
    Batch batch = pinned(PinState.PLANNED);

    Explanation answer = explain(batch, "held");

    assertThat(answer.times().rig()).isEqualTo("table");
    RigAnswer platform = answer.rigs().get(1);
    assertThat(platform.withoutItsPin()).isTrue();
    assertThat(platform.best().standing()).isEqualTo(Standing.BETTER);
    assertThat(answer.rigs().get(0).withoutItsPin()).isFalse();
  }

  @Test
  void movesNothingThatRuns() {
    Batch batch = pinned(PinState.RUNNING);

    Explanation answer = explain(batch, "held");

    assertThat(answer.rigs())
        .extracting(RigAnswer::kind)
        .containsExactly(RigAnswer.Kind.HERE, RigAnswer.Kind.FIXED);
    assertThat(answer.rigs()).allSatisfy(rig -> assertThat(rig.placesTried()).isZero());
  }

  @Test
  void saysWhichTimesOfAnEditedPlanAreNotTheDecoders() {
    Batch batch = batch(new JobBuilder("only").build());
    Plan plan = FloorSolver.dispatch(batch);
    PlannedJob old = plan.job("only").orElseThrow();
    PlannedJob edited =
        new PlannedJob(
            old.job(),
            old.steps(),
            old.changeover(),
            old.warmedUpAt(),
            old.load(),
            new Span(old.capture().start() + 60, old.capture().end() + 60),
            old.captureOperators(),
            old.unload(),
            old.kit(),
            old.lateSeconds());
    List<RigPlan> rigs =
        plan.rigs().stream()
            .map(rig -> new RigPlan(rig.rig(), rig.jobs().isEmpty() ? List.of() : List.of(edited)))
            .toList();

    Explanation answer = new Explainer(batch, changed(plan, rigs, plan.leftOut())).explain("only");

    assertThat(answer.differing()).containsExactly("only");
    assertThat(answer.times().captureEndSecond()).isEqualTo(old.capture().end());
  }

  @Test
  void refusesAPlanOfAnotherBatch() {
    Batch batch = batch(new JobBuilder("mine").build());
    Batch other = batch(new JobBuilder("theirs").build());
    Batch more = batch(new JobBuilder("mine").build(), new JobBuilder("also mine").build());
    Plan plan = FloorSolver.dispatch(batch);

    assertThatThrownBy(() -> new Explainer(other, plan))
        .hasMessage("plan has jobs that the shot list has not: mine");
    assertThatThrownBy(() -> new Explainer(more, plan))
        .hasMessage("plan neither does nor leaves out jobs of the shot list: also mine");
    ShotList tomorrow =
        new ShotList(FloorFixtures.MONDAY.plusDays(1), 1, batch.shotList().jobs(), List.of());
    assertThatThrownBy(() -> new Explainer(new Batch(batch.floor(), tomorrow), plan))
        .hasMessageContaining("date 2026-03-02");
  }

  @Test
  void refusesAJobOnARigThatCannotTakeIt() {
    Batch fits = batch(new JobBuilder("grown").build());
    Batch grown =
        batch(new JobBuilder("grown").item(new ItemBuilder().size(3000, 2500, 900)).build());
    Plan plan = FloorSolver.dispatch(fits);

    assertThatThrownBy(() -> new Explainer(grown, plan))
        .hasMessage("plan has jobs on rigs that cannot take them: grown on table");
  }

  @Test
  void hasNoJobToExplainInAnEmptyPlan() {
    Batch batch = batch();
    Explainer explainer = new Explainer(batch, FloorSolver.dispatch(batch));

    assertThat(explainer.troubles()).isEmpty();
    assertThatThrownBy(() -> explainer.explain("any")).hasMessage("the shot list has no job any");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void claimsNoKitWhereThereIsNone(long seed) {
    Batch drawn = RandomFloors.batch(seed);
    Floor floor = drawn.floor();
    Batch batch = new Batch(withoutKit(floor), drawn.shotList());
    Plan plan = FloorSolver.dispatch(batch);
    Explainer explainer = new Explainer(batch, plan);
    for (ShotJob job : batch.shotList().jobs().stream().limit(3).toList()) {
      Explanation answer = explainer.explain(job.id());
      assertThat(answer.changes())
          .extracting(IfThen::change)
          .extracting(Change::kind)
          .doesNotContain(Kind.ONE_MORE_KIT);
      assertThat(answer.waits())
          .extracting(Wait::reason)
          .doesNotContain(Wait.Reason.KIT, Wait.Reason.SAMPLE_AND_KIT);
      assertThat(answer.rules().kits()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void supposesOnlyWhatCouldBeOtherwise(long seed) {
    Batch batch = RandomFloors.batch(seed);
    Explainer explainer = new Explainer(batch, FloorSolver.dispatch(batch));
    for (ShotJob job : batch.shotList().jobs().stream().limit(3).toList()) {
      Explanation answer = explainer.explain(job.id());
      List<Kind> kinds = answer.changes().stream().map(one -> one.change().kind()).toList();
      if (job.arrivesAt() == null) {
        assertThat(kinds).doesNotContain(Kind.SAMPLE_THERE);
      }
      if (job.leavesAt() == null) {
        assertThat(kinds).doesNotContain(Kind.COLLECTION_LATER);
      }
      if (!job.must()) {
        assertThat(kinds).doesNotContain(Kind.PROMISE_LATER);
      }
      if (answer.rules().sampleSharedWith().isEmpty()) {
        assertThat(kinds).doesNotContain(Kind.SAMPLE_NOT_SHARED);
      }
      if (answer.rules().pin() == null) {
        assertThat(kinds).doesNotContain(Kind.NOT_PINNED, Kind.START_NOT_PINNED);
        assertThat(answer.rigs()).noneMatch(RigAnswer::withoutItsPin);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void listsJustTheLateAndTheLeftOut(long seed) {
    Batch batch = RandomFloors.batch(seed);
    Plan plan = FloorSolver.dispatch(batch);
    Explainer explainer = new Explainer(batch, plan);

    List<Trouble> troubles = explainer.troubles();

    List<String> expected = new ArrayList<>(plan.leftOut().stream().map(LeftOut::job).toList());
    plan.rigs().stream()
        .flatMap(rig -> rig.jobs().stream())
        .filter(job -> job.lateSeconds() > 0)
        .forEach(job -> expected.add(job.job()));
    assertThat(troubles)
        .extracting(one -> one.job().id())
        .containsExactlyInAnyOrderElementsOf(expected);
    List<Trouble> few = explainer.troubles(batch.shotList().jobs().size());
    assertThat(few)
        .extracting(Trouble::job)
        .isEqualTo(troubles.stream().map(Trouble::job).toList());
    assertThat(few.stream().filter(Trouble::asked).map(Trouble::placesTried))
        .as("one is asked about, and more only where that took nothing")
        .filteredOn(tried -> tried > 0)
        .hasSizeLessThanOrEqualTo(1);
    assertThat(few).filteredOn(one -> !one.asked()).allMatch(one -> one.best() == null);
    assertThat(troubles).allMatch(Trouble::asked);
    for (Trouble trouble : troubles.stream().limit(4).toList()) {
      Explanation answer = explainer.explain(trouble.job().id());
      assertThat(trouble.status()).isEqualTo(answer.status());
      assertThat(trouble.times()).isEqualTo(answer.times());
      if (trouble.change() != null) {
        assertThat(answer.changes()).contains(trouble.change());
      }
      if (trouble.best() != null) {
        assertThat(answer.rigs()).extracting(RigAnswer::best).contains(trouble.best());
      }
      if (trouble.best() != null && trouble.times() != null) {
        boolean lessLate =
            trouble.best().times().lateSeconds() < trouble.times().lateSeconds()
                && trouble.best().cost().hard() <= answer.cost().hard();
        assertThat(trouble.best().standing() == Standing.BETTER || lessLate).isTrue();
      }
    }
  }

  private static Floor withoutKit(Floor floor) {
    return new Floor(
        floor.name(),
        floor.zone(),
        floor.rigs(),
        List.of(),
        floor.fetches(),
        floor.crew(),
        floor.attributes(),
        floor.changeovers(),
        floor.recipes(),
        floor.itemSetups(),
        floor.handling(),
        floor.physics(),
        floor.weights(),
        floor.costs());
  }

  private static Batch pinned(PinState state) {
    Pin pin = new Pin("held", "table", 0, FloorFixtures.MONDAY.atTime(8, 0), state);
    ShotList list =
        new ShotList(
            FloorFixtures.MONDAY, 1, List.of(new JobBuilder("held").build()), List.of(pin));
    return new Batch(FloorFixtures.floor().build(), list);
  }

  private static Plan changed(Plan plan, List<RigPlan> rigs, List<LeftOut> leftOut) {
    return new Plan(
        plan.floor(),
        plan.zone(),
        plan.date(),
        plan.days(),
        rigs,
        leftOut,
        plan.figures(),
        plan.origin());
  }

  private static IfThen change(Explanation answer, Kind kind) {
    return answer.changes().stream()
        .filter(one -> one.change().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static Explanation explain(Batch batch, String job) {
    return FloorSolver.explain(batch, FloorSolver.dispatch(batch), job);
  }

  private static Batch batch(ShotJob... jobs) {
    return new Batch(
        FloorFixtures.floor().build(),
        new ShotList(FloorFixtures.MONDAY, 1, List.of(jobs), List.of()));
  }
}
