package rigmorrow.model.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class FrequencyTableTest {

  private static final double BELOW_COLUMN_CHANGE_CM = 74.9;
  private static final double COLUMN_CHANGE_CM = 75;

  @ParameterizedTest
  @MethodSource("rigmorrow.model.lifting.LiftingChecks#frequencies")
  void matchesTheManual(OutsideCheck check) {
    check.verify();
  }

  @Test
  void countsRareLiftsAsOneInFiveMinutes() {
    assertThat(FrequencyTable.multiplier(0, LiftDuration.OVER_2_TO_8_HOURS, 50)).isEqualTo(0.85);
    assertThat(FrequencyTable.multiplier(0.1, LiftDuration.OVER_2_TO_8_HOURS, 50)).isEqualTo(0.85);
  }

  @Test
  void interpolatesBetweenTwoRows() {
    assertThat(FrequencyTable.multiplier(0.35, LiftDuration.UP_TO_1_HOUR, 50))
        .isCloseTo(0.985, within(1e-12));
  }

  @Test
  void allowsNothingBeyondTheLastRowThatIsNotZero() {
    assertThat(FrequencyTable.multiplier(8.1, LiftDuration.OVER_2_TO_8_HOURS, 50)).isZero();
    assertThat(FrequencyTable.multiplier(12.1, LiftDuration.UP_TO_1_HOUR, 50)).isZero();
    assertThat(FrequencyTable.multiplier(15.1, LiftDuration.UP_TO_1_HOUR, 80)).isZero();
  }

  @ParameterizedTest
  @EnumSource
  void neverGrowsWithTheFrequency(LiftDuration duration) {
    for (double verticalCm : new double[] {BELOW_COLUMN_CHANGE_CM, COLUMN_CHANGE_CM}) {
      double before = 1;
      for (int tenth = 0; tenth <= 200; tenth++) {
        double multiplier = FrequencyTable.multiplier(tenth / 10.0, duration, verticalCm);
        assertThat(multiplier).as("%s lifts per 10 min", tenth).isBetween(0.0, before);
        before = multiplier;
      }
    }
  }
}
