package rigmorrow.app.board.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.management.LockInfo;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.app.board.scenario.UsualChange;
import rigmorrow.app.planning.Cores;
import rigmorrow.app.planning.CoresTakenException;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.app.whatif.plans.PlanNames;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.outcome.Cell;
import rigmorrow.solver.whatif.CellTask;

/** Nobody waits while plans are named, which takes a while for many days. */
@Timeout(120)
class NamingTest {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** Long enough for any look; spent in full only where somebody does wait. */
  private static final int LOOK_SECONDS = 20;

  private static final RunSettings SETTINGS =
      new RunSettings(null, 20, 1, 1, List.of(), false, false);

  @TempDir Path past;
  @TempDir Path folder;

  private final Names names = new Names();
  private final Cores cores = new Cores();

  /** Lets something happen just before plans are named. */
  private static final class Names extends PlanNames {
    private final Queue<Runnable> before = new ConcurrentLinkedQueue<>();
    private final AtomicInteger asked = new AtomicInteger();

    @Override
    public Map<Cell.Key, String> of(List<CellTask> tasks, CrewPay pay, BooleanSupplier stop) {
      asked.incrementAndGet();
      Runnable first = before.poll();
      if (first != null) {
        first.run();
      }
      return super.of(tasks, pay, stop);
    }
  }

  /** A wish that has plans named. */
  private enum Wish {
    ESTIMATE,
    BEGIN,
    ADD
  }

  private ComparisonDesk desk() throws InterruptedException {
    SmallStudy.write(past, SmallStudy.days(2, 5), SmallStudy.study());
    ComparisonDesk desk =
        new ComparisonDesk(
            DaySource.folder(past.resolve("days")), folder, cores, "rigmorrow test", names);
    desk.look();
    await(() -> desk.look().days().state() != DayReading.State.READING);
    return desk;
  }

  private static void go(ComparisonDesk desk, Wish wish, long number) {
    try {
      switch (wish) {
        case ESTIMATE -> desk.estimate(number, SETTINGS);
        case BEGIN -> desk.begin(number, SETTINGS);
        case ADD -> desk.add(number, new UsualChange.WithoutRig("R2"), null);
      }
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest
  @EnumSource(Wish.class)
  void leavesTheDeskAndTheCoresToOthers(Wish wish) throws Exception {
    try (ComparisonDesk desk = desk()) {
      desk.add(0, new UsualChange.WithoutRig("R1"), null);
      long number = desk.look().document().number();
      desk.begin(number, SETTINGS); // Where no plan is there from before, none has to be found.
      await(() -> desk.progress().state() == ComparisonProgress.State.DONE);
      Thread asking = new Thread(() -> go(desk, wish, number), "asking");
      CompletableFuture<Look> look;
      CompletableFuture<Void> search;
      synchronized (names) { // As if there were plans to be named without end.
        asking.start();
        await(() -> waitsForNames(asking));
        look = CompletableFuture.supplyAsync(desk::look);
        search =
            CompletableFuture.runAsync(() -> cores.share(() -> false, () -> "").begin(() -> {}));
        assertThat(came(look)).as("looking at the desk").isTrue();
        assertThat(came(search)).as("a search for the day").isTrue();
      }
      asking.join(PATIENCE.toMillis());
      assertThat(asking.isAlive()).isFalse();
      assertThat(look.join().document().number()).isEqualTo(number);
      await(() -> desk.progress().state() != ComparisonProgress.State.RUNNING);
    }
  }

  /** Another comparison runs from begin to end while the plans of one more scenario are named. */
  @Test
  void findsThePlansOfTheSettingsThatWereChosenLast() throws Exception {
    RunSettings others = new RunSettings(null, 30, 1, 1, List.of(10.0), false, false);
    try (ComparisonDesk desk = desk()) {
      desk.add(0, new UsualChange.WithoutRig("R1"), null);
      long number = desk.look().document().number();
      desk.begin(number, SETTINGS);
      await(() -> desk.progress().state() == ComparisonProgress.State.DONE);
      assertThat(desk.progress().done()).isEqualTo(4);
      names.before.add(() -> compared(desk, number, others));
      desk.add(number, new UsualChange.WithoutRig("R2"), null);
      assertThat(names.before).isEmpty();
      assertThat(desk.look().settings()).isEqualTo(others);
      assertThat(desk.latest().orElseThrow().compared().settings()).isEqualTo(others);
      assertThat(desk.progress().done()).isEqualTo(8);
      assertThat(desk.progress().all()).isEqualTo(12);
    }
  }

  private static void compared(ComparisonDesk desk, long number, RunSettings settings) {
    try {
      desk.begin(number, settings);
      await(() -> desk.progress().state() == ComparisonProgress.State.DONE);
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  /** Nobody waits for names to hear that a search has the cores. */
  @Test
  void refusesWhereASearchHasTheCoresBeforeItNamesPlans() throws Exception {
    try (ComparisonDesk desk = desk()) {
      desk.add(0, new UsualChange.WithoutRig("R1"), null);
      long number = desk.look().document().number();
      compared(desk, number, SETTINGS);
      cores.share(() -> true, () -> "A search has the cores.");
      int before = names.asked.get();
      assertThatThrownBy(() -> desk.begin(number, SETTINGS))
          .isInstanceOf(CoresTakenException.class)
          .hasMessage("A search has the cores.");
      assertThat(names.asked).hasValue(before);
    }
  }

  private static boolean came(CompletableFuture<?> one) throws Exception {
    try {
      one.get(LOOK_SECONDS, TimeUnit.SECONDS);
      return true;
    } catch (TimeoutException e) {
      return false;
    }
  }

  private boolean waitsForNames(Thread thread) {
    ThreadInfo info = ManagementFactory.getThreadMXBean().getThreadInfo(thread.getId());
    LockInfo lock = info == null ? null : info.getLockInfo();
    return lock != null
        && lock.getClassName().equals(Names.class.getName())
        && lock.getIdentityHashCode() == System.identityHashCode(names);
  }

  private static void await(BooleanSupplier there) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!there.getAsBoolean()) {
      assertThat(System.nanoTime()).isLessThan(end);
      Thread.sleep(10);
    }
  }
}
