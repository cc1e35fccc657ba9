package rigmorrow.model.lifting;

/**
 * The frequency multiplier FM: Table 5 of NIOSH publication 94-110 (revised 2021, page 15), which
 * is in the public domain.
 *
 * <p>Between two rows the multiplier is interpolated linearly, as the manual asks (section 1.3).
 * Below 0.2 lifts per minute the row of 0.2 holds. The manual is silent about frequencies between
 * the last row that is not zero and the row of zeros below it; as it also says that lifting above
 * the maximum frequency gives a limit of zero, they count as zero here.
 */
final class FrequencyTable {

  private static final double[] LIFTS_PER_MINUTE = {
    0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15
  };

  private static final double[] UP_TO_1_HOUR_LOW = {
    1.00, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, 0, 0, 0
  };
  private static final double[] UP_TO_1_HOUR_HIGH = {
    1.00, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, .34, .31, .28
  };
  private static final double[] OVER_1_TO_2_HOURS_LOW = {
    .95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, 0, 0, 0, 0, 0
  };
  private static final double[] OVER_1_TO_2_HOURS_HIGH = {
    .95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, .23, .21, 0, 0, 0
  };
  private static final double[] OVER_2_TO_8_HOURS_LOW = {
    .85, .81, .75, .65, .55, .45, .35, .27, .22, .18, 0, 0, 0, 0, 0, 0, 0
  };
  private static final double[] OVER_2_TO_8_HOURS_HIGH = {
    .85, .81, .75, .65, .55, .45, .35, .27, .22, .18, .15, .13, 0, 0, 0, 0, 0
  };

  private FrequencyTable() {}

  /**
   * Returns FM, from 0 to 1.
   *
   * @param liftsPerMinute lifts per minute, averaged over 15 minutes; 0 or more
   * @param originVerticalCm height of the hands where the lift starts, also when its end is
   *     assessed
   */
  static double multiplier(double liftsPerMinute, LiftDuration duration, double originVerticalCm) {
    double[] column = column(duration, originVerticalCm < Coupling.COLUMN_CHANGE_CM);
    if (liftsPerMinute <= LIFTS_PER_MINUTE[0]) {
      return column[0];
    }
    for (int row = 1; row < LIFTS_PER_MINUTE.length; row++) {
      if (liftsPerMinute <= LIFTS_PER_MINUTE[row]) {
        return interpolate(column, row, liftsPerMinute);
      }
    }
    return 0;
  }

  private static double interpolate(double[] column, int row, double liftsPerMinute) {
    if (column[row] == 0) {
      return 0;
    }
    double share =
        (liftsPerMinute - LIFTS_PER_MINUTE[row - 1])
            / (LIFTS_PER_MINUTE[row] - LIFTS_PER_MINUTE[row - 1]);
    return column[row - 1] * (1 - share) + column[row] * share;
  }

  private static double[] column(LiftDuration duration, boolean low) {
    return switch (duration) {
      case UP_TO_1_HOUR -> low ? UP_TO_1_HOUR_LOW : UP_TO_1_HOUR_HIGH;
      case OVER_1_TO_2_HOURS -> low ? OVER_1_TO_2_HOURS_LOW : OVER_1_TO_2_HOURS_HIGH;
      case OVER_2_TO_8_HOURS -> low ? OVER_2_TO_8_HOURS_LOW : OVER_2_TO_8_HOURS_HIGH;
    };
  }
}
