package rigmorrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.EveryPlan;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** Where every plan can be tried, the search finds the best of them. */
class SmallOptimumTest {
  private static final int STEPS = 20_000;
  private static final int FEWEST_JOBS = 4;
  private static final int MOST_JOBS = 6;

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void isFoundOnTwoRigs(long seed) {
    Batch batch = RandomFloors.twoRigs(seed, FEWEST_JOBS, MOST_JOBS);
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences best = EveryPlan.of(compiled, new Timeline(compiled)).best();

    Plan plan = FloorSolver.solve(batch, SolverSettings.steps(STEPS, seed), SolveListener.NONE);

    Sequences found = RandomSequences.of(compiled, CheckedPlans.workable(batch, plan));
    CheckedPlans.workable(batch, CheckedPlans.decoded(compiled, batch, best));
    assertThat(List.of(found.hard(), found.medium(), found.soft()))
        .as("found %s, best %s", found.byRig(), best.byRig())
        .isEqualTo(List.of(best.hard(), best.medium(), best.soft()));
  }
}
