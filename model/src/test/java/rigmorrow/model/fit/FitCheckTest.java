package rigmorrow.model.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.FloorBuilder;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.Power;

class FitCheckTest {
  @Test
  void aPlainBoxFitsEverywhere() {
    JobFit fit = new FitCheck(FloorFixtures.floor().build()).of(new JobBuilder("box").build());

    assertThat(fit.rigs()).extracting(RigFit::rig).containsExactly("table", "platform");
    assertThat(fit.rigs()).allMatch(RigFit::fits);
    assertThat(fit.nearestMiss()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rigmorrow.model.fit.Misfit#all")
  void namesTheRuleWithTheFiguresNeededAndOffered(Misfit misfit) {
    assertThat(misfit.reasons())
        .extracting(FitReason::rule, FitReason::needed, FitReason::offered)
        .containsExactly(tuple(misfit.rule(), misfit.needed(), misfit.offered()));
    assertThat(misfit.reasons())
        .allSatisfy(
            reason -> assertThat(reason.shortfall()).isGreaterThan(0).isLessThanOrEqualTo(1));
  }

  @Test
  void everyRuleHasAMisfit() {
    assertThat(Misfit.all().map(Misfit::rule).collect(Collectors.toSet()))
        .isEqualTo(Set.of(FitRule.values()));
  }

  @Test
  void tellsEveryReasonAtOnce() {
    ItemBuilder item = new ItemBuilder().size(900, 200, 1300).power(new Power(230, 60, "C"));

    assertThat(reasons(FloorFixtures.floor(), new RigBuilder("table"), item))
        .extracting(FitReason::rule)
        .containsExactly(FitRule.BASE_ON_PLATE, FitRule.ITEM_HEIGHT, FitRule.EQUIPMENT);
  }

  @Test
  void tellsTheSteepestOfRowsAndStillsOnce() {
    FloorBuilder floor =
        FloorFixtures.floor()
            .recipes(
                FloorFixtures.spin()
                    .rows(new FrameRow(70, 8, 360, false))
                    .stills(new Still(80, 0))
                    .build());

    assertThat(reasons(floor, new RigBuilder("table"), new ItemBuilder()))
        .extracting(FitReason::rule, FitReason::needed)
        .containsExactly(tuple(FitRule.ELEVATION, "80 deg"));
  }

  @Test
  void aTopViewNeedsAFrameThatIsTallEnough() {
    FloorBuilder floor =
        FloorFixtures.floor().recipes(FloorFixtures.spin().stills(new Still(90, 0)).build());
    RigBuilder low = new RigBuilder("table").fitted(frame(300));

    assertThat(reasons(floor, new RigBuilder("table").fitted(frame(350)), new ItemBuilder()))
        .isEmpty();
    assertThat(reasons(floor, low, new ItemBuilder()))
        .extracting(FitReason::needed, FitReason::offered)
        .containsExactly(tuple("overhead frame of 350 mm clear height", "300 mm"));
  }

  @Test
  void whatHangsNeedsARotatorStrongAndLongEnough() {
    FloorBuilder floor = FloorFixtures.floor();
    RigBuilder bare = new RigBuilder("table").takesKit();
    ItemBuilder bag = new ItemBuilder().hanging(new Hanging(1, 900, false));
    ItemBuilder longBag = new ItemBuilder().hanging(new Hanging(1, 1600, false));

    assertThat(reasons(floor, new RigBuilder("table"), bag)).isEmpty();
    assertThat(reasons(floor, bare, bag)).extracting(FitReason::offered).containsExactly("none");
    assertThat(reasons(floor, new RigBuilder("table"), longBag))
        .extracting(FitReason::needed, FitReason::offered)
        .containsExactly(
            tuple("rotator for 1.0 kg, drop 1600 mm", "rotator for 15.0 kg, drop 1500 mm"));
  }

  @Test
  void aSocketNeedsVoltageWattsAndPlug() {
    RigBuilder rig =
        new RigBuilder("table")
            .fitted(new Equipment(Equipment.POWERED_SOCKET, null, null, 230, 100, "C F", null));

    assertThat(powered(rig, new Power(230, 100, "F"))).isEmpty();
    assertThat(powered(rig, new Power(230, 125, "F")))
        .singleElement()
        .satisfies(reason -> assertThat(reason.shortfall()).isCloseTo(0.2, within(1e-9)));
    assertThat(powered(rig, new Power(120, 100, "F")))
        .extracting(FitReason::shortfall)
        .containsExactly(1.0);
    assertThat(powered(rig, new Power(230, 100, "K")))
        .extracting(FitReason::shortfall)
        .containsExactly(1.0);
  }

  @Test
  void whatIsNotMeasuredIsAskedForInsteadOfGuessed() {
    JobBuilder job = new JobBuilder("j").item(new ItemBuilder().size(300, null, 150).massKg(null));
    FitCheck check = new FitCheck(FloorFixtures.floor().build());
    JobFit fit = check.of(job.build());

    assertThat(fit.needsMeasuring()).isTrue();
    assertThat(fit.unmeasured()).containsExactly("widthMm", "massKg");
    assertThat(fit.rigs()).isEmpty();
    assertThat(fit.fitsSomewhere()).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> check.of(job.build(), FloorFixtures.table().build()));
  }

  @Test
  void anEstimateIsMarkedAsOne() {
    JobBuilder job = new JobBuilder("j").item(new ItemBuilder().estimated(true));

    assertThat(new FitCheck(FloorFixtures.floor().build()).of(job.build()).estimated()).isTrue();
  }

  @Test
  void theNearestMissHasFewestReasons() {
    RigBuilder one = new RigBuilder("one").offers(Map.of("background", Set.of("grey")));
    RigBuilder two =
        new RigBuilder("two").camera(new CameraReach(80, 1500, 60, 560, 0.5, 0.55, true, 5));

    assertThat(nearest(two, one)).isEqualTo("one");
  }

  @Test
  void ofEquallyManyReasonsTheSmallerShortfallIsNearer() {
    RigBuilder far = new RigBuilder("far").camera(background(300));
    RigBuilder near = new RigBuilder("near").camera(background(500));

    assertThat(nearest(far, near)).isEqualTo("near");
  }

  private static CameraReach background(int widthMm) {
    return new CameraReach(0, 1500, 60, widthMm, 0.5, 0.55, true, 5);
  }

  private static String nearest(RigBuilder one, RigBuilder other) {
    FloorBuilder floor = FloorFixtures.floor().rigs(one.build(), other.build());
    return new FitCheck(floor.build())
        .of(new JobBuilder("box").build())
        .nearestMiss()
        .orElseThrow()
        .rig();
  }

  private static Equipment frame(int heightMm) {
    return new Equipment(Equipment.OVERHEAD_FRAME, null, null, null, null, null, heightMm);
  }

  private static List<FitReason> powered(RigBuilder rig, Power power) {
    return reasons(FloorFixtures.floor(), rig, new ItemBuilder().power(power));
  }

  private static List<FitReason> reasons(FloorBuilder floor, RigBuilder rig, ItemBuilder item) {
    return new FitCheck(floor.build())
        .of(new JobBuilder("box").item(item).build(), rig.build())
        .reasons();
  }
}
