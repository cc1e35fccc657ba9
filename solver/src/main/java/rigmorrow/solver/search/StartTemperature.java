package rigmorrow.solver.search;

import java.util.Random;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.Move;

/**
 * How hot simulated annealing starts. The cost of a typical move grows with the day, so it is
 * measured: a few hundred moves are tried on the start plan.
 */
final class StartTemperature {
  private static final int SAMPLES = 300;

  private StartTemperature() {}

  /**
   * Mean soft loss of the sampled moves that lose something soft and break nothing, at least 1.
   *
   * @param seed of the sample
   */
  static double meanLoss(FloorSchedule schedule, long seed) {
    FloorSchedule trial = new FloorSchedule.QueueCloner().cloneSolution(schedule);
    ScoreDirector<FloorSchedule> director = new QuietDirector(trial);
    SetupAwareMoves.Draw draw = new SetupAwareMoves.Draw(trial, new Random(seed));
    HardMediumSoftLongScore before = trial.decode();
    double sum = 0;
    int losses = 0;
    for (int i = 0; i < SAMPLES && draw.hasNext(); i++) {
      Move<FloorSchedule> undo = draw.next().doMove(director);
      HardMediumSoftLongScore after = trial.decode();
      long loss = before.softScore() - after.softScore();
      if (after.hardScore() >= before.hardScore()
          && after.mediumScore() >= before.mediumScore()
          && loss > 0) {
        sum += loss;
        losses++;
      }
      undo.doMoveOnly(director);
    }
    return losses == 0 ? 1 : Math.max(1, sum / losses);
  }
}
