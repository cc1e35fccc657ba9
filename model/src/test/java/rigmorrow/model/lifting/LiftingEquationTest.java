package rigmorrow.model.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks against the examples of NIOSH publication 94-110 (revised 2021). */
class LiftingEquationTest {

  /** The tables print two decimals; a 5 in the third is rounded up. */
  private static final Offset<Double> TWO_DECIMALS = within(0.005 + 1e-9);

  private static final double LOAD_CONSTANT_LB = 51;

  /** Example 4, package inspection (pages 44 to 46), in metric units. */
  private static final LiftingTask PACKAGE_INSPECTION =
      packageInspection(new HandPosition(25, 55, 0), new HandPosition(50, 150, 0));

  /** The same example in inches; the horizontal 20 in at the destination is from memory. */
  private static final LiftingTask PACKAGE_INSPECTION_IN_INCHES =
      packageInspection(inches(10, 22), inches(20, 59));

  private static LiftingTask packageInspection(HandPosition origin, HandPosition destination) {
    return new LiftingTask(origin, destination, false, 3, LiftDuration.UP_TO_1_HOUR, Coupling.FAIR);
  }

  /** The manual's two sets of formulas agree where an inch is taken as 2.5 cm. */
  private static HandPosition inches(double horizontal, double vertical) {
    return new HandPosition(2.5 * horizontal, 2.5 * vertical, 0);
  }

  private static LiftingTask controlled(LiftingTask task) {
    return new LiftingTask(
        task.origin(),
        task.destination(),
        true,
        task.liftsPerMinute(),
        task.duration(),
        task.coupling());
  }

  @Test
  void matchesThePackageInspectionExampleInKilograms() {
    LiftingResult result = LiftingEquation.assess(PACKAGE_INSPECTION, 12);
    assertThat(result.horizontalMultiplier()).isEqualTo(1);
    assertThat(result.verticalMultiplier()).isCloseTo(0.94, TWO_DECIMALS);
    assertThat(result.distanceMultiplier()).isCloseTo(0.87, TWO_DECIMALS);
    assertThat(result.asymmetricMultiplier()).isEqualTo(1);
    assertThat(result.frequencyMultiplier()).isEqualTo(0.88);
    assertThat(result.couplingMultiplier()).isEqualTo(0.95);
    assertThat(result.recommendedWeightLimitKg()).isCloseTo(15.7, within(0.05));
    assertThat(result.liftingIndex()).isCloseTo(0.76, within(0.01));
  }

  /** Printed 34.9 lb from rounded multipliers; 34.8 unrounded. */
  @Test
  void matchesThePackageInspectionExampleInPounds() {
    assertThat(poundsOf(LiftingEquation.assess(PACKAGE_INSPECTION_IN_INCHES, 12)))
        .isCloseTo(34.8, within(0.05));
  }

  /** Printed 15.2 lb from rounded multipliers; 15.3 unrounded. */
  @Test
  void matchesThePackageInspectionExampleAtTheDestination() {
    LiftingResult result = LiftingEquation.assess(controlled(PACKAGE_INSPECTION_IN_INCHES), 12);
    assertThat(result.horizontalMultiplier()).isEqualTo(0.5);
    assertThat(result.couplingMultiplier()).isEqualTo(1);
    assertThat(poundsOf(result)).isCloseTo(15.3, within(0.05));
  }

  /**
   * H 20, V 6, D 16 in, coupling 0.95, rare lifts: printed 18.4 lb from rounded multipliers; 18.5
   * unrounded.
   */
  @Test
  void matchesTheExampleOfALowLiftAtArmsLength() {
    LiftingTask task =
        new LiftingTask(
            inches(20, 6), inches(20, 22), false, 0.2, LiftDuration.UP_TO_1_HOUR, Coupling.FAIR);
    assertThat(poundsOf(LiftingEquation.assess(task, 10))).isCloseTo(18.5, within(0.05));
  }

  /** The limit as a share of the load constant is the same in both unit systems of the manual. */
  private static double poundsOf(LiftingResult result) {
    return result.recommendedWeightLimitKg() / LiftingEquation.LOAD_CONSTANT_KG * LOAD_CONSTANT_LB;
  }

