package rigmorrow.model.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FrequencyTableTest {

  private static final double BELOW_COLUMN_CHANGE_CM = 74.9;
  private static final double COLUMN_CHANGE_CM = 75;

  /**
   * Table 5 of NIOSH 94-110 (revised 2021), page 15, by row as printed; 16 stands for its row of
   * more than 15.
   */
  @ParameterizedTest
  @CsvSource({
    "0.2, 1.00, 1.00, .95, .95, .85, .85",
    "0.5, .97, .97, .92, .92, .81, .81",
    "1, .94, .94, .88, .88, .75, .75",
    "2, .91, .91, .84, .84, .65, .65",
    "3, .88, .88, .79, .79, .55, .55",
    "4, .84, .84, .72, .72, .45, .45",
    "5, .80, .80, .60, .60, .35, .35",
    "6, .75, .75, .50, .50, .27, .27",
    "7, .70, .70, .42, .42, .22, .22",
    "8, .60, .60, .35, .35, .18, .18",
    "9, .52, .52, .30, .30, .00, .15",
    "10, .45, .45, .26, .26, .00, .13",
    "11, .41, .41, .00, .23, .00, .00",
    "12, .37, .37, .00, .21, .00, .00",
    "13, .00, .34, .00, .00, .00, .00",
    "14, .00, .31, .00, .00, .00, .00",
    "15, .00, .28, .00, .00, .00, .00",
    "16, .00, .00, .00, .00, .00, .00"
  })
  void matchesTable5(
      double liftsPerMinute,
      double shortLow,
      double shortHigh,
      double moderateLow,
      double moderateHigh,
      double longLow,
      double longHigh) {
    assertRow(liftsPerMinute, LiftDuration.UP_TO_1_HOUR, shortLow, shortHigh);
    assertRow(liftsPerMinute, LiftDuration.OVER_1_TO_2_HOURS, moderateLow, moderateHigh);
    assertRow(liftsPerMinute, LiftDuration.OVER_2_TO_8_HOURS, longLow, longHigh);
  }

  private static void assertRow(
      double liftsPerMinute, LiftDuration duration, double low, double high) {
    assertThat(FrequencyTable.multiplier(liftsPerMinute, duration, BELOW_COLUMN_CHANGE_CM))
        .isEqualTo(low);
    assertThat(FrequencyTable.multiplier(liftsPerMinute, duration, COLUMN_CHANGE_CM))
        .isEqualTo(high);
  }

  @Test
  void countsRareLiftsAsOneInFiveMinutes() {
    assertThat(FrequencyTable.multiplier(0, LiftDuration.OVER_2_TO_8_HOURS, 50)).isEqualTo(0.85);
    assertThat(FrequencyTable.multiplier(0.1, LiftDuration.OVER_2_TO_8_HOURS, 50)).isEqualTo(0.85);
  }

  /**
   * The manual interpolates between the rows of 2 and 3 for 2.4 lifts a minute (example 7, pages 56
   * and 57).
   */
  @Test
  void interpolatesBetweenTwoRows() {
    assertThat(FrequencyTable.multiplier(2.4, LiftDuration.UP_TO_1_HOUR, 50))
        .isCloseTo(0.91 - 0.4 * 0.03, within(1e-12));
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
