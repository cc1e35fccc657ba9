package rigmorrow.solver.search;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.random.RandomType;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** The configuration of one round of simulated annealing. */
final class Annealing {
  private Annealing() {}

  /**
   * @param softTemperature in soft points times 60, at least 1
   * @param time of the round; null for none
   * @param decodes of the round; 0 for none
   * @param seed of the random numbers
   */
  static SolverConfig config(
      double softTemperature, @Nullable Duration time, long decodes, long seed, boolean asserting) {
    TerminationConfig termination = new TerminationConfig();
    if (time != null) {
      termination.setMillisecondsSpentLimit(Math.max(1, time.toMillis()));
    }
    if (decodes > 0) {
      termination.setScoreCalculationCountLimit(decodes);
    }
    // Nothing hard or medium is ever given up for something soft: their temperature is 0.
    String temperature = "0hard/0medium/" + Math.max(1, Math.round(softTemperature)) + "soft";
    LocalSearchPhaseConfig phase =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SetupAwareMoves.class))
            .withAcceptorConfig(
                new LocalSearchAcceptorConfig()
                    .withSimulatedAnnealingStartingTemperature(temperature))
            .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    return new SolverConfig()
        .withSolutionClass(FloorSchedule.class)
        .withEntityClasses(RigQueue.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(ScheduleScore.class))
        .withEnvironmentMode(asserting ? EnvironmentMode.FULL_ASSERT : EnvironmentMode.REPRODUCIBLE)
        .withRandomType(RandomType.JDK)
        .withRandomSeed(seed)
        .withTerminationConfig(termination)
        .withPhaseList(List.of(phase));
  }
}
