package rigmorrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** The door of the solver: what it promises of every batch. All searches stop by steps. */
class FloorSolverTest {
  private static final int STEPS = 400;

  static LongStream manySeeds() {
    return LongStream.range(0, 150);
  }

  static LongStream seeds() {
    return LongStream.range(2000, 2025);
  }

  @ParameterizedTest
  @MethodSource("manySeeds")
  void dispatchesAWorkablePlanWhereNothingIsPinned(long seed) {
    Batch batch = RandomFloors.withoutPins(seed);

    CheckedPlans.workable(batch, FloorSolver.dispatch(batch));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void findsNothingWorseThanTheDispatchedPlan(long seed) {
    Batch batch = RandomFloors.batch(seed);
    CompiledBatch compiled = CompiledBatch.of(batch);
    Plan dispatched = CheckedPlans.weighed(batch, FloorSolver.dispatch(batch));

    Plan solved = CheckedPlans.weighed(batch, solve(batch, STEPS, seed, 1));

    Sequences first = RandomSequences.of(compiled, dispatched);
    assertThat(first.betterThan(RandomSequences.of(compiled, solved))).isFalse();
    assertThat(solved.figures().hard()).isLessThanOrEqualTo(dispatched.figures().hard());
  }

  @ParameterizedTest
  @CsvSource({"31, 1", "32, 1", "33, 1", "31, 2", "32, 2", "33, 2", "31, 3", "34, 3", "35, 3"})
  void findsTheSamePlanForTheSameSeedAndSteps(long seed, int solvers) {
    Batch batch = RandomFloors.batch(seed);

    Plan once = CheckedPlans.weighed(batch, solve(batch, STEPS, seed, solvers));
    Plan twice = CheckedPlans.weighed(batch, solve(batch, STEPS, seed, solvers));

    assertThat(twice).isEqualTo(once);
    assertThat(once.origin().stopped()).isEqualTo("steps");
    assertThat(once.origin().solvers()).isEqualTo(solvers);
  }

  @Test
  void endsEarlyWithAWorkablePlanWhenAskedToStop() {
    Batch batch = RandomFloors.withoutPins(5);
    SolveListener stopAtOnce = new Heard(true);
    // Far more steps than anybody would wait for.
    SolverSettings settings = new SolverSettings(null, Long.MAX_VALUE / 4, 1, 2);

    Plan plan = FloorSolver.solve(batch, settings, stopAtOnce);

    assertThat(CheckedPlans.workable(batch, plan).figures().planned()).isPositive();
    assertThat(plan.origin().stopped()).isEqualTo("interrupted");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void tellsOfPlansThatNeverGetWorse(long seed) {
    Batch batch = RandomFloors.withoutPins(seed);
    Heard heard = new Heard(false);

    SolverSettings settings = new SolverSettings(null, STEPS, seed, 2);
    Plan plan = CheckedPlans.workable(batch, FloorSolver.solve(batch, settings, heard));

    heard.figures.add(plan.figures());
    assertThat(heard.figures).hasSizeGreaterThan(1);
    for (int i = 1; i < heard.figures.size(); i++) {
      PlanFigures before = heard.figures.get(i - 1);
      PlanFigures now = heard.figures.get(i);
      assertThat(now.leftOutPoints()).isLessThanOrEqualTo(before.leftOutPoints());
      if (now.leftOutPoints() == before.leftOutPoints()) {
        // Three parts are rounded up each by itself, so that the sum may seem up to 2 higher.
        assertThat(now.softPoints()).isLessThanOrEqualTo(before.softPoints() + 2);
      }
    }
    assertThat(heard.elapsed).isSorted();
  }

  @Test
  void plansAnEmptyShotList() {
    Batch batch = batch();

    Plan plan = CheckedPlans.workable(batch, solve(batch, STEPS, 1, 2));

    assertThat(plan.rigs()).hasSize(2).allSatisfy(rig -> assertThat(rig.jobs()).isEmpty());
    assertThat(plan.figures()).isEqualTo(new PlanFigures(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
  }

  @Test
  void plansOneJobWhereItIsDoneSoonest() {
    // White already: ann and bo begin 07:30; 150 s to load, 500 s capture, 90 s to unload.
    Batch batch = batch(new JobBuilder("only").build());

    Plan plan = CheckedPlans.workable(batch, solve(batch, STEPS, 1, 1));

    assertThat(plan.rigs().get(1).jobs()).hasSize(1);
    assertThat(plan.figures().finishedAt()).isEqualTo(7 * 3600 + 1800 + 150 + 500 + 90);
  }

  @Test
  void tellsTheNearestMissOfAJobThatNoRigCanTake() {
    Batch batch =
        batch(new JobBuilder("vast").item(new ItemBuilder().size(3000, 2500, 900)).build());

    Plan plan = CheckedPlans.workable(batch, solve(batch, STEPS, 1, 1));

    LeftOut leftOut = plan.leftOut().get(0);
    assertThat(leftOut.cause()).isEqualTo(LeftOut.Cause.NO_RIG);
    assertThat(leftOut.sentences().get(0)).isEqualTo("No rig can take it.");
    // The diagonal of 3000 x 2500 mm is 3905 mm; the plate offers 850 less 25 on each side.
    assertThat(leftOut.sentences().get(1))
        .startsWith("Nearest is table: ")
        .contains("needs 3905.1 mm, offers 800 mm");
    assertThat(plan.figures().leftOutPoints()).isEqualTo(1);
  }

  @Test
  void tellsWhatHasToBeMeasured() {
    Batch batch =
        batch(
            new JobBuilder("fine").build(),
            new JobBuilder("unknown")
                .weight(4)
                .item(new ItemBuilder().massKg(null).size(300, null, 150))
                .build());

    Plan plan = CheckedPlans.workable(batch, solve(batch, STEPS, 1, 1));

    assertThat(plan.leftOut())
        .containsExactly(
            new LeftOut(
                "unknown",
                LeftOut.Cause.NEEDS_MEASURING,
                List.of("Not measured: widthMm, massKg.")));
    assertThat(plan.figures().planned()).isEqualTo(1);
    assertThat(plan.figures().leftOutPoints()).isEqualTo(4);
  }

  private static Plan solve(Batch batch, long steps, long seed, int solvers) {
    return FloorSolver.solve(
        batch, new SolverSettings(null, steps, seed, solvers), SolveListener.NONE);
  }

  private static Batch batch(ShotJob... jobs) {
    return new Batch(
        FloorFixtures.floor().build(),
        new ShotList(FloorFixtures.MONDAY, 1, List.of(jobs), List.of()));
  }

  /** Remembers what it was told. */
  private static final class Heard implements SolveListener {
    private final boolean stop;
    private final List<PlanFigures> figures = new ArrayList<>();
    private final List<Duration> elapsed = new ArrayList<>();

    Heard(boolean stop) {
      this.stop = stop;
    }

    @Override
    public void improved(Duration since, PlanFigures known) {
      elapsed.add(since);
      figures.add(known);
    }

    @Override
    public boolean stopRequested() {
      return stop;
    }
  }
}
