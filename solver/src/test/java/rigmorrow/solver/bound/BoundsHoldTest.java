package rigmorrow.solver.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.fixture.EveryPlan;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Repair;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** No workable plan is below a bound that is told for what it leaves out. */
class BoundsHoldTest {
  private static final int ORDERS_PER_BATCH = 4;
  private static final long STEPS = 1_500;

  static LongStream seeds() {
    return LongStream.range(0, 400);
  }

  static LongStream searchedSeeds() {
    return LongStream.range(2000, 2080);
  }

  static LongStream smallSeeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void forWhateverIsDecoded(long seed) {
    CompiledBatch batch = CompiledBatch.of(RandomFloors.batch(seed));
    LowerBound bound = LowerBound.of(batch);
    Random random = new Random(seed);
    Timeline timeline = new Timeline(batch);
    holds(batch, bound, new Dispatcher(batch).best(() -> false));
    for (int i = 0; i < ORDERS_PER_BATCH; i++) {
      RandomSequences.of(batch, random, 1 + random.nextInt(9)).decode(timeline);
      holds(batch, bound, new Repair(batch, timeline).untilWorkable());
    }
  }

  @ParameterizedTest
  @MethodSource("searchedSeeds")
  void forWhatTheSearchFinds(long seed) {
    Batch batch = RandomFloors.batch(seed);
    SolverSettings settings = SolverSettings.steps(STEPS, seed);
    PlanFigures found = FloorSolver.solve(batch, settings, SolveListener.NONE).figures();
    if (found.hard() == 0) {
      holds(LowerBound.of(CompiledBatch.of(batch)), found);
    }
  }

  /** Each part has its own best plan, which no search looks for. */
  @ParameterizedTest
  @MethodSource("smallSeeds")
  void forEveryPlanThereIs(long seed) {
    CompiledBatch batch = CompiledBatch.of(RandomFloors.twoRigs(seed, 2, 5));
    LowerBound bound = LowerBound.of(batch);
    Timeline timeline = new Timeline(batch);
    PlanWriter writer = new PlanWriter(batch, timeline);
    EveryPlan.of(batch, timeline)
        .forEach(
            one -> {
              if (one.hard() == 0) {
                holds(bound, writer.figures(one.backlog()));
              }
            });
  }

  private static void holds(CompiledBatch batch, LowerBound bound, Sequences sequences) {
    if (sequences.hard() == 0) {
      Timeline timeline = new Timeline(batch);
      sequences.decode(timeline);
      holds(bound, new PlanWriter(batch, timeline).figures(sequences.backlog()));
    }
  }

  private static void holds(LowerBound bound, PlanFigures figures) {
    PlanBounds bounds = bound.among(figures.leftOutPoints());
    assertThat(
            List.of(
                figures.leftOutPoints() - bounds.leftOutPoints(),
                figures.latenessPoints() - bounds.latenessPoints(),
                figures.changeoverPoints() - bounds.changeoverPoints(),
                figures.finishingPoints() - bounds.finishingPoints(),
                figures.softPoints() - bounds.softPoints()))
        .as("%s held against %s", figures, bounds)
        .allMatch(above -> above >= 0);
  }
}
