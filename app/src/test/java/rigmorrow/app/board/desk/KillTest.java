package rigmorrow.app.board.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.store.BoardStore;
import rigmorrow.app.board.store.Step;
import rigmorrow.app.board.store.StoredState;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.solver.HandTimer;

/**
 * A board that is killed loses at most the touch in flight. Rounds go on with the board of the
 * round before, so that what one kill left behind is what the next process opens.
 *
 * <p>{@code -Drigmorrow.kill.rounds=200} makes it thorough.
 */
class KillTest {
  private static final int ROUNDS = Integer.getInteger("rigmorrow.kill.rounds", 40);
  private static final int MOST_LINES = 8;
  private static final int MOST_WORKING_MILLIS = 50;
  private static final int POLL_MILLIS = 2;
  private static final int MOST_OPENING_MILLIS = 900;

  /** One in so many is killed before it has said anything, most likely while it opens. */
  private static final int EARLY = 6;

  @TempDir Path folder;

  private final Random random = new Random(42);
  private final Map<Long, String> saidByRevision = new HashMap<>();
  private long checked;
  private long inFlight;

  @Test
  void losesAtMostTheTouchInFlight() throws Exception {
    long begin = System.nanoTime();
    for (int round = 0; round < ROUNDS; round++) {
      long last = killed(round);
      if (!saidByRevision.isEmpty()) {
        check(last);
      }
    }
    everyStateIsWhole();
    System.out.printf(
        "%d kills, %d revisions, %d of them stored and not yet said, %d s%n",
        ROUNDS, checked, inFlight, (System.nanoTime() - begin) / 1_000_000_000);
    assertThat(checked).isGreaterThan(ROUNDS);
  }

  @Test
  void keepsASecondProcessOutUntilItIsKilled() throws Exception {
    Path said = folder.resolve("said.txt");
    Process process = start(1, said);
    try {
      while (process.isAlive() && Files.size(said) == 0) {
        Thread.sleep(POLL_MILLIS);
      }
      assertThatThrownBy(() -> Desk.open(folder, null, null, Clock.systemUTC()))
          .isInstanceOf(RefusedException.class)
          .hasMessageContaining("a board that is open already");
      assertThat(process.isAlive()).as(() -> errors()).isTrue();
    } finally {
      process.destroyForcibly().waitFor();
    }
    Desk.open(folder, null, null, Clock.systemUTC()).close();
  }

  /** A second opening that is refused must not give up the lock of the first. */
  @Test
  void keepsASecondProcessOutAfterASecondOpeningHere() throws Exception {
    Path said = folder.resolve("said.txt");
    try (Desk desk =
        Desk.open(folder, Demo.batch(5, 1, LocalDate.of(2026, 3, 18)), null, Clock.systemUTC())) {
      Path another = Files.createSymbolicLink(folder.resolve("another"), folder);
      for (Path path : List.of(folder, another)) {
        assertThatThrownBy(() -> Desk.open(path, null, null, Clock.systemUTC()))
            .isInstanceOf(RefusedException.class)
            .hasMessageContaining("a board that is open already");
      }
      Process process = start(1, said);
      try {
        while (process.isAlive() && Files.size(said) == 0) {
          Thread.sleep(POLL_MILLIS);
        }
      } finally {
        process.destroyForcibly().waitFor();
      }
      assertThat(said).isEmptyFile();
      assertThat(errors()).contains("a board that is open already");
      assertThat(desk.now().revision()).isEqualTo(1);
    }
  }

  /** Runs a process and kills it; the last revision that it said. */
  private long killed(int round) throws Exception {
    Path said = folder.resolve("said.txt");
    Files.deleteIfExists(said);
    Process process = start(round, said);
    try {
      if (random.nextInt(EARLY) == 0) {
        Thread.sleep(random.nextInt(MOST_OPENING_MILLIS));
      } else {
        int lines = 1 + random.nextInt(MOST_LINES);
        while (process.isAlive() && Files.readString(said).lines().count() < lines) {
          Thread.sleep(POLL_MILLIS);
        }
        Thread.sleep(random.nextInt(MOST_WORKING_MILLIS));
      }
      assertThat(process.isAlive()).as(() -> errors()).isTrue();
    } finally {
      process.destroyForcibly().waitFor();
    }
    Files.readString(said).lines().forEach(this::read);
    return saidByRevision.keySet().stream().mapToLong(Long::longValue).max().orElse(0);
  }

  private String errors() {
    try {
      return Files.readString(folder.resolve("error.txt"));
    } catch (IOException e) {
      return "" + e;
    }
  }

  /** The last line may be torn; it ends with a full stop when it is whole. */
  private void read(String line) {
    if (line.endsWith(".")) {
      saidByRevision.put(Long.valueOf(line.substring(0, line.indexOf(' '))), line);
    }
  }

  private void check(long last) {
    try (Desk desk = Desk.open(folder, null, null, Clock.systemUTC())) {
      BoardState now = desk.now();
      assertThat(now.revision()).isBetween(last, last + 1);
      String line = KilledBoard.line(now.revision(), now.plan().figures());
      if (now.revision() == last) {
        assertThat(line).isEqualTo(saidByRevision.get(last));
      } else {
        inFlight++;
        saidByRevision.put(now.revision(), line);
      }
    }
  }

  /** Every state there ever was decodes to what its process said of it. */
  private void everyStateIsWhole() {
    try (BoardStore store = BoardStore.open(folder)) {
      List<Step> steps = store.since(0);
      HandTimer timer = null;
      for (Step step : steps) {
        StoredState.Content content = store.state(step.state()).content();
        if (timer == null) {
          timer = new HandTimer(content.batch().floor());
        }
        PlanFigures figures =
            timer.time(content.batch(), content.orders(), content.origin()).plan().figures();
        assertThat(KilledBoard.line(step.revision(), figures))
            .isEqualTo(saidByRevision.get(step.revision()));
        checked++;
      }
      assertThat(steps).extracting(Step::revision).doesNotHaveDuplicates();
      assertThat(checked).isEqualTo(steps.get(steps.size() - 1).revision());
    }
  }

  private Process start(int seed, Path said) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-Dorg.sqlite.tmpdir=" + folder,
            "-cp",
            System.getProperty("java.class.path"),
            KilledBoard.class.getName(),
            folder.toString(),
            String.valueOf(seed))
        .redirectOutput(said.toFile())
        .redirectError(folder.resolve("error.txt").toFile())
        .start();
  }
}
