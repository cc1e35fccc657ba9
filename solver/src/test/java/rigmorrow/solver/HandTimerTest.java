package rigmorrow.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.work.JobWork;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.hand.RememberedFacts;
import rigmorrow.solver.hand.Timed;
import rigmorrow.solver.hand.Trial;
import rigmorrow.solver.timeline.JobFacts;

class HandTimerTest {
  private static final PlanOrigin BY_HAND = new PlanOrigin("hand", 0, 1, 0, "done");

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void timesTheOrdersOfAPlanAsThePlanDoes(long seed) {
    Batch batch = RandomFloors.batch(seed);
    Plan plan = FloorSolver.dispatch(batch);
    Timed timed = new HandTimer(batch.floor()).time(batch, Orders.of(batch, plan), plan.origin());

    assertThat(timed.plan()).isEqualTo(plan);
    assertThat(timed.cost().hard()).isEqualTo(plan.figures().hard());
    assertThat(timed.cost().leftOutWeight()).isEqualTo(plan.figures().leftOutPoints());
  }

  /** Whatever it remembers, the answer is that of a timer that knows nothing. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void timesAChangedListAsIfItWereNew(long seed) {
    Batch batch = RandomFloors.batch(seed);
    Orders orders = Orders.of(batch, FloorSolver.dispatch(batch));
    HandTimer timer = new HandTimer(batch.floor());
    timer.time(batch, orders, BY_HAND);
    List<String> planned = orders.byRig().stream().flatMap(List::stream).toList();
    for (int i = 0; i < planned.size(); i += 3) {
      String id = planned.get(i);
      ShotList list = batch.shotList();
      Batch changed =
          new Batch(
              batch.floor(),
              list.withJob(id, job -> job.withWeight(job.weight() % 1000 + 1).withPromise(null))
                  .withPins(list.pins().stream().filter(pin -> !pin.job().equals(id)).toList()));
      Orders without = orders.without(id);
      assertThat(timer.time(changed, without, BY_HAND))
          .isEqualTo(new Trial(changed, JobFacts.of(batch.floor())).decode(without, BY_HAND));
      assertThat(timer.time(changed, orders, BY_HAND))
          .isEqualTo(new Trial(changed, JobFacts.of(batch.floor())).decode(orders, BY_HAND));
    }
  }

  @Test
  void putsAJobWhereNoOtherPlaceIsCheaper() {
    Batch batch = RandomFloors.withoutPins(2);
    Plan plan = FloorSolver.dispatch(batch);
    Orders orders = Orders.of(batch, plan);
    HandTimer timer = new HandTimer(batch.floor());
    String job = orders.byRig().stream().flatMap(List::stream).findFirst().orElseThrow();
    Orders without = orders.without(job);
    Orders found = timer.cheapest(batch, without, job);
    assertThat(found).isNotNull();
    Cost cost = timer.time(batch, found, BY_HAND).cost();
    FitCheck check = new FitCheck(batch.floor());
    ShotJob shot = batch.shotList().job(job).orElseThrow();
    int tried = 0;
    for (int rig = 0; rig < batch.floor().rigs().size(); rig++) {
      if (check.of(shot, batch.floor().rigs().get(rig)).fits()
          && timer.room(batch, rig, job).enough()) {
        for (int place = 0; place <= without.length(rig); place++) {
          Cost other = timer.time(batch, without.with(rig, place, job), BY_HAND).cost();
          assertThat(Cost.CHEAPEST.compare(cost, other)).isLessThanOrEqualTo(0);
          tried++;
        }
      }
    }
    assertThat(tried).isGreaterThan(1);
  }

  @Test
  void asksOnceForWhatAJobsWorkRestsOn() {
    Batch batch = RandomFloors.withoutPins(2);
    List<String> asked = new ArrayList<>();
    JobFacts anew = JobFacts.of(batch.floor());
    RememberedFacts facts =
        new RememberedFacts(
            new JobFacts() {
              @Override
              public JobFit fit(ShotJob job) {
                asked.add(job.id());
                return anew.fit(job);
              }

              @Override
              public JobWork work(ShotJob job, Rig rig) {
                return anew.work(job, rig);
              }
            });
    ShotJob job = batch.shotList().jobs().get(0);
    facts.fit(job);
    facts.fit(job.withWeight(7).withPromise(null));
    assertThat(asked).containsExactly(job.id());
    facts.fit(remeasured(job));
    assertThat(asked).containsExactly(job.id(), job.id());
    assertThat(facts.size()).isEqualTo(2);
    facts.keepOnly(batch.shotList());
    assertThat(facts.size()).isEqualTo(1);
    facts.fit(job);
    assertThat(asked).hasSize(2);
  }

  @Test
  void refusesAnotherFloor() {
    Batch batch = RandomFloors.batch(1);
    Batch other = RandomFloors.batch(2);
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new HandTimer(other.floor())
                    .time(batch, Orders.of(batch, FloorSolver.dispatch(batch)), BY_HAND))
        .withMessageContaining("another floor");
  }

  private static ShotJob remeasured(ShotJob job) {
    return RandomFloors.withoutPins(9).shotList().jobs().stream()
        .filter(one -> !one.item().equals(job.item()))
        .findFirst()
        .map(
            one ->
                new ShotJob(
                    job.id(),
                    job.article(),
                    job.gtin(),
                    job.name(),
                    job.sample(),
                    job.recipe(),
                    one.item(),
                    job.setup(),
                    job.arrivesAt(),
                    job.leavesAt(),
                    job.promise(),
                    job.weight(),
                    job.note()))
        .orElseThrow();
  }
}
