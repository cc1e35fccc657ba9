package rigmorrow.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/** The demo day by a search of fixed effort, held against the best of the dispatch rules. */
class DemoDayTest {
  private static final Batch DAY = Demo.batch();
  private static final long DECODES = 100_000;

  private static Plan dispatched;
  private static Plan searched;

  @BeforeAll
  static void planTheDay() {
    dispatched = FloorSolver.dispatch(DAY);
    searched = FloorSolver.solve(DAY, SolverSettings.steps(DECODES, 1), SolveListener.NONE);
  }

  @Test
  void plansEveryJobWithinTheHardRules() {
    assertThat(dispatched.figures().hard()).isZero();
    assertThat(searched.figures().hard()).isZero();
    assertThat(searched.leftOut()).isEmpty();
  }

  @Test
  void comesToAtMostThirtyFivePercentOfTheDispatchPlan() {
    assertThat(searched.figures().softPoints())
        .isLessThanOrEqualTo((long) (0.35 * dispatched.figures().softPoints()));
  }

  @Test
  void keepsEveryRuleInTheEyesOfTheChecker() {
    assertThat(PlanChecker.check(DAY, dispatched)).isEmpty();
    assertThat(PlanChecker.check(DAY, searched)).isEmpty();
  }
}
