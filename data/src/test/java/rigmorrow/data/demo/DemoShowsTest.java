package rigmorrow.data.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.FitReason;
import rigmorrow.model.fit.FitRule;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.ChangeoverModel;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.SetupRequests;
import rigmorrow.model.work.TimeTerm;
import rigmorrow.model.work.WorkModel;

/** The default demo shows everything that decides who goes where and how long it takes. */
class DemoShowsTest {
  private final Batch demo = Demo.batch();
  private final Floor floor = demo.floor();
  private final FitCheck check = new FitCheck(floor);
  private final WorkModel work = new WorkModel(floor);

  @Test
  void platesDifferInDiameterAndPayload() {
    assertThat(floor.rigs().stream().map(rig -> rig.size().plateDiameterMm()).distinct())
        .hasSizeGreaterThanOrEqualTo(4)
        .contains(500, 850, 1800);
    assertThat(floor.rigs().stream().map(rig -> rig.size().platePayloadKg()).distinct())
        .hasSizeGreaterThanOrEqualTo(4)
        .contains(40.0);
  }

  @Test
  void aRingWearsAndNeedsService() {
    PlateRing ring = rig("R2").ring();
    int turnsLeft = ring.serviceEveryTurns() - ring.turnsSinceService();
    int turns =
        new DemoLoads(demo)
            .all().stream().filter(job -> job.rig().equals("R2")).mapToInt(JobWork::turns).sum();

    assertThat(ring.serviceSeconds()).isPositive();
    assertThat(turnsLeft).isPositive();
    assertThat(turns).isGreaterThan(turnsLeft);
  }

  @Test
  void fastTurnsAreLimitedByStrobeOrCameraRatherThanTheMotor() {
    ShotJob boxed = job(job -> spinsWhileTurning(job) && job.name().startsWith("Boxed"));
    ShotJob scooter = job(job -> spinsWhileTurning(job) && job.name().startsWith("Cargo"));

    assertThat(turningFigures(boxed, "R2")).contains("limited by strobe");
    assertThat(turningFigures(scooter, "R4")).contains("limited by camera");
  }

  @Test
  void aTallBottleTurnsSlowerThanABoxAtTheSamePlace() {
    ShotJob bottle = job(job -> spinsWhileTurning(job) && job.name().startsWith("Tall bottle"));
    Rig rig = rig("R1");
    double bottleAcceleration = turnAcceleration(bottle, rig);
    ShotJob boxed = job(job -> spinsWhileTurning(job) && job.name().startsWith("Boxed"));

    assertThat(bottleAcceleration)
        .isLessThan(Math.toRadians(rig.plate().accelerationDegPerS2()))
        .isLessThan(turnAcceleration(boxed, rig));
  }

  @Test
  void rotatorsTurnTheStrapsOfWhatStands() {
    ShotJob bag = job(job -> job.item().hanging() != null && job.item().hanging().stands());

    assertThat(rig("R5").fitted(Equipment.ROTATOR)).isPresent();
    assertThat(work.of(bag, rig("R5")).kits()).isEmpty();
    assertThat(work.of(bag, rig("R2")).kits()).containsExactly(DemoKit.ROTATOR_HEAD);
    assertThat(check.of(bag, rig("R2")).fits()).isTrue();
    assertThat(reasons(bag, "R6")).contains(FitRule.EQUIPMENT);
  }

  @Test
  void aSocketTurnsWithThePlate() {
    ShotJob lamp = job(job -> job.item().power() != null && job.item().hanging() == null);

    assertThat(rig("R6").fitted(Equipment.POWERED_SOCKET)).isPresent();
    assertThat(check.of(lamp, rig("R6")).fits()).isTrue();
    assertThat(reasons(lamp, "R1")).contains(FitRule.EQUIPMENT);
  }

  @Test
  void theSocketStaysOffBetweenJobs() {
    String caution =
        floor.attribute(DemoSetups.POWER).orElseThrow().value("on").orElseThrow().caution();

    assertThat(caution).contains("switch on only when the item is connected");
    assertThat(powerStep("off", "on").text()).contains("leave it switched off");
    assertThat(powerStep("on", "off").text()).contains("secure it");
  }

