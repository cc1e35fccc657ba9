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
import rigmorrow.model.money.DayCost;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.outcome.Outcome;

class CellFileTest {
  private static final RunHead HEAD = new RunHead("rigmorrow 1.0", "b", "500 steps");

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("cells.csv");
  }

  private static KeptCell cell(String scenario, long seed) {
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
    Cell cell = new Cell(new Cell.Key(scenario, -20, "2026-03-02", seed), outcome, 2003);
    return new KeptCell(PlanDigest.plan("of " + scenario, seed), cell);
  }

  private List<KeptCell> append(KeptCell... cells) throws Exception {
    try (CellFile open = CellFile.open(file, HEAD)) {
      for (KeptCell cell : cells) {
        open.append(cell);
      }
      return open.cells();
    }
  }

  @Test
  void readsBackWhatWasAppended() throws Exception {
    List<KeptCell> cells = List.of(cell("a", 1), cell("with, comma and \"quotes\"", 2));
    assertThat(append(cells.toArray(KeptCell[]::new))).isEmpty();
    assertThat(append(cell("b", 1))).isEqualTo(cells);
    assertThat(append()).hasSize(3);
    assertThat(Files.readAllLines(file)).hasSize(5);
  }

  @Test
  void repairsAFileThatWasCutOffAnywhere() throws Exception {
    List<KeptCell> cells = List.of(cell("a", 1), cell("b", 1));
    append(cells.toArray(KeptCell[]::new));
    byte[] whole = Files.readAllBytes(file);
    int lines = 0;
    for (int length = 0; length <= whole.length; length += 1) {
      lines += length > 0 && whole[length - 1] == '\n' ? 1 : 0;
      Files.write(file, java.util.Arrays.copyOf(whole, length));
      List<KeptCell> there = append(cell("c", 1));
      assertThat(there).as("cut at " + length).isEqualTo(cells.subList(0, Math.max(0, lines - 2)));
      List<KeptCell> all = new ArrayList<>(there);
      all.add(cell("c", 1));
      assertThat(append()).isEqualTo(all);
    }
  }

  @Test
  void refusesCellsOfAnotherRun() throws Exception {
    append(cell("a", 1));
    String before = Files.readString(file);
    RunHead other = new RunHead("rigmorrow 1.1", "b", "2 s");
    assertThatThrownBy(() -> CellFile.open(file, other))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(
            "row 1, program: 'rigmorrow 1.0'; accepted: as in this run: rigmorrow 1.1;")
        .hasMessageContaining("row 1, effort: '500 steps'; accepted: as in this run: 2 s;")
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
        .hasMessageContaining("2 columns in place of 28");
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
    assertThat(CellFile.read(alias, HEAD).cells()).hasSize(2);
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
    assertThat(CellFile.read(file, HEAD).cells())
        .extracting(one -> one.cell().key().scenario())
        .containsExactly("a", "b");
    assertThat(CellFile.read(file, HEAD).cells()).hasSize(2);
    assertThat(file).hasContent(cut);
    RunHead other = new RunHead("rigmorrow 1.0", "b", "2 s");
    assertThatThrownBy(() -> CellFile.read(file, other)).hasMessageContaining("effort");
  }

  @Test
  void aFileIsNamedByProgramBuildAndEffort() {
    assertThat(HEAD.id())
        .isEqualTo(new RunHead("rigmorrow 1.0", "b", "500 steps").id())
        .isNotEqualTo(new RunHead("rigmorrow 1.0", "b", "501 steps").id())
        .isNotEqualTo(new RunHead("rigmorrow 1.1", "b", "500 steps").id())
        .isNotEqualTo(new RunHead("rigmorrow 1.0", "c", "500 steps").id())
        .matches("[0-9a-f]{16}");
  }

  /** What an earlier program has kept may be of use to that program. */
  @Test
  void leavesAFileOfAnEarlierVersionAsItIs() throws Exception {
    String before =
        "rigmorrow cells,1,program,rigmorrow 1.0,scenarios,aa,batches,bb,effort,500 steps\n";
    Files.writeString(file, before);
    assertThatThrownBy(() -> CellFile.open(file, HEAD))
        .hasMessageContaining("row 1, version: '1'; accepted: 3");
    assertThatThrownBy(() -> CellFile.read(file, HEAD)).hasMessageContaining("version");
    assertThat(file).hasContent(before);
  }

  @Test
  void takesOnePlanOnce() throws Exception {
    KeptCell one = cell("a", 1);
    Cell.Key other = new Cell.Key("b", 0, "2026-03-03", 1);
    append(one, new KeptCell(one.plan(), one.cell().as(other)), cell("a", 2));
    assertThat(append()).containsExactly(one, cell("a", 2));
  }
}
