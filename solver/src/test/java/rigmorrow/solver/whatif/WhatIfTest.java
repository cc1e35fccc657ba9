package rigmorrow.solver.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.fixture.RandomFloors;

class WhatIfTest {
  private static final Arm BASE = Arm.of(Scenario.base());

  private static List<Past> batches(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Past("day-" + i, RandomFloors.withoutPins(i)))
        .toList();
  }

  private static Arm arm(String name, ScenarioChange... changes) {
    return Arm.of(new Scenario(name, name, List.of(changes), null));
  }

  /** Plans by dispatch rules: quick, and the same each time. */
  private static final CellPlanner QUICK =
      (batch, seed, stop) -> Optional.of(FloorSolver.dispatch(batch));

  private static WhatIf quick(List<Arm> arms, int batches, int seeds, int cores) {
    return new WhatIf(arms, batches(batches), seeds, cores, CrewPay.SHIFT, QUICK);
  }

  /** Keeps every cell, and stops after so many. */
  private static final class Cells implements WhatIfListener {
    final List<Cell> all = new ArrayList<>();
    final List<Progress> told = new ArrayList<>();
    final int most;

    Cells(int most) {
      this.most = most;
    }

    @Override
    public void finished(Cell cell, Progress progress) {
      all.add(cell);
      told.add(progress);
    }

    @Override
    public synchronized boolean stopRequested() {
      return all.size() >= most;
    }

    Set<Cell.Key> keys() {
      Set<Cell.Key> keys = new HashSet<>();
      all.forEach(cell -> keys.add(cell.key()));
      return keys;
    }
  }

  @Test
  void plansEveryCellOnce() {
    WhatIf run = quick(List.of(BASE, arm("b"), arm("c")), 4, 2, 2);
    Cells cells = new Cells(Integer.MAX_VALUE);
    assertThat(run.run(Set.of(), cells)).isTrue();
    assertThat(cells.all).hasSize(24);
    assertThat(cells.keys()).hasSize(24).containsExactlyInAnyOrderElementsOf(run.keys());
  }

  @Test
  void armsOfABatchFollowOneAnotherAndTakeTurnsAtBeingFirst() {
    List<Arm> arms = List.of(BASE, arm("b"), arm("c"));
    List<Cell.Key> keys = quick(arms, 6, 1, 1).keys();
    List<String> first = new ArrayList<>();
    for (int i = 0; i < keys.size(); i += 3) {
      List<Cell.Key> three = keys.subList(i, i + 3);
      assertThat(three).extracting(Cell.Key::batch).containsOnly("day-" + i / 3);
      assertThat(three).extracting(Cell.Key::scenario).doesNotHaveDuplicates();
      first.add(three.get(0).scenario());
    }
    assertThat(first).containsExactly(Scenario.BASE, "b", "c", Scenario.BASE, "b", "c");
  }

  @Test
  void armsOfABatchGetTheSameSeed() {
    List<String> asked = new ArrayList<>();
    CellPlanner noting =
        (batch, seed, stop) -> {
          asked.add(batch.shotList().jobs().size() + " " + seed);
          return QUICK.plan(batch, seed, stop);
        };
    List<Arm> arms = List.of(BASE, arm("b"));
    new WhatIf(arms, batches(1), 2, 1, CrewPay.SHIFT, noting).run(Set.of(), new Cells(99));
    assertThat(asked).hasSize(4);
    assertThat(asked.get(0)).isEqualTo(asked.get(1)).endsWith(" 1");
    assertThat(asked.get(2)).isEqualTo(asked.get(3)).endsWith(" 2");
    asked.clear();
    new WhatIf(List.of(BASE, Arm.again()), batches(1), 1, 1, CrewPay.SHIFT, noting)
        .run(Set.of(), new Cells(99));
    assertThat(asked.get(0)).isNotEqualTo(asked.get(1));
  }

  @Test
  void goesOnWhereItStopped() {
    List<Arm> arms = List.of(BASE, arm("b"));
    Cells some = new Cells(3);
    assertThat(quick(arms, 4, 1, 1).run(Set.of(), some)).isFalse();
    assertThat(some.all).hasSize(3);
    AtomicInteger planned = new AtomicInteger();
    CellPlanner counting =
        (batch, seed, stop) -> {
          planned.incrementAndGet();
          return QUICK.plan(batch, seed, stop);
        };
    Cells rest = new Cells(99);
    assertThat(new WhatIf(arms, batches(4), 1, 2, CrewPay.SHIFT, counting).run(some.keys(), rest))
        .isTrue();
    assertThat(planned).hasValue(5);
    assertThat(rest.keys()).doesNotContainAnyElementsOf(some.keys());
    assertThat(rest.told.get(0).done()).isEqualTo(4);
    assertThat(rest.told.get(4).all()).isEqualTo(8);
    assertThat(rest.told.get(4).left()).isEqualTo(Duration.ZERO);
    Cells none = new Cells(99);
    assertThat(quick(arms, 4, 1, 1).run(new HashSet<>(quick(arms, 4, 1, 1).keys()), none)).isTrue();
    assertThat(none.all).isEmpty();
  }

  @Test
  void forgetsWhatWasEndedEarly() {
    CellPlanner ended = (batch, seed, stop) -> Optional.<Plan>empty();
    Cells cells = new Cells(99);
    assertThat(
            new WhatIf(List.of(BASE), batches(2), 1, 1, CrewPay.SHIFT, ended).run(Set.of(), cells))
        .isFalse();
    assertThat(cells.all).isEmpty();
  }

  @Test
  void aFaultEndsTheRunAndIsTold() {
    CellPlanner faulty =
        (batch, seed, stop) -> {
          throw new IllegalStateException("no plan today");
        };
    WhatIf run = new WhatIf(List.of(BASE), batches(3), 1, 2, CrewPay.SHIFT, faulty);
    assertThatThrownBy(() -> run.run(Set.of(), new Cells(99)))
        .hasMessage("planning a cell failed")
        .hasRootCauseMessage("no plan today");
    WhatIf impossible = quick(List.of(arm("x", new FloorChange.RigGone("no such"))), 1, 1, 1);
    assertThatThrownBy(() -> impossible.run(Set.of(), new Cells(99)))
        .hasStackTraceContaining("x on day-0");
  }

  @Test
  void refusesArmsAndBatchesThatCannotBeToldApart() {
    assertThatThrownBy(() -> quick(List.of(BASE, BASE), 1, 1, 1)).hasMessageContaining("twice");
    List<Past> twice = List.of(batches(1).get(0), batches(1).get(0));
    assertThatThrownBy(() -> new WhatIf(List.of(BASE), twice, 1, 1, CrewPay.SHIFT, QUICK))
        .hasMessageContaining("twice");
  }
}