  @Test
  void laserLinesWarnOfThemselvesOnTheLargeTablesAndTheirCopies() {
    assertThat(DemoRigs.on(DemoKnobs.DATE, DemoRigs.MOST))
        .filteredOn(
            rig -> rig.cautions().stream().anyMatch(text -> text.contains("never look into")))
        .extracting(Rig::id)
        .containsExactly("R2", "R3", "R7", "R8");
  }

  @Test
  void noRigStartsWithAKitThatLiesElsewhere() {
    Kit macro = floor.kit(DemoKit.MACRO_LENS).orElseThrow();

    assertThat(floor.rigs().stream().map(Rig::id)).doesNotContain(macro.units().get(0).place());
    assertThat(floor.rigs())
        .noneMatch(rig -> "b-macro".equals(rig.initialSetup().value(DemoSetups.CAMERA)));
  }

  @Test
  void noRecipeShootsOneRowTwice() {
    assertThat(floor.recipes())
        .allSatisfy(recipe -> assertThat(recipe.rows()).doesNotHaveDuplicates());
  }

  @Test
  void onlyTheTallFrameGivesAStraightDownView() {
    ShotJob top = job(job -> job.recipe().equals(DemoRecipes.TOP));
    int low = rig("R2").fitted(Equipment.OVERHEAD_FRAME).orElseThrow().heightMm();
    int tall = rig("R3").fitted(Equipment.OVERHEAD_FRAME).orElseThrow().heightMm();

    assertThat(low).isLessThan(tall);
    assertThat(check.of(top, rig("R3")).fits()).isTrue();
    assertThat(reasons(top, "R2")).containsExactly(FitRule.EQUIPMENT);
  }

  @Test
  void aHolderActsAsOneMoreHand() {
    ShotJob mirror = job(job -> job.item().handsNeeded() == 3 && job.item().holder());

    assertThat(work.of(mirror, rig("R4")).load().people()).isEqualTo(2);
    assertThat(work.of(mirror, rig("R4")).kits()).contains(DemoKit.HOLDER);
  }

  @Test
  void strobesAndContinuousLightAreBothThere() {
    assertThat(floor.rigs())
        .anyMatch(
            rig -> rig.camera().strobeRecycleSeconds() != null && !rig.camera().continuousLight())
        .anyMatch(
            rig -> rig.camera().strobeRecycleSeconds() == null && rig.camera().continuousLight());
    ShotJob stills = job(job -> job.recipe().equals(DemoRecipes.STILLS));
    assertThat(reasons(stills, "R4")).contains(FitRule.LIGHTING);
  }

  @Test
  void aDirectlyLitBackgroundIsNotForClearThings() {
    assertThat(jobs().map(job -> SetupRequests.of(floor, job).value(DemoSetups.BACKGROUND)))
        .contains("white-direct", "white-reflected", "grey", "black");
    ShotJob clear =
        DemoTroubles.shotList(DemoKnobs.DATE).jobs().stream()
            .filter(job -> DemoSetups.CLEAR.equals(job.item().finish()))
            .findFirst()
            .orElseThrow();
    assertThat(reasons(clear, "R2")).containsExactly(FitRule.FINISH);
  }

  @Test
  void flagsStandBesideGlossyAndUnderClearThings() {
    assertThat(flags(DemoSetups.GLOSSY)).isNotEmpty().containsOnly("sides");
    assertThat(flags(DemoSetups.CLEAR)).isNotEmpty().containsOnly("sides-under");
    assertThat(flags(DemoSetups.MATTE)).isNotEmpty().containsOnly("none");
  }

  @Test
  void twinTablesHaveCameraArmsOfTwoLengths() {
    assertThat(rig("R2").size().plateDiameterMm()).isEqualTo(rig("R3").size().plateDiameterMm());
    assertThat(rig("R2").camera().armHighMm()).isLessThan(rig("R3").camera().armHighMm());
  }

