package rigmorrow.app.board.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.desk.SearchProgress.State;
import rigmorrow.app.board.store.BoardStore;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolverSettings;

/**
 * Planning again at the board, and what no plan can be below. Searches stop by steps or by hand.
 */
class SearchTest {
  private static final Batch DAY = Demo.batch(30, 1, LocalDate.of(2026, 3, 18));
  private static final SolverSettings SHORT = SolverSettings.steps(4000, 1);
  private static final SolverSettings ENDLESS = SolverSettings.steps(Long.MAX_VALUE, 1);
  private static final long PATIENCE_NANOS = 60_000_000_000L;

  @TempDir Path folder;

  private Desk open() {
    return Desk.open(folder, DAY, null, Clock.systemUTC());
  }

  private static void await(BooleanSupplier done) {
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (!done.getAsBoolean()) {
      assertThat(System.nanoTime()).as("waited too long").isLessThan(end);
      try {
        Thread.sleep(5);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(e);
      }
    }
  }

  @Test
  void keepsABetterPlanAroundThePins() {
    try (Desk desk = open()) {
      assertThat(desk.progress()).isEqualTo(SearchProgress.NONE);
      RigPlan rig = desk.now().plan().rigs().get(0);
      String pinned = rig.jobs().get(1).job();
      desk.keep(1, new Touch.Hold(pinned, true, null));
      String held = desk.now().plan().rigs().get(1).jobs().get(0).job();
      BoardState before = desk.keep(2, new Touch.LeaveOut(held));
      AtomicInteger told = new AtomicInteger();
      desk.listen(told::incrementAndGet);

      desk.search(3, SHORT);
      await(() -> !desk.searching());

      SearchProgress progress = desk.progress();
      assertThat(progress.state()).isEqualTo(State.KEPT);
      assertThat(progress.sentence()).contains("Found a better plan", "Before: ");
      assertThat(progress.limitSeconds()).isZero();
      assertThat(told.get()).isGreaterThanOrEqualTo(progress.course().size());
      PlanFigures first = progress.course().get(0).figures();
      assertThat(first.softPoints()).isEqualTo(before.plan().figures().softPoints());
      BoardState after = desk.now();
      assertThat(after.revision()).isEqualTo(4);
      assertThat(after.sentence()).isEqualTo("Plan again around 1 pin");
      assertThat(after.plan().origin().method()).isEqualTo("search");
      assertThat(after.plan().figures().softPoints())
          .isLessThan(before.plan().figures().softPoints());
      assertThat(after.plan().bounds()).isNotNull();
      assertThat(after.plan().rigs().get(0).jobs().get(1).job()).isEqualTo(pinned);
      assertThat(after.plan().job(held)).isEmpty();
      assertThat(after.batch().equals(before.batch())).isTrue();
      assertThat(desk.undo(4).plan().rigs()).isEqualTo(before.plan().rigs());
      assertThat(desk.redo(5).plan().rigs()).isEqualTo(after.plan().rigs());
    }
    try (Desk desk = open()) {
      assertThat(desk.now().plan().origin().method()).isEqualTo("search");
      assertThat(desk.now().plan().bounds()).isNotNull();
    }
  }

  @Test
  void leavesThePlanWhereItFindsNothingBetter() {
    try (Desk desk = open()) {
      desk.search(1, SHORT);
      await(() -> !desk.searching());
      BoardState good = desk.now();
      desk.search(2, SolverSettings.steps(1, 2));
      await(() -> !desk.searching());
      assertThat(desk.progress().state()).isEqualTo(State.NO_BETTER);
      assertThat(desk.progress().sentence()).startsWith("Found nothing better");
      assertThat(desk.now().revision()).isEqualTo(2);
      assertThat(desk.now().plan().rigs()).isEqualTo(good.plan().rigs());
    }
  }

