package rigmorrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.api.solver.SolverFactory;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** The planning library's own assertions on our solution, score and moves. */
class AnnealingTest {
  private static final int DECODES = 1500;

  @ParameterizedTest
  @ValueSource(longs = {2, 3, 5, 8, 13, 21, 34, 55})
  void keepsTheScoreRightUnderFullAssertion(long seed) {
    Batch batch = RandomFloors.withPins(seed, 14);
    CompiledBatch compiled = CompiledBatch.of(batch);
    FloorSchedule start =
        FloorSchedule.of(compiled, RandomSequences.of(compiled, new Random(seed), 4));
    double heat = StartTemperature.meanLoss(start, seed);

    FloorSchedule end =
        SolverFactory.<FloorSchedule>create(Annealing.config(heat, null, DECODES, seed, true))
            .buildSolver()
            .solve(start);

    Sequences asScored = end.sequencesAsScored();
    Sequences decodedAgain = end.sequences();
    assertThat(asScored)
        .usingRecursiveComparison()
        .ignoringFields("backlog") // Its order means nothing.
        .isEqualTo(decodedAgain);
    assertThat(asScored.backlog()).containsExactlyInAnyOrderElementsOf(decodedAgain.backlog());
    assertThat(start.sequences().betterThan(asScored)).isFalse();
    CheckedPlans.decoded(compiled, batch, asScored);
  }
}
