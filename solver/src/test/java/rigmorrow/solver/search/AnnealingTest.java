package rigmorrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.EnvironmentMode;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** The planning library's own assertions on our solution, score and phase. */
class AnnealingTest {
  private static final int DECODES = 1500;

  @ParameterizedTest
  @ValueSource(longs = {2, 3, 5, 8, 13, 21, 34, 55})
  void keepsTheScoreRightUnderFullAssertion(long seed) {
    Batch batch = RandomFloors.withPins(seed, 14);
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences start = RandomSequences.of(compiled, new Random(seed), 4);
    List<Sequences> told = new ArrayList<>();
    Annealing annealing = new Annealing(0, null, DECODES, seed, () -> false, told::add);

    FloorSchedule end =
        SolverFactory.<FloorSchedule>create(Searcher.config(annealing, EnvironmentMode.FULL_ASSERT))
            .buildSolver()
            .solve(FloorSchedule.of(compiled, start));

    Sequences found = end.sequences();
    assertThat(start.betterThan(found)).isFalse();
    CheckedPlans.decoded(compiled, batch, found);
    Sequences before = start;
    for (Sequences better : told) {
      assertThat(better.betterThan(before)).isTrue();
      before = better;
    }
    if (!told.isEmpty()) {
      // What was told last carries the score that a decode of its own gives.
      Sequences last = told.get(told.size() - 1);
      assertThat(last.hard()).isEqualTo(found.hard());
      assertThat(last.medium()).isEqualTo(found.medium());
      assertThat(last.soft()).isEqualTo(found.soft());
      assertThat(last.byRig()).isEqualTo(found.byRig());
    }
  }
}
