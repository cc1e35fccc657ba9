package rigmorrow.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.shot.Batch;

class BatchFolderTest {
  private static final Batch DAY = Demo.batch(5, 3, LocalDate.of(2026, 3, 18));

  @TempDir private Path folder;

  @Test
  void readsWhatItWrote() throws IOException {
    BatchFolder.write(folder, DAY);
    BatchFolder.Reading reading = BatchFolder.read(folder);
    assertThat(reading.refused()).isEmpty();
    assertThat(reading.days()).containsExactly(new BatchFolder.Day("2026-03-18", DAY));
  }

  @Test
  void takesTheFloorBesideTheDaysForADayWithoutOne() throws IOException {
    BatchFolder.write(folder, DAY);
    Files.move(folder.resolve("2026-03-18/floor.json"), folder.resolve("floor.json"));
    assertThat(BatchFolder.read(folder).days())
        .containsExactly(new BatchFolder.Day("2026-03-18", DAY));
  }

  @Test
  void takesAShotListInJsonByAnyName() throws IOException, InputException {
    BatchFolder.write(folder, DAY);
    Path day = Files.move(folder.resolve("2026-03-18"), folder.resolve("a busy one"));
    Files.delete(day.resolve("shot-list.csv"));
    Formats.writeShotList(DAY.shotList(), day.resolve("shot-list.json"), SafeFile.Existing.KEEP);
    assertThat(BatchFolder.read(folder).days())
        .containsExactly(new BatchFolder.Day("a busy one", DAY));
  }

  @Test
  void tellsWhatIsWrongWithEachDayAndKeepsTheOthers() throws IOException {
    BatchFolder.write(folder, DAY);
    copyDay("2026-03-19");
    Files.delete(folder.resolve("2026-03-19/shot-list.csv"));
    copyDay("2026-03-20");
    Files.delete(folder.resolve("2026-03-20/floor.json"));
    copyDay("2026-03-21");
    Files.writeString(folder.resolve("2026-03-21/floor.json"), "{}");
    copyDay("someday");
    copyDay("2026-03-22");
    Files.writeString(folder.resolve("2026-03-22/floor.yaml"), "");
    BatchFolder.Reading reading = BatchFolder.read(folder);
    assertThat(reading.days()).hasSize(1);
    assertThat(reading.refused())
        .extracting(Throwable::getMessage)
        .satisfiesExactly(
            problem -> assertThat(problem).contains("2026-03-19", "no shot list"),
            problem -> assertThat(problem).contains("2026-03-20", "no floor file"),
            problem -> assertThat(problem).contains("2026-03-21", "floor.json", "rigs"),
            problem -> assertThat(problem).contains("2026-03-22", "floor.json and floor.yaml"),
            problem -> assertThat(problem).contains("someday", "a date such as"));
  }

  @Test
  void tellsOfAFolderThatIsNoneOrHasNoDays() throws IOException {
    assertThat(BatchFolder.read(folder).refused())
        .singleElement()
        .satisfies(problem -> assertThat(problem).hasMessageContaining("no folders in it"));
    assertThat(BatchFolder.read(folder.resolve("nowhere")).refused())
        .singleElement()
        .satisfies(problem -> assertThat(problem).hasMessageContaining("no folder"));
  }

  private void copyDay(String name) throws IOException {
    Path to = Files.createDirectory(folder.resolve(name));
    for (String file : new String[] {"floor.json", "shot-list.csv"}) {
      Files.copy(folder.resolve("2026-03-18").resolve(file), to.resolve(file));
    }
  }
}
