package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.PinState;

/** Kit, samples, promises, pins and days, added up by hand. */
class SharedThingsTimelineTest {
  private final Bench bench = new Bench();

  @Test
  void waitsForKitAndFetchesItFromTheOtherRig() {
    // From the shelf 1 + 1 minutes, from the other rig 2 + 1.
    Plan plan =
        bench
            .gear("shelf")
            .job("left", "a", job -> job.recipe("geared"))
            .job("right", "b", job -> job.recipe("geared"))
            .plan();

    assertThat(Bench.line(plan, "a"))
        .isEqualTo(
            "change 08:00-08:02 ann, load 08:02-08:04 ann, capture 08:04-08:14, "
                + "unload 08:14-08:15 ann");
    assertThat(Bench.line(plan, "b"))
        .isEqualTo(
            "change 08:15-08:18 ann, load 08:18-08:20 ann, capture 08:20-08:30, "
                + "unload 08:30-08:31 ann");
    assertThat(use(plan, "b")).isEqualTo(new KitUse("gear", "gear-1", "left"));
  }

  @Test
  void usesKitThatStandsOnTheRigWithoutFetchingIt() {
    Plan plan =
        bench
            .gear("left")
            .job("left", "a", job -> job.recipe("geared"))
            .job("left", "plain")
            .job("left", "b", job -> job.recipe("geared"))
            .plan();

    assertThat(Bench.line(plan, "a")).startsWith("load 08:00-08:02");
    assertThat(Bench.line(plan, "b")).startsWith("load 08:26-08:28");
    assertThat(use(plan, "b")).isEqualTo(new KitUse("gear", "gear-1", "left"));
  }

  @Test
  void fetchesIdleKitAwayAndBringsItBack() {
    // "plain" runs under the kit without using it, to 08:13; the right rig takes it off then.
    Plan plan =
        bench
            .gear("left")
            .job("left", "plain")
            .job("left", "back", job -> job.recipe("geared"))
            .job("right", "away", job -> job.recipe("geared"))
            .plan();

    assertThat(Bench.line(plan, "plain")).endsWith("unload 08:12-08:13 ann");
    assertThat(Bench.line(plan, "away"))
        .isEqualTo(
            "change 08:13-08:16 ann, load 08:16-08:18 ann, capture 08:18-08:28, "
                + "unload 08:28-08:29 ann");
    assertThat(Bench.line(plan, "back")).startsWith("change 08:29-08:32 ann");
    assertThat(use(plan, "back")).isEqualTo(new KitUse("gear", "gear-1", "right"));
  }

  @Test
  void takesKitOffBeforeTheNextJobOfItsRigHoweverHeavyThatIs() {
    Plan plan =
        bench
            .gear("left")
            .job("left", "plain")
            .job("left", "heavy", job -> job.weight(9))
            .job("right", "away", job -> job.recipe("geared"))
            .plan();

    // Taken off from 08:13 to 08:15 and aligned for one more minute; nobody else is there to load.
    assertThat(Bench.line(plan, "away")).startsWith("change 08:13-08:16 ann, load 08:18-08:20 ann");
    assertThat(Bench.line(plan, "heavy")).startsWith("load 08:16-08:18 ann");
  }

  @Test
  void takesKitOffForTheHeavierOfTwoThatWaitForIt() {
    Plan plan =
        bench
            .floor(
                floor ->
                    floor.rigs(
                        Bench.rig("a-light").build(),
                        Bench.rig("b-heavy").build(),
                        Bench.rig("left").build()))
            .gear("left")
            .job("left", "plain", job -> job.weight(9))
            .job("a-light", "light", job -> job.recipe("geared").arrivesAt(Bench.at("08:05")))
            .job(
                "b-heavy",
                "heavy",
                job -> job.recipe("geared").weight(2).arrivesAt(Bench.at("08:06")))
            .plan();

    assertThat(Bench.line(plan, "plain")).endsWith("unload 08:12-08:13 ann");
    assertThat(Bench.line(plan, "heavy")).startsWith("change 08:13-08:16 ann");
    assertThat(use(plan, "light")).isEqualTo(new KitUse("gear", "gear-1", "b-heavy"));
  }

