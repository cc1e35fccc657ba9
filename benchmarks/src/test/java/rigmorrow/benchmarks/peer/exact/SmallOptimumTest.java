package rigmorrow.benchmarks.peer.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** On days where it can be shown what is best, the search finds it. */
class SmallOptimumTest {
  private static final long DECODES = 100_000;

  static LongStream seeds() {
    return LongStream.range(0, 30);
  }

  static LongStream fewSeeds() {
    return LongStream.range(100, 112);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void isFoundByTheSearch(long seed) {
    Batch batch = SmallDays.draw(seed, 8, 10);
    CompiledBatch compiled = CompiledBatch.of(batch);
    Plan plan = FloorSolver.solve(batch, SolverSettings.steps(DECODES, 1), SolveListener.NONE);
    assertThat(PlanChecker.check(batch, plan)).isEmpty();
    Sequences found = sequences(compiled, plan);
    Sequences best = new EveryAnswer(compiled, found, true).best();
    assertThat(score(found)).as("found %s, best %s", found, best).isEqualTo(score(best));
  }

  @ParameterizedTest
  @MethodSource("fewSeeds")
  void isTheSameWhateverIsNotTried(long seed) {
    CompiledBatch compiled = CompiledBatch.of(SmallDays.draw(seed, 5, 6));
    Sequences none = nothing(compiled);
    EveryAnswer some = new EveryAnswer(compiled, none, true);
    EveryAnswer all = new EveryAnswer(compiled, none, false);
    assertThat(score(some.best())).isEqualTo(score(all.best()));
    assertThat(some.decodes()).isLessThan(all.decodes());
  }

  static List<Long> score(Sequences one) {
    return List.of(one.hard(), one.medium(), one.soft());
  }

  static Sequences nothing(CompiledBatch batch) {
    List<List<Integer>> empty = new ArrayList<>();
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      empty.add(List.of());
    }
    return decoded(batch, empty);
  }

  static Sequences sequences(CompiledBatch batch, Plan plan) {
    Map<String, Integer> numbers = new HashMap<>();
    for (int job = 0; job < batch.jobCount(); job++) {
      numbers.put(batch.jobId(job), job);
    }
    List<List<Integer>> byRig = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      byRig.add(rig.jobs().stream().map(PlannedJob::job).map(numbers::get).toList());
    }
    return decoded(batch, byRig);
  }

  private static Sequences decoded(CompiledBatch batch, List<List<Integer>> byRig) {
    Timeline timeline = new Timeline(batch);
    new Sequences(byRig, List.of(), 0, 0, 0).decode(timeline);
    return Sequences.of(batch, timeline);
  }
}
