package rigmorrow.data.cells;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.money.DayCost;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.outcome.Outcome;

class CellFileTest {
  private static final RunHead HEAD = new RunHead("rigmorrow 1.0", "aa", "bb", "500 steps");

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("cells.csv");
  }

  private static Cell cell(String scenario, long seed) {
    LoadCurve curve = new LoadCurve(LongStream.range(0, 48).boxed().toList());
    Outcome outcome =
        new Outcome(
            2,
            30,
            1,
            20,
            19,
            777,
            61_234,
            5000,
            new Outcome.CrewTime(1, 2, 3),
            new Outcome.RigTime(4, 5, 6),
            new DayCost(0.1 + 0.2, 1.0 / 3, 3, 4, 5),
            0,
            curve,
            new LoadCurve(Collections.nCopies(48, 9L)));
    return new Cell(new Cell.Key(scenario, -20, "2026-03-02", seed), outcome, 2003);
  }

  private List<Cell> append(Cell... cells) throws Exception {
    try (CellFile open = CellFile.open(file, HEAD)) {
      for (Cell cell : cells) {
        open.append(cell);
      }
      return open.cells();
    }
  }

  @Test
  void readsBackWhatWasAppended() throws Exception {
    List<Cell> cells = List.of(cell("a", 1), cell("with, comma and \"quotes\"", 2));
    assertThat(append(cells.toArray(Cell[]::new))).isEmpty();
    assertThat(append(cell("b", 1))).isEqualTo(cells);
    assertThat(append()).hasSize(3);
    assertThat(Files.readAllLines(file)).hasSize(5);
  }

  @Test
  void repairsAFileThatWasCutOffAnywhere() throws Exception {
    List<Cell> cells = List.of(cell("a", 1), cell("b", 1));
    append(cells.toArray(Cell[]::new));
    byte[] whole = Files.readAllBytes(file);
    int lines = 0;
    for (int length = 0; length <= whole.length; length += 1) {
      lines += length > 0 && whole[length - 1] == '\n' ? 1 : 0;
      Files.write(file, java.util.Arrays.copyOf(whole, length));
      List<Cell> there = append(cell("c", 1));
      assertThat(there).as("cut at " + length).isEqualTo(cells.subList(0, Math.max(0, lines - 2)));
      List<Cell> all = new ArrayList<>(there);
      all.add(cell("c", 1));
      assertThat(append()).isEqualTo(all);
    }
  }

  @Test
  void refusesCellsOfAnotherRun() throws Exception {
    append(cell("a", 1));
    String before = Files.readString(file);
    RunHead other = new RunHead("rigmorrow 1.1", "aa", "bb", "2 s");
    assertThatThrownBy(() -> CellFile.open(file, other))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(
            "row 1, program: 'rigmorrow 1.0'; accepted: as in this run: rigmorrow 1.1;")
        .hasMessageContaining("row 1, effort: '500 steps'; accepted: as in this run: 2 s;")
        .hasMessageContaining("another --out")
        .hasMessageNotContaining("row 1, batches");
    assertThat(file).hasContent(before);
    assertThat(append()).hasSize(1);
  }

  @Test
  void refusesAFileThatIsSomethingElse() throws Exception {
    Files.writeString(file, "name,price\nlamp,5\n");
    assertThatThrownBy(() -> CellFile.open(file, HEAD)).hasMessageContaining("a file of cells");
    assertThat(file).hasContent("name,price\nlamp,5\n");
  }

  @Test
  void refusesRowsThatAreNoCells() throws Exception {
    append(cell("a", 1));
    Files.writeString(file, Files.readString(file) + "a,b\n");
    assertThatThrownBy(() -> CellFile.open(file, HEAD))
        .hasMessageContaining("row 4")
        .hasMessageContaining("2 columns in place of 27");
    String broken = Files.readString(file).replace("a,b\n", "").replace(",2003,", ",soon,");
    Files.writeString(file, broken);
    assertThatThrownBy(() -> CellFile.open(file, HEAD)).hasMessageContaining("row 3");
  }

  @Test
  void twoRunsDoNotWriteToOneFile() throws Exception {
    try (CellFile open = CellFile.open(file, HEAD)) {
      assertThatThrownBy(() -> CellFile.open(file, HEAD))
          .hasMessageContaining("another run is writing to it");
      open.append(cell("a", 1));
    }
    assertThat(append()).hasSize(1);
  }

  /** Another process, which a lock of this one must keep out as well. */
  static final class Other {
    private Other() {}

    /** Leaves with 3 when the file is being written to. */
    public static void main(String[] arguments) throws Exception {
      try {
        CellFile.open(Path.of(arguments[0]), HEAD).close();
      } catch (InputException e) {
        System.exit(e.getMessage().contains("another run is writing to it") ? 3 : 4);
      }
    }
  }

  private int other() throws Exception {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Other.class.getName(),
            file.toString())
        .inheritIO()
        .start()
        .waitFor();
  }

  @Test
  void keepsOtherProcessesOut() throws Exception {
    append(cell("a", 1));
    try (CellFile open = CellFile.open(file, HEAD)) {
      assertThat(open.cells()).hasSize(1);
      assertThat(other()).isEqualTo(3);
    }
    assertThat(other()).isZero();
  }

  /** To close a second channel of a file would give up the lock of the first. */
  @Test
  void keepsOtherProcessesOutWhateverThisOneTries() throws Exception {
    append(cell("a", 1));
    Path alias = Files.createSymbolicLink(folder.resolve("alias.csv"), file);
    try (CellFile open = CellFile.open(file, HEAD)) {
      for (Path name :
          List.of(file, folder.resolve("../" + folder.getFileName() + "/cells.csv"), alias)) {
        assertThatThrownBy(() -> CellFile.read(name, HEAD))
            .isInstanceOf(IOException.class)
            .hasMessageContaining("another run is writing to it");
        assertThatThrownBy(() -> CellFile.open(name, HEAD))
            .isInstanceOf(InputException.class)
            .hasMessageContaining("another run is writing to it");
      }
      assertThat(other()).isEqualTo(3);
      open.append(cell("b", 1));
    }
    assertThat(CellFile.read(alias, HEAD)).hasSize(2);
    assertThat(other()).isZero();
  }

  @Test
  void closesOnlyWhatIsItsOwn() throws Exception {
    CellFile first = CellFile.open(file, HEAD);
    first.close();
    try (CellFile second = CellFile.open(file, HEAD)) {
      first.close();
      assertThatThrownBy(() -> CellFile.open(file, HEAD)).hasMessageContaining("another run");
      second.append(cell("a", 1));
    }
    assertThat(append()).hasSize(1);
  }

  @Test
  void isReadWithoutBeingTouched() throws Exception {
    try (CellFile open = CellFile.open(file, HEAD)) {
      open.append(cell("a", 1));
      open.append(cell("b", 1));
    }
    String cut = Files.readString(file) + "c,0.0,x";
    Files.writeString(file, cut);
    assertThat(CellFile.read(file, HEAD))
        .extracting(one -> one.key().scenario())
        .containsExactly("a", "b");
    assertThat(CellFile.read(file, HEAD)).hasSize(2);
    assertThat(file).hasContent(cut);
    RunHead other = new RunHead("rigmorrow 1.0", "aa", "bb", "2 s");
    assertThatThrownBy(() -> CellFile.read(file, other)).hasMessageContaining("effort");
  }

  @Test
  void aRunIsKnownByWhatIsCompared() {
    var batches = List.of(Samples.tinyBatch());
    var study = Samples.tinyScenarios();
    RunHead head = RunHead.of("p", study, List.of("x"), batches, "e");
    assertThat(RunHead.of("p", study, List.of("x"), batches, "e")).isEqualTo(head);
    assertThat(RunHead.of("p", study, List.of("x"), batches, "e").id())
        .isEqualTo(head.id())
        .isNotEqualTo(RunHead.of("p", study, List.of("x"), batches, "f").id())
        .matches("[0-9a-f]{16}");
    assertThat(RunHead.of("p", study, List.of("y"), batches, "e").batches())
        .isNotEqualTo(head.batches());
    var fewer =
        new rigmorrow.model.scenario.Study(
            study.name(), study.terms(), study.scenarios().subList(0, 2), study.prices());
    RunHead other = RunHead.of("p", fewer, List.of("x"), batches, "e");
    assertThat(other.scenarios()).isNotEqualTo(head.scenarios());
    assertThat(other.batches()).isEqualTo(head.batches());
  }
}