  @Test
  void doesNotComeFirstForASampleBecauseSomeKitHangsOnABusyRig() {
    // "first" has the sample that "second" waits for; the kit is to be had from the shelf.
    Plan plan =
        bench
            .floor(
                floor ->
                    floor.rigs(
                        Bench.rig("left").build(),
                        Bench.rig("right").build(),
                        Bench.rig("third").build(),
                        Bench.rig("under").build()))
            .gear("under", "shelf")
            .job("under", "plain", job -> job.arrivesAt(Bench.at("08:03")))
            .job("left", "first", job -> job.sample("vase").weight(8))
            .job("left", "heavy", job -> job.weight(7))
            .job(
                "right",
                "second",
                job -> job.sample("vase").recipe("geared").arrivesAt(Bench.at("08:05:30")))
            .plan();

    int unloaded = plan.job("first").orElseThrow().unload().span().end();
    assertThat(plan.job("heavy").orElseThrow().whole().start()).isEqualTo(unloaded);
    assertThat(plan.job("second").orElseThrow().whole().start()).isGreaterThan(unloaded);
  }

  @Test
  void startsNothingWhereKitIsTakenOffEvenWithPeopleForIt() {
    Plan plan =
        bench
            .gear("left")
            .floor(floor -> floor.crew(Bench.person("ann"), Bench.person("bob")))
            .job("left", "next", job -> job.arrivesAt(Bench.at("08:01")))
            .job("right", "away", job -> job.recipe("geared"))
            .plan();

    assertThat(Bench.line(plan, "away")).startsWith("change 08:00-08:03 ann");
    assertThat(Bench.line(plan, "next")).startsWith("load 08:02-08:04 bob");
  }

  @Test
  void fetchesFromTheShelfRatherThanFromARigThatIsAtAJob() {
    Plan plan =
        bench
            .gear("left", "shelf")
            .floor(
                floor ->
                    floor.fetches(new FetchTime("shelf", "*", 600), new FetchTime("*", "*", 60)))
            .job("left", "plain")
            .job("right", "away", job -> job.recipe("geared"))
            .plan();

    assertThat(use(plan, "away")).isEqualTo(new KitUse("gear", "gear-2", "shelf"));
    assertThat(Bench.line(plan, "away")).startsWith("change 08:02-08:13 ann");
  }

  @Test
  void handsKitToTheHeavierJobWhenItComesFree() {
    Plan plan =
        bench
            .gear("left")
            .job("left", "a", job -> job.recipe("geared"))
            .job("left", "next", job -> job.recipe("geared"))
            .job(
                "right",
                "heavy",
                job -> job.recipe("geared").weight(2).arrivesAt(Bench.at("08:01")))
            .plan();

    // Both want the unit at 08:13, as the first job is unloaded.
    assertThat(Bench.line(plan, "a")).endsWith("unload 08:12-08:13 ann");
    assertThat(Bench.line(plan, "heavy"))
        .isEqualTo(
            "change 08:13-08:16 ann, load 08:16-08:18 ann, capture 08:18-08:28, "
                + "unload 08:28-08:29 ann");
    assertThat(Bench.line(plan, "next")).startsWith("change 08:29-08:32 ann");
  }

  @Test
  void takesTheUnitThatIsFetchedSoonest() {
    Plan plan = bench.gear("right", "shelf").job("left", "a", job -> job.recipe("geared")).plan();

    assertThat(use(plan, "a")).isEqualTo(new KitUse("gear", "gear-2", "shelf"));
    assertThat(Bench.line(plan, "a")).startsWith("change 08:00-08:02 ann");
  }

  @Test
  void lendsASampleToOneRigAtATime() {
    bench.job("left", "a", job -> job.sample("vase")).job("right", "b", job -> job.sample("vase"));

    assertThat(bench.line("a")).endsWith("unload 08:12-08:13 ann");
    assertThat(bench.line("b"))
        .isEqualTo("load 08:13-08:15 ann, capture 08:15-08:25, unload 08:25-08:26 ann");
  }

