package rigmorrow.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.work.TakeOff;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** What a rig waited for, held against the times of the plan. */
class WaitsTest {
  static LongStream seeds() {
    return LongStream.range(0, 120);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fillsEveryGapWithAReasonThatThePlanShows(long seed) {
    Batch batch = RandomFloors.batch(seed);
    CompiledBatch compiled = CompiledBatch.of(batch);
    Timeline timeline = new Timeline(compiled);
    PlanWriter writer = new PlanWriter(compiled, timeline);
    Sequences sequences = RandomSequences.of(compiled, new Random(seed), 9);
    Plan plan =
        writer.write(sequences, new rigmorrow.model.plan.PlanOrigin("test", 0, 1, 0, "done"));
    Map<String, List<Wait>> all = writer.waits();
    for (int rig = 0; rig < plan.rigs().size(); rig++) {
      List<PlannedJob> jobs = plan.rigs().get(rig).jobs();
      for (int place = 0; place < jobs.size(); place++) {
        int free = place == 0 ? 0 : jobs.get(place - 1).unload().span().end();
        List<Wait> waits = writer.waits(rig, place);
        assertThat(seconds(waits)).isEqualTo(gaps(jobs.get(place), free));
        assertThat(waits).isSortedAccordingTo((a, b) -> a.span().start() - b.span().start());
        assertThat(all.get(jobs.get(place).job())).isEqualTo(waits);
        for (Wait wait : waits) {
          assertThat(wait.rigs())
              .as("where the kit is that is waited for")
              .containsExactlyInAnyOrderElementsOf(
                  rigsWithPieces(batch, plan, plan.rigs().get(rig).rig(), wait));
          check(batch, plan, jobs.get(place), wait);
        }
      }
    }
  }

  private static int seconds(List<Wait> waits) {
    return waits.stream().mapToInt(wait -> wait.span().seconds()).sum();
  }

  private static int gaps(PlannedJob job, int free) {
    int changed = job.changeover() == null ? job.whole().start() : job.changeover().span().end();
    return job.whole().start()
        - free
        + (job.load().span().start() - changed)
        + (job.capture().start() - job.load().span().end())
        + (job.unload().span().start() - job.capture().end());
  }

  private static void check(Batch batch, Plan plan, PlannedJob planned, Wait wait) {
    ShotJob job =
        batch.shotList().jobs().stream()
            .filter(one -> one.id().equals(planned.job()))
            .findFirst()
            .get();
    PlanClock clock = PlanClock.of(batch);
    switch (wait.reason()) {
      case ARRIVAL -> assertThat(wait.span().end()).isEqualTo(clock.secondsAt(job.arrivesAt()));
      case PINNED_START -> {
        Pin pin =
            batch.shotList().pins().stream()
                .filter(one -> one.job().equals(job.id()))
                .findFirst()
                .get();
        assertThat(wait.span().end()).isEqualTo(clock.secondsAt(pin.startsAt()));
      }
      case SAMPLE -> assertThat(holders(batch, plan, job, wait.span().start())).isNotEmpty();
      case KIT -> kitsAreOut(batch, plan, planned, wait);
      case KIT_ON_A_BUSY_RIG -> kitHangsOnABusyRig(plan, planned, wait);
      case KIT_TAKEN_OFF -> kitIsTakenOff(batch, plan, planned, wait);
      case SAMPLE_AND_KIT -> {
        assertThat(holders(batch, plan, job, wait.span().start())).isNotEmpty();
        kitsAreOut(batch, plan, planned, wait);
      }
      case WARM_UP -> assertThat(wait.span().end()).isEqualTo(planned.warmedUpAt());
      case CREW_TO_START, RIG_HOURS ->
          assertThat(wait.span().end()).isLessThanOrEqualTo(planned.whole().start());
      case CREW_TO_LOAD -> assertThat(wait.span().end()).isEqualTo(planned.load().span().start());
      case CREW_TO_UNLOAD ->
          assertThat(wait.span())
              .isEqualTo(new Span(planned.capture().end(), planned.unload().span().start()));
    }
  }

  /** Other jobs of the sample that end later: one of them has it or is about to take it. */
  private static List<String> holders(Batch batch, Plan plan, ShotJob job, int second) {
    List<String> holders = new ArrayList<>();
    for (ShotJob other : batch.shotList().jobs()) {
      if (other.sample().equals(job.sample()) && !other.id().equals(job.id())) {
        plan.job(other.id())
            .filter(one -> one.whole().end() > second)
            .ifPresent(one -> holders.add(one.job()));
      }
    }
    return holders;
  }

  /** A piece of each kit that is named comes from a rig that has a job then. */
  private static void kitHangsOnABusyRig(Plan plan, PlannedJob planned, Wait wait) {
    assertThat(wait.kits()).isNotEmpty();
    for (String id : wait.kits()) {
      assertThat(planned.kit()).anyMatch(use -> use.kit().equals(id));
      assertThat(plan.rigs())
          .filteredOn(rig -> rig.jobs().stream().noneMatch(one -> one.job().equals(planned.job())))
          .anyMatch(
              rig -> rig.jobs().stream().anyMatch(one -> one.whole().end() > wait.span().start()));
    }
  }

  /** Where each piece of the kit was at first and whenever a job began; other rigs only. */
  private static Set<String> rigsWithPieces(Batch batch, Plan plan, String own, Wait wait) {
    Set<String> rigs = new TreeSet<>();
    for (String kit : wait.kits()) {
      for (KitUnit unit : batch.floor().kit(kit).orElseThrow().units()) {
        rigs.add(placeAt(plan, unit, wait.span().start()));
        plan.rigs().stream()
            .flatMap(rig -> rig.jobs().stream())
            .mapToInt(job -> job.whole().start())
            .filter(start -> start > wait.span().start() && start < wait.span().end())
            .forEach(start -> rigs.add(placeAt(plan, unit, start)));
      }
    }
    rigs.removeIf(place -> place.equals(own) || batch.floor().rig(place).isEmpty());
    return rigs;
  }

  private static String placeAt(Plan plan, KitUnit unit, int second) {
    String place = unit.place();
    int since = -1;
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        boolean takes = job.kit().stream().anyMatch(use -> use.unit().equals(unit.id()));
        int start = job.whole().start();
        if (takes && start <= second && start > since) {
          since = start;
          place = rig.rig();
        }
      }
    }
    return place;
  }

  /** Some other rig fetches the kit from this one. */
  private static void kitIsTakenOff(Batch batch, Plan plan, PlannedJob planned, Wait wait) {
    assertThat(wait.kits()).hasSize(1);
    RigPlan here =
        plan.rigs().stream()
            .filter(rig -> rig.jobs().stream().anyMatch(one -> one.job().equals(planned.job())))
            .findFirst()
            .orElseThrow();
    List<TakeOff> offs = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      rig.jobs().forEach(one -> offs.addAll(TakeOff.of(batch.floor(), rig.rig(), one)));
    }
    assertThat(offs)
        .filteredOn(off -> off.use().from().equals(here.rig()))
        .filteredOn(off -> off.use().kit().equals(wait.kits().get(0)))
        .anyMatch(off -> off.span().end() == wait.span().end());
  }

  /** Every piece of each kit that is named is used by some other job that ends later. */
  private static void kitsAreOut(Batch batch, Plan plan, PlannedJob planned, Wait wait) {
    assertThat(wait.kits()).isNotEmpty();
    for (String id : wait.kits()) {
      assertThat(planned.kit()).anyMatch(use -> use.kit().equals(id));
      List<String> out =
          plan.rigs().stream()
              .map(RigPlan::jobs)
              .flatMap(List::stream)
              .filter(
                  one ->
                      !one.job().equals(planned.job()) && one.whole().end() > wait.span().start())
              .flatMap(one -> one.kit().stream())
              .map(KitUse::unit)
              .toList();
      List<String> units =
          batch.floor().kit(id).orElseThrow().units().stream().map(KitUnit::id).toList();
      assertThat(out).containsAll(units);
    }
  }
}
