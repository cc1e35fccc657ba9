package rigmorrow.model.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RecipeBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.outside.OutsideCheck;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.shot.Hanging;

class CaptureModelTest {
  static final FrameRow TURNING = new FrameRow(0, 36, 360, true);
  static final FrameRow STOP_AND_GO = new FrameRow(0, 36, 360, false);

  /** Camera and light that take no time. */
  static final CameraReach INSTANT = new CameraReach(0, 1500, 60, 2000, 0, null, true, 5);

  /** Makes a step of 10 degrees in well under half a second; its jerk hardly counts. */
  private static final AxisLimits FAST_PLATE = new AxisLimits(360, 1500, 1e9, 0.1);

  static final CameraReach STROBE_055 = new CameraReach(0, 1500, 60, 2000, 0.5, 0.55, true, 5);

  /** A wide low book and a bottle of the same mass, both 100 mm off the centre. */
  private static final ItemBuilder BOOK = new ItemBuilder().size(300, 200, 30).offsetMm(100);

  private static final ItemBuilder BOTTLE = new ItemBuilder().size(70, 70, 350).offsetMm(100);

  @ParameterizedTest
  @MethodSource("rigmorrow.model.work.CaptureChecks#all")
  void theStrobeAndNotTheTableSetsThePaceOf36Frames(OutsideCheck check) {
    check.verify();
  }

  @Test
  void continuousLightDoesNotWaitForStrobes() {
    double camera = seconds(STROBE_055, continuous(STOP_AND_GO), new ItemBuilder());

    assertThat(camera).isCloseTo(36 * (0.01 + 0.5), within(0.01));
  }

  /**
   * The book may slide at 0.3 g (the slipperiest surface in question), the bottle tips at 35/175 =
   * 0.2 g. Speed goes with the root of that and acceleration with itself, so that a turn from rest
   * to rest, steady part and ramps alike, takes sqrt(1.5) times as long (Newton's second law).
   */
  @Test
  void aBottleTurnsSlowerThanABookAtTheSameOffset() {
    double settleAndExposure = 36 * (0.1 + 0.01);
    double bookSteps = seconds(INSTANT, continuous(STOP_AND_GO), BOOK) - settleAndExposure;
    double bottleSteps = seconds(INSTANT, continuous(STOP_AND_GO), BOTTLE) - settleAndExposure;
    double bookTurn = seconds(INSTANT, continuous(TURNING), BOOK) - 0.1;
    double bottleTurn = seconds(INSTANT, continuous(TURNING), BOTTLE) - 0.1;

    assertThat(bottleSteps / bookSteps).isCloseTo(Math.sqrt(1.5), within(0.001));
    assertThat(bottleTurn / bookTurn).isCloseTo(Math.sqrt(1.5), within(0.001));
    assertThat(terms(INSTANT, continuous(TURNING), BOTTLE))
        .singleElement()
        .extracting(TimeTerm::figures)
        .asString()
        .contains("item may slide or tip");
  }

  @Test
  void aHeldBottleIsNotSloweredByItsStand() {
    ItemBuilder held = new ItemBuilder().size(70, 70, 350).offsetMm(100).holder(0.5);

    assertThat(seconds(INSTANT, continuous(STOP_AND_GO), held))
        .isLessThan(seconds(INSTANT, continuous(STOP_AND_GO), BOTTLE));
  }

  /**
   * Damped pendulum: to a fraction f it takes ln(1/f) / delta damped periods; with delta 0.3, f
   * 0.05 and 1 m: 9.986 periods of 2.0064 s * 1.0011 = 20.06 s.
   */
  @Test
  void aHungItemWaitsUntilItsSwingHasDied() {
    ItemBuilder hung = new ItemBuilder().hanging(new Hanging(1, 1000, false));
    FrameRow four = new FrameRow(0, 4, 360, false);
    double turn = seconds(INSTANT, continuous(four), hung) / 4 - 0.01 - 20.06;
    double standing = seconds(INSTANT, continuous(four), new ItemBuilder()) / 4 - 0.01 - 0.1;

    assertThat(turn).isCloseTo(standing, within(0.02));
  }

  @Test
  void aLongerStringSwingsOnLonger() {
    ItemBuilder shortString = new ItemBuilder().hanging(new Hanging(1, 250, false));
    ItemBuilder longString = new ItemBuilder().hanging(new Hanging(1, 1000, false));

    assertThat(seconds(INSTANT, continuous(STOP_AND_GO), longString))
        .isGreaterThan(1.5 * seconds(INSTANT, continuous(STOP_AND_GO), shortString));
  }

  @Test
  void motionBlurSlowsALongExposure() {
    RecipeBuilder blurred = continuous(TURNING).exposureSeconds(0.02);

    assertThat(terms(INSTANT, blurred, new ItemBuilder()))
        .singleElement()
        .extracting(TimeTerm::figures)
        .asString()
        .contains("motion blur");
    // 1 px at 5 px/mm and a radius of 180.3 mm in 0.02 s: 10 mm/s, 0.0555 rad/s, 113.3 s a turn.
    assertThat(seconds(INSTANT, blurred, new ItemBuilder())).isCloseTo(113.3, within(0.5));
  }

  @Test
  void everyBracketIsExposedAndEveryElevationDrivenTo() {
    RecipeBuilder recipe = strobe().stills(new Still(30, 0)).exposureSeconds(0.1).focusBrackets(3);
    List<TimeTerm> terms = terms(STROBE_055, recipe, new ItemBuilder());

    assertThat(terms).hasSize(2);
    assertThat(terms.get(0).label()).isEqualTo("arm from 0 deg to 30 deg");
    assertThat(terms.get(1).seconds()).isCloseTo(3 * 0.1 + 3 * 0.55, within(1e-9));
  }

  static RecipeBuilder strobe(FrameRow... rows) {
    return new RecipeBuilder("spin").rows(rows).measuredCaptureSeconds(Map.of());
  }

  /** The exposure is short enough that blur never limits the turn. */
  static RecipeBuilder continuous(FrameRow... rows) {
    boolean turning = rows[0].turning();
    return strobe(rows).lighting(Lighting.CONTINUOUS).exposureSeconds(turning ? 0.0001 : 0.01);
  }

  static double seconds(CameraReach camera, RecipeBuilder recipe, ItemBuilder item) {
    return terms(camera, recipe, item).stream().mapToDouble(TimeTerm::seconds).sum();
  }

  private static List<TimeTerm> terms(CameraReach camera, RecipeBuilder recipe, ItemBuilder item) {
    var floor = FloorFixtures.floor().recipes(recipe.build()).build();
    var rig = new RigBuilder("table").camera(camera).plate(FAST_PLATE).build();
    return new WorkModel(floor)
        .of(new JobBuilder("j").item(item).build(), rig).terms().stream()
            .filter(term -> term.part().equals("capture"))
            .toList();
  }
}
