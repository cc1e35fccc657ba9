package rigmorrow.model.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.change.ScenarioBatch;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.DayCost;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/**
 * A day worked out by hand: Bo does a job on the table from 16:00 to 17:10 that was promised for
 * 17:00 and weighs 2; another promised job is left out, a third has no promise and is done by Ann
 * from 08:00 to 08:40.
 */
class OutcomeTest {
  private static final LocalDate DATE = LocalDate.parse("2026-03-02");
  private static final Batch BATCH =
      new Batch(
          FloorFixtures.floor().build(),
          new ShotList(
              DATE,
              1,
              List.of(
                  new JobBuilder("late").weight(2).shouldBy(DATE.atTime(17, 0)).build(),
                  new JobBuilder("out").weight(3).shouldBy(DATE.atTime(12, 0)).build(),
                  new JobBuilder("free").build()),
              List.of()));

  private static int at(int hour, int minute) {
    return PlanClock.of(BATCH).secondsAt(DATE.atTime(hour, minute));
  }

  private static Attended by(String operator, int fromHour, int fromMinute, int minutes) {
    int from = at(fromHour, fromMinute);
    return new Attended(new Span(from, from + 60 * minutes), List.of(operator));
  }

  private static PlannedJob job(String id, Attended change, Attended load, int capture, int late) {
    int end = load.span().end();
    Span taking = new Span(end, end + 60 * capture);
    Attended unload = new Attended(new Span(taking.end(), taking.end() + 300), load.operators());
    return new PlannedJob(
        id, List.of(), change, end, load, taking, List.of(), unload, List.of(), late);
  }

  private static Plan plan() {
    PlannedJob late = job("late", by("bo", 16, 0, 10), by("bo", 16, 10, 20), 35, 600);
    PlannedJob free = job("free", null, by("ann", 8, 0, 5), 30, 0);
    LeftOut out = new LeftOut("out", LeftOut.Cause.NO_ROOM, List.of("no room"));
    PlanFigures figures = new PlanFigures(0, 3, 200, 40, 10, 2, 1, 1, 600, 600, at(17, 10));
    return new Plan(
        "Small studio",
        FloorFixtures.COPENHAGEN,
        DATE,
        1,
        List.of(new RigPlan("table", List.of(late)), new RigPlan("platform", List.of(free))),
        List.of(out),
        figures,
        new PlanOrigin("search", 1, 1, 100, "steps"));
  }

  private static Outcome outcome(CrewPay pay, ScenarioChange... changes) {
    ScenarioBatch made = ScenarioMaker.of(BATCH, List.of(changes));
    assertThat(made.problems()).isEmpty();
    return Outcome.of(made, plan(), pay);
  }

  private static FloorChange longer(boolean regular) {
    return new FloorChange.LongerHours(List.of(), List.of("bo"), 0, 120, regular);
  }

  @Test
  void countsJobsAndPromises() {
    Outcome day = outcome(CrewPay.SHIFT);
    assertThat(day.planned()).isEqualTo(2);
    assertThat(day.leftOut()).isEqualTo(1);
    assertThat(day.promises()).isEqualTo(2);
    assertThat(day.kept()).isZero();
    assertThat(day.keptPercent()).isZero();
    assertThat(day.lateSeconds()).isEqualTo(1200);
    assertThat(day.finishedSeconds()).isEqualTo(17 * 3600 + 600);
    assertThat(day.changeoverSeconds()).isEqualTo(600);
  }

  @Test
  void paysWholeShiftsAndPresenceAfterThem() {
    // Each works 08:30 hours a day; Bo's last task ends at 17:10, 40 minutes after his shift.
    Outcome day = outcome(CrewPay.SHIFT, longer(false));
    assertThat(day.crew()).isEqualTo(new Outcome.CrewTime(2700, 2 * 8 * 3600 + 3600, 2400));
    assertThat(day.crew().usePercent()).isCloseTo(100 * 2700 / 63_600.0, within(1e-9));
    assertThat(day.cost().regular()).isEqualTo(17 * 40.0);
    assertThat(day.cost().overtime()).isCloseTo(2400 / 3600.0 * 40 * 1.5, within(1e-9));
  }

  @Test
  void paysNoOvertimeForLongerRegularHours() {
    Outcome day = outcome(CrewPay.SHIFT, longer(true));
    assertThat(day.crew()).isEqualTo(new Outcome.CrewTime(2700, 2 * 8 * 3600 + 3600 + 7200, 0));
  }

  @Test
  void paysHandsOnTimeOnlyWhereThatIsAsked() {
    // Within his shift Bo is at work from 16:00 to 16:30, beyond it from 17:05 to 17:10.
    Outcome day = outcome(CrewPay.HANDS_ON, longer(false));
    assertThat(day.crew()).isEqualTo(new Outcome.CrewTime(2700, 2400, 300));
  }