  @Test
  void everyCameraBodyIsAlignedAfterAChange() {
    ChangeoverModel changeovers = new ChangeoverModel(floor);
    for (String body : List.of("a-50", "a-100", "b-70", "b-macro")) {
      String other = body.startsWith("a") ? "b-70" : "a-50";
      ChangeoverStep change = cameraStep(changeovers, other, body);
      assertThat(change.text()).contains("align its sensor");
      assertThat(change.skills()).contains(DemoCrew.CAMERA);
    }
    assertThat(cameraStep(changeovers, "a-50", "a-100").attendedSeconds())
        .isLessThan(cameraStep(changeovers, "b-70", "a-100").attendedSeconds());
  }

  @Test
  void oneArmIsWheeledBetweenATableAndThePlatform() {
    Kit arm = floor.kit(DemoKit.DOCKING_ARM).orElseThrow();

    assertThat(arm.units()).hasSize(1);
    assertThat(floor.rigs().stream().filter(rig -> rig.takesKit().contains(arm.id())))
        .extracting(Rig::id)
        .containsExactly("R3", "R4");
    assertThat(floor.fetchSeconds("R3", "R4")).isPositive();
    assertThat(jobs().filter(job -> check.of(job, rig("R3")).fits()))
        .anyMatch(job -> work.of(job, rig("R3")).kits().contains(arm.id()));
    assertThat(jobs().filter(job -> !check.of(job, rig("R3")).fits()))
        .anyMatch(job -> work.of(job, rig("R4")).kits().contains(arm.id()));
  }

  @Test
  void heightsComeFromTheListADeviceAndTheHand() {
    assertThat(jobs().map(job -> job.item().heightSource()).distinct())
        .containsExactlyInAnyOrder(HeightSource.values());
  }

  @Test
  void stillsAndSpinsOfOneAndOfSeveralRowsAreShot() {
    List<Recipe> shot =
        jobs().map(job -> floor.recipe(job.recipe()).orElseThrow()).distinct().toList();

    assertThat(shot)
        .hasSameSizeAs(floor.recipes())
        .anyMatch(recipe -> recipe.rows().isEmpty())
        .anyMatch(recipe -> elevations(recipe) == 1)
        .anyMatch(recipe -> elevations(recipe) == 3)
        .anyMatch(recipe -> recipe.focusBrackets() > 10)
        .anyMatch(Recipe::attended);
  }

  private static long elevations(Recipe recipe) {
    return recipe.rows().stream().mapToDouble(row -> row.elevationDeg()).distinct().count();
  }

  private ChangeoverStep cameraStep(ChangeoverModel changeovers, String from, String to) {
    Setup before = DemoSetups.setup(DemoSetups.CAMERA, from);
    return changeovers.steps(rig("R1"), before, DemoSetups.setup(DemoSetups.CAMERA, to)).get(0);
  }

  private ChangeoverStep powerStep(String from, String to) {
    return new ChangeoverModel(floor)
        .steps(
            rig("R6"),
            DemoSetups.setup(DemoSetups.POWER, from),
            DemoSetups.setup(DemoSetups.POWER, to))
        .get(0);
  }

  private double turnAcceleration(ShotJob job, Rig rig) {
    int offset = 80;
    return WorkModel.limits(floor, rig, job.item(), SetupRequests.of(floor, job))
        .turnLimits(offset)
        .acceleration();
  }

  private String turningFigures(ShotJob job, String rig) {
    return work.of(job, rig(rig)).terms().stream()
        .filter(term -> term.label().contains("while turning"))
        .map(TimeTerm::figures)
        .findFirst()
        .orElseThrow();
  }

  private List<String> flags(String finish) {
    return jobs()
        .filter(job -> finish.equals(job.item().finish()))
        .map(job -> SetupRequests.of(floor, job).value(DemoSetups.FLAGS))
        .toList();
  }

  private List<FitRule> reasons(ShotJob job, String rig) {
    return check.of(job, rig(rig)).reasons().stream().map(FitReason::rule).toList();
  }

  private static boolean spinsWhileTurning(ShotJob job) {
    return job.recipe().equals(DemoRecipes.SPIN_TURNING);
  }

  private Stream<ShotJob> jobs() {
    return demo.shotList().jobs().stream();
  }

  private ShotJob job(Predicate<ShotJob> wanted) {
    return jobs().filter(wanted).findFirst().orElseThrow();
  }

  private Rig rig(String id) {
    return floor.rig(id).orElseThrow();
  }
}
