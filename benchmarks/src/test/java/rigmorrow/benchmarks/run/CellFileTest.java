package rigmorrow.benchmarks.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.benchmarks.compare.Cells;
import rigmorrow.data.problem.InputException;

class CellFileTest {
  private static final Cell FIRST =
      Cells.cell(
          "a day, \"busy\"",
          1,
          "due date",
          new Score(0, 2, 30),
          29L,
          1,
          List.of(new Moment(10, new Score(0, 3, 40)), new Moment(1000, new Score(0, 2, 30))));
  private static final Cell SECOND = Cells.cell("B", 2, "ours", 0, 7);

  @TempDir private Path folder;

  private CellFile written() throws IOException {
    CellFile file = new CellFile(folder);
    file.append(FIRST);
    file.append(SECOND);
    return file;
  }

  @Test
  void readsWhatItAppended() throws IOException, InputException {
    assertThat(written().read()).containsExactly(FIRST, SECOND);
    assertThat(Files.readAllLines(folder.resolve("cells.csv"))).hasSize(3);
  }

  @Test
  void dropsALastLineThatWasCut() throws IOException, InputException {
    CellFile file = written();
    Path path = folder.resolve("cells.csv");
    String whole = Files.readString(path);
    for (int cut = 1; cut < 30; cut++) {
      Files.writeString(path, whole.substring(0, whole.length() - cut));
      assertThat(file.read()).containsExactly(FIRST);
      file.append(SECOND);
      assertThat(file.read()).containsExactly(FIRST, SECOND);
      assertThat(path).hasContent(whole);
    }
  }

  @Test
  void tellsOfEveryLineThatIsNoCell() throws IOException {
    CellFile file = written();
    Files.writeString(folder.resolve("cells.csv"), "x,y\nz\n", StandardOpenOption.APPEND);
    assertThatThrownBy(file::read)
        .isInstanceOf(InputException.class)
        .hasMessageContaining("2 problems")
        .hasMessageContaining("row 4")
        .hasMessageContaining("row 5");
  }
}
