package rigmorrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.fixture.CheckedPlans;
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
    Sequences best = new EveryPlan(compiled).best();

    Plan plan = FloorSolver.solve(batch, SolverSettings.steps(STEPS, seed), SolveListener.NONE);

    Sequences found = RandomSequences.of(compiled, CheckedPlans.workable(batch, plan));
    CheckedPlans.workable(batch, CheckedPlans.decoded(compiled, batch, best));
    assertThat(List.of(found.hard(), found.medium(), found.soft()))
        .as("found %s, best %s", found.byRig(), best.byRig())
        .isEqualTo(List.of(best.hard(), best.medium(), best.soft()));
  }

  /** Tries every order of every choice of jobs on every rig. */
  private static final class EveryPlan {
    private final CompiledBatch batch;
    private final Timeline timeline;
    private final List<List<Integer>> byRig = new ArrayList<>();
    private final List<Integer> backlog = new ArrayList<>();
    private Sequences best;

    EveryPlan(CompiledBatch batch) {
      this.batch = batch;
      this.timeline = new Timeline(batch);
      for (int rig = 0; rig < batch.rigCount(); rig++) {
        byRig.add(new ArrayList<>());
      }
    }

    Sequences best() {
      place(0);
      return best;
    }

    /** Puts one job into every place among those before it: each plan comes once. */
    private void place(int job) {
      if (job == batch.jobCount()) {
        decode();
        return;
      }
      backlog.add(job);
      place(job + 1);
      backlog.remove(backlog.size() - 1);
      for (int rig = 0; rig < byRig.size(); rig++) {
        List<Integer> queue = byRig.get(rig);
        for (int at = 0; batch.fits(job, rig) && at <= queue.size(); at++) {
          queue.add(at, job);
          place(job + 1);
          queue.remove(at);
        }
      }
    }

    private void decode() {
      new Sequences(byRig, backlog, 0, 0, 0).decode(timeline);
      Sequences one = Sequences.of(batch, timeline);
      if (best == null || one.betterThan(best)) {
        best = one;
      }
    }
  }
}
