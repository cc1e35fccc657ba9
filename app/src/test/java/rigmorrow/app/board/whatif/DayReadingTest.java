package rigmorrow.app.board.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.whatif.SmallStudy;

class DayReadingTest {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  @TempDir Path folder;

  private DaySource source() {
    SmallStudy.write(folder, SmallStudy.days(2, 5), SmallStudy.study());
    return DaySource.folder(folder.resolve("days"));
  }

  @Test
  void readsOnceAndTells() {
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger told = new AtomicInteger();
    DayReading reading =
        new DayReading(
            source(), (from, days) -> taken.addAndGet(days.size()), told::incrementAndGet);
    reading.ask();
    reading.join(PATIENCE);
    assertThat(reading.ask().state()).isEqualTo(DayReading.State.READY);
    assertThat(taken).hasValue(2);
    assertThat(told).hasValue(1);
  }

  @ParameterizedTest
  @ValueSource(
      classes = {OutOfMemoryError.class, StackOverflowError.class, IllegalStateException.class})
  void saysThatItHasEndedWhateverEndsIt(Class<? extends Throwable> kind) {
    AtomicInteger told = new AtomicInteger();
    DayReading reading =
        new DayReading(source(), (from, days) -> fail(kind), told::incrementAndGet);
    reading.ask();
    reading.join(PATIENCE);
    assertThat(reading.now().state()).isEqualTo(DayReading.State.REFUSED);
    assertThat(reading.now().sentence()).contains("could not be read");
    assertThat(told).hasValue(1);
  }

  private static void fail(Class<? extends Throwable> kind) {
    try {
      Throwable failure = kind.getConstructor().newInstance();
      if (failure instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) failure;
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }
}