  @Test
  void allowsTheWholeLoadConstantUnderTheBestConditions() {
    LiftingTask task = atOrigin(new HandPosition(20, 75, 0), 85);
    LiftingResult result = LiftingEquation.assess(task, 23);
    assertThat(result.recommendedWeightLimitKg()).isCloseTo(23, within(1e-9));
    assertThat(result.liftingIndex()).isCloseTo(1, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"63.1, 75, 0, 80", "25, 175.1, 0, 150", "25, 0, 0, 175.1", "25, 75, 135.1, 80"})
  void allowsNothingBeyondALimit(
      double horizontalCm, double verticalCm, double asymmetryDegrees, double destinationCm) {
    LiftingTask task =
        atOrigin(new HandPosition(horizontalCm, verticalCm, asymmetryDegrees), destinationCm);
    LiftingResult result = LiftingEquation.assess(task, 0.1);
    assertThat(result.recommendedWeightLimitKg()).isZero();
    assertThat(result.liftingIndex()).isInfinite();
  }

  private static LiftingTask atOrigin(HandPosition origin, double destinationCm) {
    return new LiftingTask(
        origin,
        new HandPosition(25, destinationCm, 0),
        false,
        0.1,
        LiftDuration.UP_TO_1_HOUR,
        Coupling.GOOD);
  }

  @Test
  void looksAtTheDestinationOnlyForControlledPlacement() {
    LiftingResult origin = LiftingEquation.assess(PACKAGE_INSPECTION, 12);
    LiftingResult worseEnd = LiftingEquation.assess(controlled(PACKAGE_INSPECTION), 12);
    assertThat(worseEnd.recommendedWeightLimitKg()).isLessThan(origin.recommendedWeightLimitKg());
  }

  @Test
  void countsTheOriginWhereItIsTheWorseEnd() {
    LiftingTask lowering =
        new LiftingTask(
            PACKAGE_INSPECTION.destination(),
            PACKAGE_INSPECTION.origin(),
            true,
            3,
            LiftDuration.UP_TO_1_HOUR,
            Coupling.FAIR);
    assertThat(LiftingEquation.assess(lowering, 12).horizontalMultiplier()).isEqualTo(0.5);
    assertThat(lowering.travelCm()).isEqualTo(95);
  }

  /**
   * The frequency column follows the height at the origin, also at the destination (page 15 of the
   * manual).
   */
  @Test
  void takesTheFrequencyColumnOfTheOriginAtTheDestination() {
    LiftingTask task =
        new LiftingTask(
            new HandPosition(25, 50, 0),
            new HandPosition(60, 100, 0),
            true,
            9,
            LiftDuration.OVER_2_TO_8_HOURS,
            Coupling.GOOD);
    assertThat(LiftingEquation.assess(task, 1).frequencyMultiplier()).isZero();
  }

  @Test
  void keepsEveryMultiplierWithinZeroAndOne() {
    Random random = new Random(94_110);
    for (int draw = 0; draw < 5_000; draw++) {
      LiftingTask task =
          new LiftingTask(
              randomHands(random),
              randomHands(random),
              random.nextBoolean(),
              random.nextDouble() * 18,
              LiftDuration.values()[random.nextInt(3)],
              Coupling.values()[random.nextInt(3)]);
      LiftingResult result = LiftingEquation.assess(task, 1);
      assertThat(result.recommendedWeightLimitKg())
          .as("%s", task)
          .isBetween(0.0, LiftingEquation.LOAD_CONSTANT_KG);
    }
  }

  private static HandPosition randomHands(Random random) {
    return new HandPosition(
        random.nextDouble() * 70, random.nextDouble() * 190, random.nextDouble() * 150);
  }

  @Test
  void refusesNumbersOutsideTheirBounds() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new HandPosition(-1, 75, 0))
        .withMessageStartingWith("horizontal distance of the hands in cm is -1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new HandPosition(25, Double.NaN, 0))
        .withMessageStartingWith("height of the hands in cm is NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new HandPosition(25, 75, -1))
        .withMessageStartingWith("asymmetry in degrees is -1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new LiftingTask(
                    new HandPosition(25, 75, 0),
                    new HandPosition(25, 75, 0),
                    true,
                    -1,
                    LiftDuration.UP_TO_1_HOUR,
                    Coupling.GOOD))
        .withMessageStartingWith("lifts per minute is -1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LiftingEquation.assess(PACKAGE_INSPECTION, 0))
        .withMessageStartingWith("load in kg is 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LiftingResult(1, 1, 1, 1.1, 1, 1, 1))
        .withMessage("distance multiplier is 1.1; accepted: a number from 0 to 1");
  }
}
