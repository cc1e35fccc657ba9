package rigmorrow.app.board.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.ShotJob;

/** How long a touch takes from the wish to the answer; the figures are printed. */
class TouchSpeedTest {
  private static final int TOUCHES = 50;
  private static final long MOST_MILLIS = 100;

  @TempDir Path folder;

  @Test
  void answersATouchOnADayOf150JobsInUnderATenthOfASecond() {
    assertThat(measured(150)).isLessThan(MOST_MILLIS * 1000);
  }

  @Test
  void answersATouchOnADayOf400Jobs() {
    assertThat(measured(400)).isLessThan(4 * MOST_MILLIS * 1000);
  }

  /** Median microseconds of trying, and of keeping. */
  private long measured(int jobs) {
    try (Desk desk =
        Desk.open(
            folder, Demo.batch(jobs, 1, LocalDate.of(2026, 3, 18)), null, Clock.systemUTC())) {
      Random random = new Random(7);
      List<Long> tried = new ArrayList<>();
      List<Long> kept = new ArrayList<>();
      int breaking = 0;
      while (kept.size() < TOUCHES) {
        Touch touch = touch(desk.now(), random);
        long begin = System.nanoTime();
        Tried answer = desk.attempt(desk.now().revision(), touch);
        long middle = System.nanoTime();
        if (answer.allowed()) {
          tried.add((middle - begin) / 1000);
          desk.keep(desk.now().revision(), touch);
          kept.add((System.nanoTime() - middle) / 1000);
          breaking += answer.breaches().isEmpty() ? 0 : 1;
        }
      }
      System.out.printf(
          "%d jobs, microseconds: tried %s, kept %s; %d of %d touches broke rules%n",
          jobs, summary(tried), summary(kept), breaking, TOUCHES);
      return Math.max(median(tried), median(kept));
    }
  }

  private static Touch touch(BoardState now, Random random) {
    List<ShotJob> list = now.batch().shotList().jobs();
    String job = list.get(random.nextInt(list.size())).id();
    List<RigPlan> rigs = now.plan().rigs();
    RigPlan rig = rigs.get(random.nextInt(rigs.size()));
    return switch (random.nextInt(8)) {
      case 0 -> new Touch.Hold(job, random.nextBoolean(), null);
      case 1 -> new Touch.SetWeight(job, 1 + random.nextInt(9));
      case 2 ->
          new Touch.SetPromise(
              job, now.batch().shotList().date().atTime(8 + random.nextInt(9), 0), false);
      case 3 -> new Touch.LeaveOut(job);
      case 4 -> new Touch.TakeIn(job);
      default -> new Touch.Move(job, rig.rig(), random.nextInt(rig.jobs().size() + 1));
    };
  }

  private static long median(List<Long> micros) {
    return micros.stream().sorted().toList().get(micros.size() / 2);
  }

  private static String summary(List<Long> micros) {
    long[] sorted = micros.stream().mapToLong(Long::longValue).sorted().toArray();
    return "median "
        + sorted[sorted.length / 2]
        + " longest "
        + Arrays.stream(sorted).max().orElse(0);
  }
}
