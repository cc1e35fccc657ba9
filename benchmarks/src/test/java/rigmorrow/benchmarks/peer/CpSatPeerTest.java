package rigmorrow.benchmarks.peer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.benchmarks.RuleSet;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

class CpSatPeerTest {
  private static final Batch DAY = RuleSet.FULL.batch(16);

  /** One unit of the solver's deterministic time. */
  private static final SolverSettings SHORT = SolverSettings.steps(10_000, 1);

  private final CpSatPeer peer = new CpSatPeer();

  @Test
  void improvesOnDispatchAndTellsOnlyOfBetterPlans() {
    List<PlanFigures> told = new ArrayList<>();
    Plan plan = peer.plan(DAY, SHORT, listener(told, false));

    assertThat(PlanChecker.check(DAY, plan)).isEmpty();
    assertThat(told.get(0).softPoints())
        .isEqualTo(FloorSolver.dispatch(DAY).figures().softPoints());
    for (int i = 1; i < told.size(); i++) {
      assertThat(level(told.get(i))).isLessThanOrEqualTo(level(told.get(i - 1)));
    }
    assertThat(plan.figures()).isEqualTo(told.get(told.size() - 1));
    assertThat(level(plan.figures())).isLessThan(level(told.get(0)));
  }

  /** Nothing is left out on this day. */
  private static long level(PlanFigures figures) {
    assertThat(figures.hard()).isZero();
    assertThat(figures.leftOutPoints()).isZero();
    return figures.softPoints();
  }

  @Test
  void givesTheSamePlanForTheSameSeedAndSteps() {
    Batch few = RuleSet.FULL.batch(10);
    SolverSettings settings = SolverSettings.steps(2_000, 7);
    assertThat(peer.plan(few, settings, SolveListener.NONE))
        .isEqualTo(peer.plan(few, settings, SolveListener.NONE));
  }

  @Test
  void stopsWhenAsked() {
    SolverSettings endless = new SolverSettings(Duration.ofHours(1), 0, 1, 1);
    Plan plan = peer.plan(RuleSet.FULL.batch(40), endless, listener(new ArrayList<>(), true));
    assertThat(plan.origin().stopped()).isEqualTo("interrupted");
  }

  @Test
  void plansAnEmptyBatch() {
    Batch empty = new Batch(DAY.floor(), DAY.shotList().withJobs(List.of()));
    Plan plan = peer.plan(empty, SHORT, SolveListener.NONE);
    assertThat(PlanChecker.check(empty, plan)).isEmpty();
    assertThat(plan.figures().planned()).isZero();
  }

  @Test
  void leavesEverythingOutWhereNothingFits() {
    Floor floor = DAY.floor();
    Floor bare =
        floor.withRigs(floor.rigs().stream().filter(rig -> rig.id().equals("R4")).toList());
    Batch none =
        new Batch(
            bare,
            DAY.shotList()
                .withJobs(
                    DAY.shotList().jobs().stream()
                        .filter(job -> !new FitCheck(bare).of(job).fitsSomewhere())
                        .toList()));
    assertThat(none.shotList().jobs()).isNotEmpty();
    Plan plan = peer.plan(none, SHORT, SolveListener.NONE);
    assertThat(PlanChecker.check(none, plan)).isEmpty();
    assertThat(plan.leftOut()).hasSameSizeAs(none.shotList().jobs());
  }

  private static SolveListener listener(List<PlanFigures> told, boolean stop) {
    return new SolveListener() {
      @Override
      public void improved(Duration elapsed, PlanFigures figures) {
        told.add(figures);
      }

      @Override
      public boolean stopRequested() {
        return stop;
      }
    };
  }
}
