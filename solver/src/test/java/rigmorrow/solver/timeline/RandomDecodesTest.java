package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;

/** Whatever is decoded keeps every rule that times alone can keep. */
class RandomDecodesTest {
  private static final int ORDERS_PER_BATCH = 2;

  static LongStream seeds() {
    return LongStream.range(0, 320);
  }

  static LongStream fewSeeds() {
    return LongStream.range(1000, 1060);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void breaksOnlyWhatTheSearchWeighs(long seed) {
    Batch batch = RandomFloors.batch(seed);
    CompiledBatch compiled = CompiledBatch.of(batch);
    Random random = new Random(seed);
    Timeline reused = new Timeline(compiled);
    for (int i = 0; i < ORDERS_PER_BATCH; i++) {
      Sequences sequences = RandomSequences.of(compiled, random, 1 + random.nextInt(9));
      Plan plan = CheckedPlans.decoded(compiled, batch, reused, sequences);
      assertThat(plan.figures().hard()).isEqualTo(sequences.hard());
      assertThat(plan).isEqualTo(CheckedPlans.decoded(compiled, batch, sequences));
    }
  }

  @ParameterizedTest
  @MethodSource("fewSeeds")
  void givesTheSamePlanForTheSameBatch(long seed) {
    CompiledBatch once = CompiledBatch.of(RandomFloors.batch(seed));
    Batch drawnAgain = RandomFloors.batch(seed);
    CompiledBatch twice = CompiledBatch.of(drawnAgain);
    Sequences sequences = RandomSequences.of(once, new Random(seed), 6);

    assertThat(CheckedPlans.decoded(twice, drawnAgain, sequences))
        .isEqualTo(CheckedPlans.decoded(once, RandomFloors.batch(seed), sequences));
  }
}
