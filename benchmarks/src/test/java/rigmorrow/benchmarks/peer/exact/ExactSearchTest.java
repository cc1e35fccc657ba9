package rigmorrow.benchmarks.peer.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.benchmarks.peer.CpSatPeer;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

class ExactSearchTest {
  private static final SolverSettings LONG = SolverSettings.steps(300_000, 1);

  static LongStream seeds() {
    return LongStream.range(200, 212);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void findsThePlanThatTryingEverythingFinds(long seed) {
    Batch batch = SmallDays.draw(seed, 5, 7);
    CompiledBatch compiled = CompiledBatch.of(batch);

    Plan plan = new CpSatPeer().plan(batch, LONG, SolveListener.NONE);

    assertThat(PlanChecker.check(batch, plan)).isEmpty();
    assertThat(plan.origin().stopped()).as("ends with a proof").isEqualTo("done");
    Sequences found = SmallOptimumTest.sequences(compiled, plan);
    Sequences best = new EveryAnswer(compiled, found, true).best();
    assertThat(SmallOptimumTest.score(found))
        .as("%s, found %s, best %s", plan.origin(), found, best)
        .isEqualTo(SmallOptimumTest.score(best));
  }
}
