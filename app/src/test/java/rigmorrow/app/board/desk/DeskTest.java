package rigmorrow.app.board.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;

/** Touches kept, refused, taken back and done again, and what is there after a restart. */
class DeskTest {
  private static final Batch DAY = Demo.batch(20, 1, LocalDate.of(2026, 3, 18));
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-17T15:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private Desk open() {
    return Desk.open(folder, DAY, null, CLOCK);
  }

  /** A plan has no bounds until somebody has worked them out. */
  private static Plan timed(BoardState state) {
    Plan plan = state.plan();
    return new Plan(
        plan.floor(),
        plan.zone(),
        plan.date(),
        plan.days(),
        plan.rigs(),
        plan.leftOut(),
        plan.figures(),
        plan.origin());
  }

  private static String jobOn(BoardState state, int rig, int place) {
    return state.plan().rigs().get(rig).jobs().get(place).job();
  }

  @Test
  void beginsWithAPlanByDispatchRulesOrWithTheOneItIsGiven() {
    try (Desk desk = open()) {
      assertThat(timed(desk.now())).isEqualTo(FloorSolver.dispatch(DAY));
      assertThat(desk.now().revision()).isEqualTo(1);
      assertThat(desk.now().at()).isEqualTo(CLOCK.instant());
      assertThat(desk.undoSentence()).isNull();
      assertThat(desk.redoSentence()).isNull();
    }
    Plan other = FloorSolver.withBounds(DAY, FloorSolver.dispatch(DAY));
    try (Desk desk = Desk.open(folder.resolve("other"), DAY, other, CLOCK)) {
      assertThat(desk.now().plan()).isEqualTo(other);
    }
  }

  @Test
  void goesOnWithWhatIsStoredWhateverItIsGiven() {
    open().close();
    Batch other = Demo.batch(10, 2, LocalDate.of(2026, 3, 19));
    try (Desk desk = Desk.open(folder, other, null, CLOCK)) {
      assertThat(desk.now().batch().equals(DAY)).isTrue();
    }
    try (Desk desk = Desk.open(folder, null, null, CLOCK)) {
      assertThat(desk.now().batch().equals(DAY)).isTrue();
    }
  }

  @Test
  void refusesToGoOnWithNothingAndLeavesNothingBehind() throws IOException {
    Path none = folder.resolve("none");
    assertThatThrownBy(() -> Desk.open(none, null, null, CLOCK))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("there is no board");
    assertThat(Files.exists(none)).isFalse();
  }

  @Test
  void refusesAPlanOfAnotherDay() {
    Batch other = Demo.batch(20, 1, LocalDate.of(2026, 3, 19));
    assertThatThrownBy(() -> Desk.open(folder, DAY, FloorSolver.dispatch(other), CLOCK))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("2026-03-19")
        .hasMessageContaining("accepted: a plan of this floor and this shot list");
  }

  @Test
  void refusesASecondDeskOnTheFolder() {
    try (Desk desk = open()) {
      assertThatThrownBy(this::open)
          .isInstanceOf(RefusedException.class)
          .hasMessageContaining("open already");
      assertThat(desk.now().revision()).isEqualTo(1);
    }
  }

  @Test
  void triesATouchAndKeepsNothing() {
    try (Desk desk = open()) {
      BoardState before = desk.now();
      Touch touch = new Touch.LeaveOut(jobOn(before, 0, 0));
      Tried tried = desk.attempt(1, touch);
      assertThat(tried.allowed()).isTrue();
      assertThat(tried.costBefore().leftOutWeight()).isLessThan(tried.costAfter().leftOutWeight());
      assertThat(timed(desk.now())).isEqualTo(timed(before));
      assertThat(desk.now().revision()).isEqualTo(1);

      BoardState after = desk.keep(1, touch);
      assertThat(timed(after)).isEqualTo(tried.after());
      assertThat(after.batch().equals(tried.batchAfter())).isTrue();
      assertThat(after.sentence()).isEqualTo(tried.sentence());
      assertThat(after.revision()).isEqualTo(2);
      assertThat(after.plan().origin().method()).isEqualTo("hand");
    }
  }

  @Test
  void refusesWhatCannotBeDoneAndChangesNothing() {
    try (Desk desk = open()) {
      Touch touch = new Touch.Move("ghost", "R1", 0);
      Tried tried = desk.attempt(1, touch);
      assertThat(tried.allowed()).isFalse();
      assertThat(tried.after()).isNull();
      assertThat(tried.costAfter()).isNull();
      assertThatThrownBy(() -> desk.keep(1, touch))
          .isInstanceOfSatisfying(
              RefusedTouchException.class,
              e -> assertThat(e.refusals()).isEqualTo(tried.refusals()))
          .hasMessage("The shot list has no job ghost.");
      assertThat(desk.now().revision()).isEqualTo(1);
    }
  }

