package rigmorrow.benchmarks.textbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.model.plan.PlanFigures;

/** Tiny files in the formats of the literature, with optima worked out by hand. */
class LiteratureFilesTest {
  private static final long DECODES = 2_000;

  @TempDir private Path folder;

  /** Two jobs on M0 with 2 between them take 9, one on each takes 5. */
  @Test
  void readsParallelMachines() throws IOException {
    Path file = file("2 2 1\n2\n0 3 1 9\n0 4 1 5\nSSD\nM0\n0 2\n7 0\nM1\n0 8\n1 0\n");
    TextbookProblem problem = LiteratureFiles.parallelMachines(file);
    assertThat(problem.jobs()).extracting(TextbookJob::seconds).hasSize(2);
    assertThat(problem.jobs().get(0).seconds()).containsExactly(3, 9);
    assertThat(problem.setups().seconds(0, 0, 1)).isEqualTo(2);
    assertThat(problem.setups().seconds(1, 1, 0)).isEqualTo(1);
    assertThat(problem.setups().seconds(0, problem.setups().initial(), 1)).isZero();
    assertThat(FrontDoor.figures(problem, DECODES).finishedAt()).isEqualTo(5);
  }

  /** The way round is 1 + 1 + 1 one way and 5 + 5 + 5 the other. */
  @Test
  void readsASalesman() throws IOException {
    TextbookProblem problem =
        LiteratureFiles.salesman(
            file(
                "NAME: t\nTYPE: ATSP\nDIMENSION: 3\nEDGE_WEIGHT_FORMAT: FULL_MATRIX\n"
                    + "EDGE_WEIGHT_SECTION\n9999 5 1\n1 9999 5\n5 1 9999\nEOF\n"));
    PlanFigures figures = FrontDoor.figures(problem, DECODES);
    assertThat(figures.changeoverSeconds()).isEqualTo(3);
    assertThat(figures.leftOut()).isZero();
  }

  /**
   * First the second job: setup 1, ends at 5, not late; then setup 2 and the first ends at 10, 4
   * late of weight 3. The other way round the first ends at 10 + 3, 7 late.
   */
  @Test
  void readsTardinessWithSetups() throws IOException {
    TextbookProblem problem =
        LiteratureFiles.tardinessWithSetups(
            file(
                "Problem Instance: 1\nProblem Size: 2\nProcess Times:\n3\n4\nWeights:\n3\n1\n"
                    + "Duedates:\n6\n5\nSetup Times:\n-1 0 10\n-1 1 1\n0 1 9\n1 0 2\n"));
    assertThat(FrontDoor.figures(problem, DECODES).latenessPoints()).isEqualTo(12);
  }

  @Test
  void readsTheInstanceThatIsAskedFor() throws IOException {
    Path file = file(" 1 2 1 1 9 9\n 5 6\n 2 3\n 5 4\n");
    TextbookProblem second = LiteratureFiles.tardiness(file, 2, 2);
    assertThat(second.jobs().get(0).seconds()).containsExactly(5);
    assertThat(second.jobs().get(1).weight()).isEqualTo(3);
    assertThat(second.jobs().get(1).dueSecond()).isEqualTo(4);
  }

  @Test
  void saysWhereAFileIsNotAsDescribed() throws IOException {
    Path shortFile = file("2 2 1\n2\n0 3 1 9\n");
    assertThatThrownBy(() -> LiteratureFiles.parallelMachines(shortFile))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("ends too soon");
    Path words = file("DIMENSION: three\n");
    assertThatThrownBy(() -> LiteratureFiles.salesman(words))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("'three' is no whole number");
  }

  private Path file(String text) throws IOException {
    Path file = folder.resolve("instance.txt");
    Files.writeString(file, text);
    return file;
  }
}
