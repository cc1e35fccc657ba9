package rigmorrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** How often the search starts anew, and from what. */
class RoundsTest {
  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @CsvSource({"2999, 10, 1", "6000, 10, 2", "100000, 10, 33", "1e12, 10, 200", "1e6, 150, 1"})
  void areManyWhereTheEffortIsMoreThanOneCoolingCanUse(double decodes, int jobs, int rounds) {
    assertThat(Rounds.count(decodes, jobs)).isEqualTo(rounds);
  }

  @Test
  void coolEachFromTheStart() {
    assertThat(Rounds.spentOfRound(0.25, 4)).isZero();
    assertThat(Rounds.number(0.25, 4)).isEqualTo(1);
    assertThat(Rounds.spentOfRound(0.375, 4)).isEqualTo(0.5);
    assertThat(Rounds.spentOfRound(0.375, 1)).isEqualTo(0.375);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void startFromAPlanWithoutManyOfItsJobsButWithEveryPin(long seed) {
    CompiledBatch batch = CompiledBatch.of(RandomFloors.withPins(seed, 30));
    Sequences plan = RandomSequences.of(batch, new Random(seed), 10);

    Sequences torn = Ruin.of(plan, batch, new SplittableRandom(seed));

    List<Integer> jobs = new ArrayList<>(torn.backlog());
    torn.byRig().forEach(jobs::addAll);
    assertThat(jobs).hasSize(batch.jobCount()).doesNotHaveDuplicates();
    assertThat(batch.pinnedAmong(torn.backlog())).isEqualTo(batch.pinnedAmong(plan.backlog()));
    assertThat(torn.backlog()).containsAll(plan.backlog());
    assertThat(torn.medium())
        .isEqualTo(torn.backlog().stream().mapToLong(batch::leftOutWeight).sum());
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      List<Integer> kept = new ArrayList<>(plan.byRig().get(rig));
      kept.retainAll(torn.byRig().get(rig));
      assertThat(torn.byRig().get(rig)).isEqualTo(kept);
    }
  }
}
