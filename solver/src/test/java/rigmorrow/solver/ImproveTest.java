package rigmorrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** Planning again from a plan that there is. */
class ImproveTest {
  private static final int STEPS = 300;
  private static final PlanOrigin BY_HAND = new PlanOrigin("hand", 0, 1, 0, "done");

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  /** The jumbled orders mostly break rules; some are workable. */
  @ParameterizedTest
  @MethodSource("seeds")
  void endsWithNothingWorseThanThePlanThereIs(long seed) {
    Batch batch = RandomFloors.batch(seed);
    Orders orders = jumbled(batch, seed);
    Cost before = new HandTimer(batch.floor()).time(batch, orders, BY_HAND).cost();

    Plan again =
        FloorSolver.improve(batch, orders, SolverSettings.steps(STEPS, seed), SolveListener.NONE);

    CheckedPlans.weighed(batch, again);
    Cost after = new HandTimer(batch.floor()).time(batch, Orders.of(batch, again), BY_HAND).cost();
    assertThat(Cost.CHEAPEST.compare(after, before)).isLessThanOrEqualTo(0);
    if (before.hard() > 0) {
      Plan dispatched = FloorSolver.dispatch(batch);
      Cost ruled =
          new HandTimer(batch.floor()).time(batch, Orders.of(batch, dispatched), BY_HAND).cost();
      assertThat(Cost.CHEAPEST.compare(after, ruled)).isLessThanOrEqualTo(0);
    }
  }

  @Test
  void startsFromAWorkablePlanAsItIs() {
    Batch batch = RandomFloors.withoutPins(2);
    Plan searched = FloorSolver.solve(batch, SolverSettings.steps(5000, 1), SolveListener.NONE);
    List<Long> told = new ArrayList<>();
    SolveListener first =
        new SolveListener() {
          @Override
          public void improved(Duration elapsed, PlanFigures figures) {
            told.add(figures.softPoints());
          }

          @Override
          public boolean stopRequested() {
            return false;
          }
        };

    FloorSolver.improve(batch, Orders.of(batch, searched), SolverSettings.steps(1, 1), first);

    assertThat(told.get(0)).isEqualTo(searched.figures().softPoints());
    assertThat(searched.figures().softPoints())
        .isLessThan(FloorSolver.dispatch(batch).figures().softPoints());
  }

  /** A job that was held back or pinned elsewhere since is taken off its rig. */
  @Test
  void leavesOutWhatCannotBeWhereItIs() {
    Batch batch =
        LongStream.range(0, 100)
            .mapToObj(RandomFloors::withoutPins)
            .filter(one -> one.floor().rigs().size() > 1)
            .filter(one -> FloorSolver.dispatch(one).rigs().get(0).jobs().size() > 1)
            .findFirst()
            .orElseThrow();
    Orders orders = Orders.of(batch, FloorSolver.dispatch(batch));
    String held = orders.byRig().get(0).get(0);
    String pinned = orders.byRig().get(0).get(1);
    String other = batch.floor().rigs().get(1).id();
    Batch changed =
        new Batch(
            batch.floor(),
            batch
                .shotList()
                .withPins(List.of(new Pin(pinned, other, null, null, PinState.PLANNED)))
                .withHeldBack(List.of(held)));

    Plan again =
        FloorSolver.improve(changed, orders, SolverSettings.steps(STEPS, 1), SolveListener.NONE);

    CheckedPlans.weighed(changed, again);
    assertThat(again.job(held)).isEmpty();
    assertThat(again.rigs().get(0).jobs()).noneMatch(job -> job.job().equals(pinned));
  }

  private static Orders jumbled(Batch batch, long seed) {
    CompiledBatch compiled = CompiledBatch.of(batch);
    Sequences sequences = RandomSequences.of(compiled, new Random(seed), 8);
    return new Orders(
        sequences.byRig().stream()
            .map(jobs -> jobs.stream().map(compiled::jobId).toList())
            .toList());
  }
}