  @Test
  void paysWhoComesEarlierFromTheFirstTask() {
    FloorChange early = new FloorChange.LongerHours(List.of(), List.of("ann"), 60, 0, false);
    ScenarioBatch made = ScenarioMaker.of(BATCH, List.of(early));
    assertThat(Outcome.of(made, plan(), CrewPay.SHIFT).crew().overtimeSeconds()).isZero();
    Plan plan = plan();
    PlannedJob seven = job("free", null, by("ann", 6, 50, 5), 30, 0);
    Plan earlier =
        new Plan(
            plan.floor(),
            plan.zone(),
            plan.date(),
            1,
            List.of(plan.rigs().get(0), new RigPlan("platform", List.of(seven))),
            plan.leftOut(),
            plan.figures(),
            plan.origin());
    assertThat(Outcome.of(made, earlier, CrewPay.SHIFT).crew().overtimeSeconds())
        .isEqualTo(40 * 60);
  }

  @Test
  void pricesRigsLatenessAndJobsLeftOut() {
    DayCost cost = outcome(CrewPay.SHIFT).cost();
    assertThat(cost.rigs()).isCloseTo((70 + 40) / 60.0 * 25, within(1e-9));
    assertThat(cost.lateness()).isCloseTo(1200 / 3600.0 * 60, within(1e-9));
    assertThat(cost.leftOut()).isEqualTo(3 * 80);
    assertThat(cost.total())
        .isCloseTo(
            cost.regular() + cost.overtime() + cost.rigs() + cost.lateness() + 240, within(1e-9));
  }

  @Test
  void aRigThatWaitsCostsNothing() {
    // Changed over from 16:00 to 16:10, warm at 16:40; loaded from 16:20 to 16:30, captures from
    // 16:50 to 17:00, unloaded from 17:10 to 17:15: it runs for 40, 10 and 5 minutes.
    PlannedJob job =
        new PlannedJob(
            "late",
            List.of(),
            by("bo", 16, 0, 10),
            at(16, 40),
            by("bo", 16, 20, 10),
            new Span(at(16, 50), at(17, 0)),
            List.of(),
            by("bo", 17, 10, 5),
            List.of(),
            0);
    Plan plan = plan();
    Plan waiting =
        new Plan(
            plan.floor(),
            plan.zone(),
            plan.date(),
            1,
            List.of(new RigPlan("table", List.of(job)), new RigPlan("platform", List.of())),
            plan.leftOut(),
            plan.figures(),
            plan.origin());
    Outcome day = Outcome.of(ScenarioMaker.of(BATCH, List.of()), waiting, CrewPay.SHIFT);
    assertThat(day.cost().rigs()).isCloseTo(55 / 60.0 * 25, within(1e-9));
    assertThat(day.rigs().unitBusySeconds()).isEqualTo(75 * 60);
  }

  @Test
  void tellsTheUseOfRigs() {
    Outcome.RigTime rigs = outcome(CrewPay.SHIFT).rigs();
    assertThat(rigs).isEqualTo(new Outcome.RigTime(2 * 11 * 3600, 110 * 60, 65 * 60));
    assertThat(rigs.allocationPercent()).isCloseTo(8.333, within(1e-3));
    assertThat(rigs.utilisationPercent()).isCloseTo(59.09, within(1e-2));
  }

  @Test
  void tellsHowManyAreBusyOverTheDay() {
    Outcome day = outcome(CrewPay.SHIFT);
    assertThat(day.rigLoad().mean(16, 1)).isEqualTo(1);
    assertThat(day.rigLoad().mean(17, 1)).isCloseTo(1 / 3.0, within(1e-9));
    assertThat(day.rigLoad().mean(32, 2)).isEqualTo(0.5);
    assertThat(day.rigLoad().mean(34, 1)).isCloseTo(1 / 3.0, within(1e-9));
    assertThat(day.crewLoad().mean(32, 1)).isEqualTo(1);
    assertThat(day.crewLoad().mean(34, 1)).isCloseTo(1 / 6.0, within(1e-9));
    long all = day.crewLoad().busySeconds().stream().mapToLong(x -> x).sum();
    assertThat(all).isEqualTo(day.crew().handsOnSeconds());
  }

  @Test
  void findsBrokenRules() {
    // The plan was not made by the rules: nobody changed the setup of the platform.
    assertThat(outcome(CrewPay.SHIFT).breaches()).isPositive();
  }

  @Test
  void aDayWithoutPromisesKeepsAllOfThem() {
    Batch none = new Batch(BATCH.floor(), BATCH.shotList().withJobs(List.of()));
    Plan empty =
        new Plan(
            "Small studio",
            FloorFixtures.COPENHAGEN,
            DATE,
            1,
            List.of(),
            List.of(),
            new PlanFigures(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
            new PlanOrigin("search", 1, 1, 100, "steps"));
    Outcome day = Outcome.of(ScenarioMaker.of(none, List.of()), empty, CrewPay.HANDS_ON);
    assertThat(day.keptPercent()).isEqualTo(100);
    assertThat(day.finishedSeconds()).isZero();
    assertThat(day.cost().total()).isZero();
    assertThat(day.crew().usePercent()).isZero();
  }

  @Test
  void theHourThatComesTwiceCountsTwice() {
    PlanClock autumn = new PlanClock(FloorFixtures.COPENHAGEN, LocalDate.parse("2026-10-25"), 1);
    Span night = new Span(0, 4 * 3600);
    LoadCurve curve = LoadCurve.of(List.of(night), autumn);
    List<Double> means = IntStream.range(0, 7).mapToObj(part -> curve.mean(part, 1)).toList();
    assertThat(means).containsExactly(1.0, 1.0, 1.0, 1.0, 2.0, 2.0, 0.0);
  }
}
