package rigmorrow.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.explain.Explainer;
import rigmorrow.solver.fixture.RandomFloors;

/**
 * A job that is held back counts as left out, and is to everything else as if it were not there.
 */
class HeldBackTest {
  private static final int EVERY = 4;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void isPlannedAroundAsIfItWereNotThere(long seed) {
    Batch all = RandomFloors.batch(seed);
    List<String> held = someFree(all);
    Batch holding = new Batch(all.floor(), all.shotList().withHeldBack(held));
    Batch without = without(all, held);
    SolverSettings settings = SolverSettings.steps(300, seed);

    Plan plan = FloorSolver.solve(holding, settings, SolveListener.NONE);
    Plan other = FloorSolver.solve(without, settings, SolveListener.NONE);

    long weight = held.stream().mapToLong(id -> leftOutWeight(all, id)).sum();
    assertThat(plan.rigs()).isEqualTo(other.rigs());
    assertThat(plan.figures().hard()).isEqualTo(other.figures().hard());
    assertThat(plan.figures().softPoints()).isEqualTo(other.figures().softPoints());
    assertThat(plan.figures().leftOutPoints()).isEqualTo(other.figures().leftOutPoints() + weight);
    assertThat(plan.figures().leftOut()).isEqualTo(other.figures().leftOut() + held.size());
    assertThat(PlanChecker.check(holding, plan)).isEqualTo(PlanChecker.check(without, other));
    PlanBounds bounds = plan.bounds();
    PlanBounds others = other.bounds();
    assertThat(bounds == null).isEqualTo(others == null);
    if (bounds != null && others != null) {
      assertThat(bounds.leftOutPoints()).isEqualTo(others.leftOutPoints() + weight);
      assertThat(bounds.softPoints()).isEqualTo(others.softPoints());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void saysThatItIsLeftOutByHand(long seed) {
    Batch all = RandomFloors.batch(seed);
    List<String> held = someFree(all);
    Batch holding = new Batch(all.floor(), all.shotList().withHeldBack(held));
    Plan plan = FloorSolver.dispatch(holding);
    FitCheck check = new FitCheck(all.floor());

    for (String id : held) {
      JobFit fit = check.of(all.shotList().job(id).orElseThrow());
      LeftOut.Cause cause =
          fit.needsMeasuring()
              ? LeftOut.Cause.NEEDS_MEASURING
              : fit.fitsSomewhere() ? LeftOut.Cause.HELD_BACK : LeftOut.Cause.NO_RIG;
      assertThat(plan.leftOut())
          .filteredOn(left -> left.job().equals(id))
          .singleElement()
          .satisfies(left -> assertThat(left.cause()).isEqualTo(cause))
          .satisfies(left -> assertThat(left.sentences()).isNotEmpty());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void isExplainedAsIfItWereTakenIn(long seed) {
    Batch all = RandomFloors.batch(seed);
    List<String> held = someFree(all);
    Batch holding = new Batch(all.floor(), all.shotList().withHeldBack(held));
    Explainer explainer = new Explainer(holding, FloorSolver.dispatch(holding));

    for (String id : held) {
      Explanation answer = explainer.explain(id);
      if (answer.status() == Explanation.Status.HELD_BACK) {
        for (RigAnswer rig : answer.rigs()) {
          if (rig.kind() == RigAnswer.Kind.POSSIBLE && rig.best() != null) {
            boolean keeps = rig.best().cost().hard() <= answer.cost().hard();
            assertThat(rig.best().cost().leftOutWeight())
                .isEqualTo(answer.cost().leftOutWeight() - leftOutWeight(all, id));
            assertThat(rig.best().standing() == Standing.BETTER).isEqualTo(keeps);
          }
        }
      }
    }
    assertThat(explainer.troubles())
        .filteredOn(trouble -> trouble.status() == Explanation.Status.HELD_BACK)
        .extracting(trouble -> trouble.job().id())
        .isSubsetOf(held);
  }

  @Test
  void isRefusedInAPlanThatHasIt() {
    Batch all = RandomFloors.withoutPins(1);
    Plan plan = FloorSolver.dispatch(all);
    String planned = plan.rigs().get(0).jobs().get(0).job();
    Batch holding = new Batch(all.floor(), all.shotList().withHeldBack(List.of(planned)));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Explainer(holding, plan))
        .withMessageContaining("left out by hand: " + planned);
  }

  @Test
  void isAJobOfTheListThatIsNotPinned() {
    ShotList list = RandomFloors.withPins(3, 20).shotList();
    String pinned = list.pins().get(0).job();

    assertThatIllegalArgumentException()
        .isThrownBy(() -> list.withHeldBack(List.of(pinned)))
        .withMessageContaining(pinned);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> list.withHeldBack(List.of("nobody")))
        .withMessageContaining("nobody");
    String free = someFree(new Batch(RandomFloors.batch(3).floor(), list)).get(0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> list.withHeldBack(List.of(free, free)))
        .withMessageContaining(free);
  }

  private static List<String> someFree(Batch batch) {
    List<String> pinned = batch.shotList().pins().stream().map(Pin::job).toList();
    List<String> free = new ArrayList<>();
    for (int i = 0; i < batch.shotList().jobs().size(); i += EVERY) {
      String id = batch.shotList().jobs().get(i).id();
      if (!pinned.contains(id)) {
        free.add(id);
      }
    }
    return free;
  }

  private static Batch without(Batch batch, List<String> out) {
    ShotList list = batch.shotList();
    List<ShotJob> jobs = list.jobs().stream().filter(job -> !out.contains(job.id())).toList();
    return new Batch(batch.floor(), new ShotList(list.date(), list.days(), jobs, list.pins()));
  }

  private static long leftOutWeight(Batch batch, String id) {
    ShotJob job = batch.shotList().job(id).orElseThrow();
    return (long) job.weight() * (job.must() ? batch.floor().weights().mustFactor() : 1);
  }
}