  /** Two tabs, one revision: one is kept, the other is told what was. */
  @Test
  void letsOneOfTwoHandsWinAndTellsTheOtherWhatItDid() throws Exception {
    ExecutorService hands = Executors.newFixedThreadPool(2);
    try (Desk desk = open()) {
      for (int round = 0; round < 20; round++) {
        BoardState before = desk.now();
        String job = before.batch().shotList().jobs().get(round).id();
        int weight = before.batch().shotList().jobs().get(round).weight();
        CyclicBarrier together = new CyclicBarrier(2);
        List<Future<Object>> ends = new ArrayList<>();
        for (int hand = 1; hand <= 2; hand++) {
          Touch touch = new Touch.SetWeight(job, weight + hand);
          Callable<Object> work =
              () -> {
                together.await();
                try {
                  return desk.keep(before.revision(), touch);
                } catch (StaleException e) {
                  return e;
                }
              };
          ends.add(hands.submit(work));
        }
        List<Object> ended = List.of(ends.get(0).get(), ends.get(1).get());
        assertThat(ended).hasAtLeastOneElementOfType(BoardState.class);
        assertThat(ended).hasAtLeastOneElementOfType(StaleException.class);
        BoardState kept =
            (BoardState) ended.stream().filter(BoardState.class::isInstance).findAny().get();
        StaleException stale =
            (StaleException)
                ended.stream().filter(StaleException.class::isInstance).findAny().get();
        assertThat(stale.revision()).isEqualTo(kept.revision());
        assertThat(stale.since()).containsExactly(kept.sentence());
        assertThat(stale).hasMessageContaining(kept.sentence());
        assertThat(desk.now().revision()).isEqualTo(before.revision() + 1);
      }
    } finally {
      hands.shutdownNow();
    }
  }

  @Test
  void tellsAllThatWasDoneSinceARevision() {
    try (Desk desk = open()) {
      String first = jobOn(desk.now(), 0, 0);
      String second = jobOn(desk.now(), 1, 0);
      desk.keep(1, new Touch.LeaveOut(first));
      desk.keep(2, new Touch.Hold(second, false, null));
      String hold = desk.undoSentence();
      desk.undo(3);
      desk.redo(4);
      assertThatThrownBy(() -> desk.undo(1))
          .isInstanceOfSatisfying(
              StaleException.class,
              e ->
                  assertThat(e.since())
                      .hasSize(4)
                      .element(1)
                      .isEqualTo(hold)
                      .satisfies(
                          sentence -> assertThat(e.since().get(2)).isEqualTo("Undone: " + hold))
                      .satisfies(
                          sentence ->
                              assertThat(e.since().get(3)).isEqualTo("Done again: " + hold)));
      assertThatThrownBy(() -> desk.attempt(99, new Touch.TakeIn(first)))
          .isInstanceOf(StaleException.class)
          .hasMessageContaining("no revision 99 yet");
    }
  }

