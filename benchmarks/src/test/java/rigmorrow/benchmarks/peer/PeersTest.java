package rigmorrow.benchmarks.peer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.benchmarks.run.Peers;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

class PeersTest {
  private static final Batch DAY = Demo.batch(25, 4, LocalDate.of(2026, 3, 18));
  private static final SolverSettings STEPS = SolverSettings.steps(500, 1);

  static List<Peer> peers() {
    return Peers.all();
  }

  /** Remembers what it was told. */
  private static final class Told implements SolveListener {
    private final List<PlanFigures> figures = new ArrayList<>();

    @Override
    public synchronized void improved(Duration elapsed, PlanFigures better) {
      figures.add(better);
    }

    @Override
    public boolean stopRequested() {
      return false;
    }
  }

  @ParameterizedTest
  @MethodSource("peers")
  void makesAPlanThatKeepsEveryRule(Peer peer) {
    Plan plan = peer.plan(DAY, STEPS, SolveListener.NONE);
    assertThat(PlanChecker.check(DAY, plan)).isEmpty();
    assertThat(plan.figures().planned() + plan.figures().leftOut()).isEqualTo(25);
    assertThat(plan.figures().planned()).isPositive();
  }

  @ParameterizedTest
  @MethodSource("peers")
  void makesTheSamePlanForTheSameSeedAndDecodes(Peer peer) {
    assertThat(peer.plan(DAY, STEPS, SolveListener.NONE))
        .isEqualTo(peer.plan(DAY, STEPS, SolveListener.NONE));
  }

  @ParameterizedTest
  @MethodSource("peers")
  void tellsOfPlansNoBetterThanItsLast(Peer peer) {
    Told told = new Told();
    PlanFigures end = peer.plan(DAY, STEPS, told).figures();
    assertThat(told.figures).isNotEmpty();
    assertThat(told.figures).allMatch(figures -> figures.leftOutPoints() >= end.leftOutPoints());
    assertThat(told.figures)
        .filteredOn(figures -> figures.leftOutPoints() == end.leftOutPoints())
        .allMatch(figures -> figures.softPoints() >= end.softPoints());
  }

  @ParameterizedTest
  @MethodSource("peers")
  void plansADayWithoutJobs(Peer peer) {
    ShotList list = DAY.shotList();
    Batch empty = new Batch(DAY.floor(), list.withJobs(List.of()));
    assertThat(peer.plan(empty, STEPS, SolveListener.NONE).figures().planned()).isZero();
  }

  @Test
  void haveNamesOfTheirOwnWithOursFirst() {
    assertThat(Peers.all()).extracting(Peer::name).doesNotHaveDuplicates();
    assertThat(Peers.all().get(0).name()).isEqualTo(Peers.OURS);
  }

  @Test
  void planNoWorseThanTheDispatchPlanTheyStartFrom() {
    PlanFigures dispatched = FloorSolver.dispatch(DAY).figures();
    for (Peer peer : Peers.named(List.of("ours", "plain"))) {
      PlanFigures end = peer.plan(DAY, STEPS, SolveListener.NONE).figures();
      assertThat(end.softPoints()).as(peer.name()).isLessThanOrEqualTo(dispatched.softPoints());
    }
  }

  @Test
  void useAsManySolversAsCores() {
    SolverSettings two = new SolverSettings(null, 500, 1, 2);
    for (Peer peer : Peers.named(List.of("ours", "plain"))) {
      assertThat(peer.plan(DAY, two, SolveListener.NONE).origin().solvers()).isEqualTo(2);
    }
  }
}
