package rigmorrow.benchmarks.instance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.BatchFolder;
import rigmorrow.data.demo.DemoHistory;
import rigmorrow.model.shot.Batch;

/**
 * The stored days of the demo studio. They are written anew by this test with {@code
 * -Drigmorrow.rewrite=true}; remove days by hand when there are to be fewer.
 */
class StoredBatchesTest {
  private static final Path FOLDER = Project.folder("batches");
  private static final int DAYS = 30;

  @Test
  void readBackToWhatTheGeneratorMakes() throws IOException {
    List<Batch> days = DemoHistory.days(DAYS);
    if (Boolean.getBoolean("rigmorrow.rewrite")) {
      for (Batch day : days) {
        BatchFolder.write(FOLDER, day);
      }
    }
    BatchFolder.Reading stored = BatchFolder.read(FOLDER);
    assertThat(stored.refused()).isEmpty();
    assertThat(stored.days()).hasSize(DAYS);
    for (int i = 0; i < DAYS; i++) {
      BatchFolder.Day day = stored.days().get(i);
      assertThat(day.name()).isEqualTo(days.get(i).shotList().date().toString());
      assertThat(day.batch()).as(day.name()).isEqualTo(days.get(i));
    }
  }
}
