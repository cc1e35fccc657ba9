package rigmorrow.solver.search;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/** Scores a schedule by decoding it: the decoder is the only place that knows time. */
public final class ScheduleScore
    implements EasyScoreCalculator<FloorSchedule, HardMediumSoftLongScore> {
  @Override
  public HardMediumSoftLongScore calculateScore(FloorSchedule schedule) {
    return schedule.decode();
  }
}
