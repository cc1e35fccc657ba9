package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;

/** Windows, changeovers and plate rings, added up by hand. */
class RigTimelineTest {
  private static final Map<String, String> GREY = Map.of("background", "grey");

  private final Bench bench = new Bench();

  @Test
  void endsAJobWithTheLastSecondOfAWindow() {
    bench
        .floor(floor -> floor.rigs(twoWindows()))
        .job("left", "a", job -> job.arrivesAt(Bench.at("08:47")));

    assertThat(bench.line("a"))
        .isEqualTo("load 08:47-08:49 ann, capture 08:49-08:59, unload 08:59-09:00 ann");
  }

  @Test
  void startsNoJobThatItsWindowIsTooShortFor() {
    bench
        .floor(floor -> floor.rigs(twoWindows()))
        .job("left", "a", job -> job.arrivesAt(Bench.at("08:47:01")));

    assertThat(bench.line("a"))
        .isEqualTo("load 10:00-10:02 ann, capture 10:02-10:12, unload 10:12-10:13 ann");
  }

  @Test
  void worksAroundADatedClosure() {
    Closure service = new Closure(Bench.at("08:10"), Bench.at("09:15"), "service");
    bench.floor(floor -> floor.rigs(Bench.rig("left").closed(service).build())).job("left", "a");

    assertThat(bench.line("a")).startsWith("load 09:15-09:17 ann");
  }

  @Test
  void countsWhatWaitingPushesBeyondTheWindow() {
    // Fits when it starts, but ann is at the other rig when it should be unloaded.
    Plan plan =
        bench
            .floor(
                floor ->
                    floor.rigs(
                        Bench.rig("left").open(FloorFixtures.hours("08:00", "08:13")).build(),
                        Bench.rig("right").build()))
            .job("left", "a")
            .job("right", "b", job -> job.arrivesAt(Bench.at("08:11")))
            .plan();

    assertThat(Bench.line(plan, "a")).endsWith("unload 08:13-08:14 ann");
    assertThat(plan.figures().hard()).isEqualTo(60);
  }

  @Test
  void leavesForTomorrowWhatNobodyIsThereToUnload() {
    // The rig closes at 12:29, but ann goes to lunch at 12:00 and is back at 12:30.
    bench
        .days(2)
        .floor(
            floor ->
                floor.rigs(Bench.rig("left").open(FloorFixtures.hours("08:00", "12:29")).build()))
        .job("left", "a", job -> job.arrivesAt(Bench.at("11:55")));

    assertThat(bench.line("a")).startsWith("load +08:00-+08:02 ann");
    assertThat(bench.plan().figures().hard()).isZero();
  }

  @Test
  void changesTheSetupBeforeLoading() {
    Plan plan = bench.job("left", "a", job -> job.setup(GREY)).job("left", "b").plan();

    assertThat(Bench.line(plan, "a"))
        .isEqualTo(
            "change 08:00-08:05 ann, load 08:05-08:07 ann, capture 08:07-08:17, "
                + "unload 08:17-08:18 ann");
    assertThat(Bench.line(plan, "b")).startsWith("load 08:18-08:20 ann");
    assertThat(plan.figures().changeoverSeconds()).isEqualTo(300);
    assertThat(plan.figures().changeoverPoints()).isEqualTo(20);
    assertThat(plan.figures().finishingPoints()).isEqualTo(31);
  }

  @Test
  void loadsWhileTheRigWarmsUp() {
    bench
        .floor(
            floor -> floor.changeovers(FloorFixtures.change("background", "*", "*", 120, 300, 1)))
        .job("left", "a", job -> job.setup(GREY));

    assertThat(bench.line("a"))
        .isEqualTo(
            "change 08:00-08:02 ann, load 08:02-08:04 ann, capture 08:07-08:17, "
                + "unload 08:17-08:18 ann");
  }

  @Test
  void keepsTheOperatorOfAnAttendedCaptureWhileTheRigWarmsUp() {
    bench
        .floor(
            floor -> floor.changeovers(FloorFixtures.change("background", "*", "*", 120, 300, 1)))
        .job("left", "a", job -> job.setup(GREY).recipe("look"))
        .job("right", "b", job -> job.arrivesAt(Bench.at("08:02:01")));

    assertThat(bench.line("a")).contains("load 08:02-08:04 ann, capture 08:07-08:17 ann");
    assertThat(bench.line("b")).startsWith("load 08:17-08:19 ann");
  }

  @Test
  void warmsUpWithoutHandsOnTime() {
    bench
        .floor(floor -> floor.changeovers(FloorFixtures.change("background", "*", "*", 0, 300, 1)))
        .job("left", "a", job -> job.setup(GREY));

    assertThat(bench.line("a"))
        .isEqualTo(
            "change 08:00-08:00, load 08:00-08:02 ann, capture 08:05-08:15, "
                + "unload 08:15-08:16 ann");
  }

  @Test
  void sharesStepsBetweenTwoPeopleWhereTheRigAllowsIt() {
    // 5 minutes for one hand, 2 for the other: the longer hand counts.
    Plan plan =
        bench
            .floor(
                floor ->
                    floor
                        .rigs(
                            Bench.rig("left")
                                .twoStepsAtOnce(true)
                                .initialSetup(
                                    new Setup(Map.of("background", "white", "light", "soft")))
                                .build())
                        .crew(Bench.person("ann", "light"), Bench.person("bo"))
                        .attributes(
                            FloorFixtures.attribute(
                                "background",
                                FloorFixtures.value("white"),
                                FloorFixtures.value("grey")),
                            FloorFixtures.attribute(
                                "light", FloorFixtures.value("soft"), FloorFixtures.value("crisp")))
                        .changeovers(
                            FloorFixtures.change("background", "*", "*", 300, 0, 1),
                            FloorFixtures.change("light", "*", "*", 120, 0, 1, "light")))
            .job("left", "a", job -> job.setup(Map.of("background", "grey", "light", "crisp")))
            .plan();

    assertThat(Bench.line(plan, "a")).startsWith("change 08:00-08:05 ann+bo, load 08:05-08:07 bo");
    assertThat(plan.figures().changeoverSeconds()).isEqualTo(300);
  }

  @Test
  void servicesTheRingBeforeItHasTurnedTooOften() {
    // Serviced every 2 turns, 1 turned already, each spin turns once.
    Plan plan =
        bench
            .floor(
                floor ->
                    floor
                        .rigs(Bench.rig("left").ring(new PlateRing(2, 1, 240, Set.of())).build())
                        .recipes(
                            Bench.recipe("spin").rows(new FrameRow(0, 24, 360, false)).build()))
            .job("left", "a")
            .job("left", "b")
            .job("left", "c")
            .job("left", "d")
            .plan();

    assertThat(Bench.line(plan, "a")).startsWith("load 08:00-08:02");
    assertThat(Bench.line(plan, "b")).startsWith("change 08:13-08:17 ann, load 08:17-08:19");
    assertThat(Bench.line(plan, "c")).startsWith("load 08:30-08:32");
    assertThat(Bench.line(plan, "d")).startsWith("change 08:43-08:47 ann");
    assertThat(steps(plan, "b")).hasSize(1);
  }

  private static List<ChangeoverStep> steps(Plan plan, String job) {
    return plan.job(job).map(PlannedJob::steps).orElseThrow();
  }

  private static Rig twoWindows() {
    return Bench.rig("left")
        .open(FloorFixtures.hours("08:00", "09:00"), FloorFixtures.hours("10:00", "18:00"))
        .build();
  }
}