  @Test
  void takesNoTouchWhileItRunsAndKeepsTheBestWhenItIsStopped() {
    try (Desk desk = open()) {
      String job = desk.now().plan().rigs().get(0).jobs().get(0).job();
      desk.putBy(1, "start");
      desk.search(1, ENDLESS);
      List<ThrowingCallable> wishes =
          List.of(
              () -> desk.attempt(1, new Touch.LeaveOut(job)),
              () -> desk.keep(1, new Touch.LeaveOut(job)),
              () -> desk.undo(1),
              () -> desk.redo(1),
              () -> desk.replace(1, DAY, "again"),
              () -> desk.restore(1, 1),
              () -> desk.search(1, SHORT));
      for (ThrowingCallable wish : wishes) {
        assertThatThrownBy(wish)
            .isInstanceOf(SearchingException.class)
            .hasMessage("A search runs; stop it, or wait until it ends.");
      }
      assertThat(desk.putBy(1, "meanwhile").number()).isEqualTo(2);
      assertThat(desk.progress().state()).isEqualTo(State.RUNNING);
      await(() -> desk.progress().course().size() > 1);
      assertThat(desk.progress().sentence()).startsWith("Searching; the best after ");
      desk.stopSearch();
      await(() -> !desk.searching());
      assertThat(desk.progress().state()).isEqualTo(State.KEPT);
      assertThat(desk.now().plan().origin().stopped()).isEqualTo("interrupted");
      assertThat(desk.now().revision()).isEqualTo(2);
      desk.keep(2, new Touch.Hold(job, false, null));
      desk.stopSearch();
      assertThat(desk.progress().state()).isEqualTo(State.KEPT);
    }
  }

  @Test
  void keepsTheBestWhenTheDeskIsClosed() {
    try (Desk desk = open()) {
      desk.search(1, ENDLESS);
      await(() -> desk.progress().course().size() > 1);
    }
    try (Desk desk = open()) {
      assertThat(desk.now().revision()).isEqualTo(2);
      assertThat(desk.now().plan().origin().method()).isEqualTo("search");
    }
  }

  @Test
  void saysThatItFailedAndLeavesThePlan() throws Exception {
    try (Desk desk = open()) {
      try (Connection other =
              DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(BoardStore.NAME));
          Statement statement = other.createStatement()) {
        statement.execute(
            "CREATE TRIGGER full BEFORE INSERT ON step BEGIN SELECT RAISE(ABORT, 'full'); END");
      }
      desk.search(1, SHORT);
      await(() -> !desk.searching());
      assertThat(desk.progress().state()).isEqualTo(State.FAILED);
      assertThat(desk.progress().sentence())
          .startsWith("The search failed; the plan stays as it is.")
          .contains("could not be written");
      assertThat(desk.now().revision()).isEqualTo(1);
    }
  }

  @Test
  void findsInTheBackgroundWhatNoPlanCanBeBelow() {
    try (Desk desk = open()) {
      AtomicInteger told = new AtomicInteger();
      desk.listen(told::incrementAndGet);
      await(() -> desk.now().plan().bounds() != null);
      PlanBounds bounds = desk.now().plan().bounds();
      assertThat(desk.now().revision()).isEqualTo(1);
      await(() -> told.get() > 0);

      String job = desk.now().plan().rigs().get(0).jobs().get(0).job();
      BoardState pinned = desk.keep(1, new Touch.Hold(job, false, null));
      assertThat(pinned.plan().bounds()).as("one more pin changes no bound").isEqualTo(bounds);
      BoardState free = desk.keep(2, new Touch.Release(job));
      assertThat(free.plan().bounds()).as("without a pin more is possible").isNull();
      await(() -> desk.now().plan().bounds() != null);
      assertThat(desk.now().plan().bounds()).isEqualTo(bounds);
      BoardState out = desk.keep(3, new Touch.LeaveOut(job));
      assertThat(out.plan().bounds()).isNull();
      await(() -> desk.now().plan().bounds() != null);
      assertThat(desk.now().plan().bounds().leftOutPoints()).isPositive();
    }
    try (Desk desk = open()) {
      assertThat(desk.now().plan().bounds()).isNotNull();
      assertThat(desk.undo(4).plan().bounds()).isNotNull();
    }
  }
}