  @Test
  void waitsForTheSampleAndCountsWhatIsLeftOnTheRig() {
    Plan plan =
        bench
            .job(
                "left", "a", job -> job.arrivesAt(Bench.at("09:00")).leavesAt(Bench.at("09:12:15")))
            .plan();

    assertThat(Bench.line(plan, "a"))
        .isEqualTo("load 09:00-09:02 ann, capture 09:02-09:12, unload 09:12-09:13 ann");
    assertThat(plan.figures().hard()).isEqualTo(45);
  }

  @Test
  void countsABrokenMustPromiseHardAndAnyLatenessSoft() {
    Plan must = new Bench().job("left", "a", job -> job.mustBy(Bench.at("08:10"))).plan();
    Plan should =
        new Bench().job("left", "a", job -> job.shouldBy(Bench.at("08:10")).weight(3)).plan();

    // Captured by 08:12: 120 s late, 2 minutes x 10 points x weight.
    assertThat(must.figures().hard()).isEqualTo(120);
    assertThat(must.figures().latenessPoints()).isEqualTo(20);
    assertThat(should.figures().hard()).isZero();
    assertThat(should.figures().latenessPoints()).isEqualTo(60);
    assertThat(should.figures().lateSeconds()).isEqualTo(120);
  }

  @Test
  void takesAFrozenStartAsGiven() {
    Plan plan =
        bench
            .job("left", "done")
            .job("left", "next")
            .job("right", "other")
            .pin("done", "left", 0, "08:30", PinState.DONE)
            .plan();

    assertThat(Bench.line(plan, "done"))
        .isEqualTo("load 08:30-08:32 ann, capture 08:32-08:42, unload 08:42-08:43 ann");
    assertThat(Bench.line(plan, "next")).startsWith("load 08:43-08:45 ann");
    assertThat(Bench.line(plan, "other")).startsWith("load 08:00-08:02 ann");
    assertThat(plan.figures().hard()).isZero();
  }

  @Test
  void countsHowFarAStartAndAPlaceAreFromTheirPins() {
    Plan late = new Bench().job("left", "a").pin("a", "left", 0, "07:30", PinState.PLANNED).plan();
    Plan moved =
        new Bench()
            .job("left", "b")
            .job("left", "a")
            .pin("a", "left", 0, "09:00", PinState.PLANNED)
            .plan();

    assertThat(Bench.line(late, "a")).startsWith("load 08:00-08:02");
    assertThat(late.figures().hard()).isEqualTo(1800);
    assertThat(moved.figures().hard()).isEqualTo(1);
  }

  @Test
  void leavesAnItemOnARigThatRunsThroughTheNight() {
    OpenHours morning = FloorFixtures.hours("00:00", "12:00");
    OpenHours rest = FloorFixtures.hours("12:00", "00:00");
    bench
        .days(2)
        .floor(floor -> floor.rigs(Bench.rig("left").open(morning, rest).build()))
        .job("left", "a", job -> job.arrivesAt(Bench.at("16:58")))
        .job("left", "b");

    assertThat(bench.line("a"))
        .isEqualTo("load 16:58-17:00 ann, capture 17:00-17:10, unload +08:00-+08:01 ann");
    assertThat(bench.line("b")).startsWith("load +08:01-+08:03 ann");
  }

  @Test
  void decodesWhatHasNoRoomAfterThePlansEndAndCountsIt() {
    // Ann has gone home for good: it starts as the plan ends and takes 13 minutes.
    Plan plan = bench.job("left", "a", job -> job.arrivesAt(Bench.at("17:30"))).plan();

    assertThat(Bench.line(plan, "a")).startsWith("load +00:00-+00:02 ann");
    assertThat(plan.figures().hard()).isEqualTo(13 * 60);
  }

  private static KitUse use(Plan plan, String job) {
    return plan.job(job).map(PlannedJob::kit).orElseThrow().get(0);
  }
}
