package rigmorrow.model.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class LiftingEquationTest {

  @ParameterizedTest
  @MethodSource("rigmorrow.model.lifting.LiftingChecks#examples")
  void matchesTheWorkedExamples(OutsideCheck check) {
    check.verify();
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
    LiftingResult origin = LiftingEquation.assess(LiftingChecks.PACKAGE_INSPECTION, 12);
    LiftingResult worseEnd =
        LiftingEquation.assess(LiftingChecks.controlled(LiftingChecks.PACKAGE_INSPECTION), 12);
    assertThat(worseEnd.recommendedWeightLimitKg()).isLessThan(origin.recommendedWeightLimitKg());
  }

  @Test
  void countsTheOriginWhereItIsTheWorseEnd() {
    LiftingTask lowering =
        new LiftingTask(
            LiftingChecks.PACKAGE_INSPECTION.destination(),
            LiftingChecks.PACKAGE_INSPECTION.origin(),
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
        .isThrownBy(() -> LiftingEquation.assess(LiftingChecks.PACKAGE_INSPECTION, 0))
        .withMessageStartingWith("load in kg is 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LiftingResult(1, 1, 1, 1.1, 1, 1, 1))
        .withMessage("distance multiplier is 1.1; accepted: a number from 0 to 1");
  }
}
