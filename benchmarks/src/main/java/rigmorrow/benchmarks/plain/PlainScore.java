package rigmorrow.benchmarks.plain;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;

/** Scores a schedule with the one decoder. */
public final class PlainScore
    implements EasyScoreCalculator<PlainSchedule, HardMediumSoftLongScore> {
  @Override
  public HardMediumSoftLongScore calculateScore(PlainSchedule schedule) {
    return schedule.decode();
  }
}