  /** Back to the start, half of it after a restart, and forth to the end. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void takesEverythingBackToTheStartAndDoesItAgainAcrossRestarts(long seed) {
    Random random = new Random(seed);
    List<BoardState> states = new ArrayList<>();
    try (Desk desk = open()) {
      states.add(desk.now());
      while (states.size() < 25) {
        BoardState now = desk.now();
        Touch touch = RandomTouch.of(now, random);
        if (desk.attempt(now.revision(), touch).allowed()) {
          states.add(desk.keep(now.revision(), touch));
        }
      }
      for (int at = states.size() - 2; at >= 12; at--) {
        assertThat(desk.undoSentence()).isEqualTo(states.get(at + 1).sentence());
        assertSame(desk.undo(desk.now().revision()), states.get(at));
      }
    }
    try (Desk desk = Desk.open(folder, null, null, CLOCK)) {
      assertSame(desk.now(), states.get(12));
      assertThat(desk.redoSentence()).isEqualTo(states.get(13).sentence());
      for (int at = 11; at >= 0; at--) {
        assertSame(desk.undo(desk.now().revision()), states.get(at));
      }
      assertThat(desk.undoSentence()).isNull();
      long revision = desk.now().revision();
      assertThat(desk.undo(revision).revision()).isEqualTo(revision);
    }
    try (Desk desk = Desk.open(folder, null, null, CLOCK)) {
      for (int at = 1; at < states.size(); at++) {
        assertThat(desk.redoSentence()).isEqualTo(states.get(at).sentence());
        assertSame(desk.redo(desk.now().revision()), states.get(at));
      }
      assertThat(desk.redoSentence()).isNull();
      long revision = desk.now().revision();
      assertThat(desk.redo(revision).revision()).isEqualTo(revision);
    }
  }

  private static void assertSame(BoardState one, BoardState other) {
    assertThat(timed(one).equals(timed(other))).as(other.sentence()).isTrue();
    assertThat(one.batch().equals(other.batch())).as(other.sentence()).isTrue();
    assertThat(one.breaches()).isEqualTo(other.breaches());
    assertThat(one.sentence()).isEqualTo(other.sentence());
  }

  @Test
  void forgetsWhatWasUndoneOnceSomethingElseIsKept() {
    try (Desk desk = open()) {
      String job = jobOn(desk.now(), 0, 0);
      desk.keep(1, new Touch.LeaveOut(job));
      desk.undo(2);
      assertThat(desk.redoSentence()).startsWith("Leave out " + job);
      desk.keep(3, new Touch.Hold(job, false, null));
      assertThat(desk.redoSentence()).isNull();
      assertThat(desk.undo(4).sentence()).isEqualTo("The plan that the board began with");
      assertThat(desk.redoSentence()).startsWith("Pin " + job);
    }
  }

  /** What is shown is what the decoder made, and the independent check agrees on what it breaks. */
  @ParameterizedTest
  @ValueSource(longs = {4, 5, 6})
  void showsOnlyWhatHoldsBeforeTheIndependentCheck(long seed) {
    Random random = new Random(seed);
    int breaking = 0;
    try (Desk desk = open()) {
      for (int i = 0; i < 60; i++) {
        BoardState now = desk.now();
        Touch touch = RandomTouch.of(now, random);
        Tried tried = desk.attempt(now.revision(), touch);
        if (tried.allowed()) {
          assertThat(tried.breaches())
              .isEqualTo(PlanChecker.check(tried.batchAfter(), tried.after()));
          assertThat(tried.breaches().isEmpty()).isEqualTo(tried.costAfter().hard() == 0);
          breaking += tried.breaches().isEmpty() ? 0 : 1;
          assertThat(desk.keep(now.revision(), touch).breaches()).isEqualTo(tried.breaches());
        } else {
          assertThat(tried.refusals()).isNotEmpty();
        }
      }
    }
    assertThat(breaking).isPositive();
  }

  @Test
  void putsAnotherShotListInPlaceAndTakesThatBack() {
    Batch other = Demo.batch(10, 2, LocalDate.of(2026, 3, 19));
    try (Desk desk = open()) {
      BoardState before = desk.now();
      BoardState replaced = desk.replace(1, other, "Take in friday.csv");
      assertThat(replaced.batch().equals(other)).isTrue();
      assertThat(timed(replaced)).isEqualTo(FloorSolver.dispatch(other));
      assertThat(desk.undoSentence()).isEqualTo("Take in friday.csv");
      desk.keep(2, new Touch.LeaveOut(jobOn(desk.now(), 0, 0)));
      desk.undo(3);
      assertSame(desk.undo(4), before);
      assertThat(desk.redo(5).batch().equals(other)).isTrue();
      assertThatThrownBy(() -> desk.replace(2, other, "again")).isInstanceOf(StaleException.class);
    }
  }

  @Test
  void asksWhyAboutThePlanThereIs() {
    try (Desk desk = open()) {
      String job = jobOn(desk.now(), 0, 0);
      assertThat(desk.explain(desk.now(), job).times().rig())
          .isEqualTo(desk.now().plan().rigs().get(0).rig());
      BoardState before = desk.now();
      desk.keep(1, new Touch.LeaveOut(job));
      assertThat(desk.explain(before, job).status().name()).isNotEqualTo("HELD_BACK");
      assertThat(desk.troubles(before)).noneMatch(trouble -> trouble.job().id().equals(job));
      assertThat(desk.explain(desk.now(), job).status().name()).isEqualTo("HELD_BACK");
      assertThat(desk.troubles(desk.now())).anyMatch(trouble -> trouble.job().id().equals(job));
      assertThatThrownBy(() -> desk.explain(desk.now(), "ghost"))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("ghost");
    }
  }

  @Test
  void tellsOfEveryChange() {
    List<String> told = new ArrayList<>();
    try (Desk desk = Desk.open(folder, DAY, FloorSolver.dispatch(DAY), CLOCK)) {
      desk.listen(
          () -> {
            throw new IllegalStateException("a page that went away");
          });
      desk.listen(() -> told.add(desk.now().sentence()));
      String job = jobOn(desk.now(), 0, 0);
      desk.attempt(1, new Touch.LeaveOut(job));
      assertThat(told.stream().filter(one -> one.startsWith("Leave out"))).isEmpty();
      desk.keep(1, new Touch.LeaveOut(job));
      assertThat(told.stream().filter(one -> one.startsWith("Leave out"))).hasSize(1);
      desk.undo(2);
      assertThat(told.get(told.size() - 1)).startsWith("The plan");
    }
  }
}
