package rigmorrow.data.cells;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.money.DayCost;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.outcome.Outcome;

/** Files of cells of which a part cannot be read. */
class DamagedCellsTest {
  private static final RunHead HEAD = new RunHead("rigmorrow 1.0", "b", "500 steps");
  private static final int CELLS = 5;

  @TempDir Path folder;
  private Path file;
  private List<KeptCell> cells;
  private List<String> lines;

  @BeforeEach
  void write() throws Exception {
    file = folder.resolve("cells.csv");
    cells = IntStream.range(0, CELLS).mapToObj(seed -> cell("a, \"b\" ä", seed)).toList();
    try (CellFile open = CellFile.open(file, HEAD)) {
      cells.forEach(open::append);
    }
    lines = Files.readAllLines(file);
  }

  private static KeptCell cell(String scenario, long seed) {
    LoadCurve curve = new LoadCurve(Collections.nCopies(48, seed));
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
            new DayCost(1, 2, 3, 4, 5),
            0,
            curve,
            curve);
    Cell cell = new Cell(new Cell.Key(scenario, 0, "2026-03-02", seed), outcome, 2003);
    return new KeptCell(PlanDigest.plan("of " + scenario, seed), cell);
  }

  private List<Path> copies() throws Exception {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(one -> !one.equals(file)).sorted().toList();
    }
  }

  /** Puts something in the place of some cells, counted from 0. */
  private byte[] damage(String instead, int... which) throws Exception {
    List<String> damaged = new ArrayList<>(lines);
    for (int one : which) {
      damaged.set(one + 2, instead);
    }
    byte[] bytes = (String.join("\n", damaged) + "\n").getBytes(StandardCharsets.UTF_8);
    Files.write(file, bytes);
    return bytes;
  }

  private List<KeptCell> without(Integer... which) {
    List<KeptCell> left = new ArrayList<>(cells);
    for (Integer one : which) {
      left.remove(cells.get(one));
    }
    return left;
  }

  private List<KeptCell> opened() throws Exception {
    try (CellFile open = CellFile.open(file, HEAD)) {
      return open.cells();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a,b", "", "\"", "x\" y", "\0\0\0\0", "a,b\r", "\"a\nb\""})
  void usesTheGoodLinesAndKeepsACopyWhereOthersAreBad(String instead) throws Exception {
    byte[] damaged = damage(instead, 1, 3);
    assertThatThrownBy(() -> CellFile.open(file, HEAD))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("row 4");
    KeptCells there = CellFile.read(file, HEAD);
    assertThat(there.cells()).isEqualTo(without(1, 3));
    assertThat(there.damaged()).isGreaterThanOrEqualTo(2);
    assertThat(file).hasBinaryContent(damaged);
    assertThat(copies()).isEmpty();

    Mended mended = CellFile.mend(file, HEAD).orElseThrow();
    assertThat(mended.lost()).isEqualTo(there.damaged());
    assertThat(mended.lines()).isEqualTo(mended.lost() + 3);
    assertThat(mended.copy()).isEqualTo(folder.resolve("cells.damaged-1.csv"));
    assertThat(mended.copy()).hasBinaryContent(damaged);
    assertThat(opened()).isEqualTo(without(1, 3));
    assertThat(Files.readAllLines(file))
        .containsExactly(lines.get(0), lines.get(1), lines.get(2), lines.get(4), lines.get(6));
    assertThat(CellFile.mend(file, HEAD)).isEmpty();
    assertThat(copies()).hasSize(1);
  }

  /** However far the mending came, the file has whole good lines and at most one torn last line. */
  @Test
  void mayBeEndedAnywhereWhileItMends() throws Exception {
    byte[] damaged = damage("a,b", 1, 3);
    CellFile.mend(file, HEAD);
    byte[] good = Files.readAllBytes(file);
    int same = CellFile.sameLines(damaged, good);
    assertThat(new String(good, 0, same, StandardCharsets.UTF_8))
        .isEqualTo(String.join("\n", lines.subList(0, 3)) + "\n");
    for (int written = same; written <= good.length; written++) {
      Files.write(file, Arrays.copyOf(good, written));
      List<KeptCell> left = opened();
      assertThat(without(1, 3)).as("%d bytes", written).startsWith(left.toArray(KeptCell[]::new));
      assertThat(left).isNotEmpty();
    }
  }

  @Test
  void sharesNoLineWithWhatIsOtherFromTheStart() {
    byte[] one = "a\nb\nc".getBytes(StandardCharsets.UTF_8);
    assertThat(CellFile.sameLines(one, one)).isEqualTo(4);
    assertThat(CellFile.sameLines(one, "a\nbc\n".getBytes(StandardCharsets.UTF_8))).isEqualTo(2);
    assertThat(CellFile.sameLines(one, "x".getBytes(StandardCharsets.UTF_8))).isZero();
  }

  @Test
  void saysHowManyCellsAreLost() throws Exception {
    damage("a,b", 2);
    assertThat(CellFile.mend(file, HEAD).orElseThrow().words())
        .isEqualTo(
            "cells.csv was damaged: 1 of 5 cells is lost, and planned anew where it is needed; the"
                + " file as it was is kept as cells.damaged-1.csv");
    lines = Files.readAllLines(file);
    damage("a,b", 0, 3);
    assertThat(CellFile.mend(file, HEAD).orElseThrow().words())
        .startsWith("cells.csv was damaged: 2 of 4 cells are lost, and planned anew where they are")
        .endsWith("cells.damaged-2.csv");
  }

  /** What a crash of the machine may leave: the rest of a block that was never written. */
  @ParameterizedTest
  @ValueSource(strings = {"\0\0\0\0\0\0", "a,0.0,2026-", "\"a, \"\"b"})
  void aTornLastLineCostsNoOther(String torn) throws Exception {
    Files.writeString(file, Files.readString(file) + torn);
    assertThat(CellFile.read(file, HEAD)).isEqualTo(new KeptCells(cells, 0));
    assertThat(CellFile.mend(file, HEAD)).isEmpty();
    assertThat(opened()).isEqualTo(cells);
    assertThat(Files.readAllLines(file)).isEqualTo(lines);
    assertThat(copies()).isEmpty();
  }

  /** Bytes that are no text are longer as text, and must not be taken for what follows them. */
  @Test
  void bytesThatAreNoTextLeaveTheEndWhereItIs() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write((String.join("\n", lines.subList(0, 4)) + "\n").getBytes(StandardCharsets.UTF_8));
    for (int i = 0; i < 40; i++) {
      bytes.write(0xFF);
    }
    bytes.write(("\n" + lines.get(4) + "\n" + lines.get(5)).getBytes(StandardCharsets.UTF_8));
    Files.write(file, bytes.toByteArray());
    assertThat(CellFile.mend(file, HEAD).orElseThrow().lost()).isEqualTo(1);
    assertThat(opened()).isEqualTo(without(3, 4));
    assertThat(copies().get(0)).hasBinaryContent(bytes.toByteArray());
    try (CellFile open = CellFile.open(file, HEAD)) {
      open.append(cells.get(3));
    }
    assertThat(opened()).isEqualTo(without(4));
  }

  @Test
  void losesNoMoreThanTheLinesThatWereHit() throws Exception {
    byte[] whole = Files.readAllBytes(file);
    int from = (lines.get(0) + "\n" + lines.get(1) + "\n").length();
    Random random = new Random(7);
    for (int round = 0; round < 300; round++) {
      byte[] hit = whole.clone();
      int at = from + random.nextInt(whole.length - from);
      hit[at] = (byte) random.nextInt(256);
      Files.write(file, hit);
      CellFile.mend(file, HEAD);
      // A line's end that is hit makes one line of two.
      assertThat(opened().size()).as("byte " + at + " of round " + round).isGreaterThan(CELLS - 3);
      Files.write(file, whole);
      for (Path copy : copies()) {
        Files.delete(copy);
      }
    }
  }

  @Test
  void doesNotMendWhatIsOfSomethingElseOrBeingWritten() throws Exception {
    byte[] damaged = damage("a,b", 1);
    assertThatThrownBy(() -> CellFile.mend(file, new RunHead("rigmorrow 1.0", "c", "500 steps")))
        .hasMessageContaining("row 1, build: 'b'; accepted: as in this run: c;");
    assertThat(file).hasBinaryContent(damaged);
    CellFile.mend(file, HEAD);
    try (CellFile open = CellFile.open(file, HEAD)) {
      assertThatThrownBy(() -> CellFile.mend(file, HEAD)).hasMessageContaining("another run");
      open.append(cells.get(1));
    }
    assertThat(opened()).hasSize(CELLS);
    assertThat(copies()).hasSize(1);
  }

  @Test
  void tellsWhatAFileIsOfWhateverItsVersion() throws Exception {
    assertThat(CellFile.head(file)).contains(HEAD);
    Files.writeString(file, "rigmorrow cells,2,program,rigmorrow 1.0,effort,500 steps\nx\n");
    RunHead before = CellFile.head(file).orElseThrow();
    assertThat(before).isEqualTo(new RunHead("rigmorrow 1.0", "", "500 steps"));
    assertThat(HEAD.sameByAnotherProgram(before)).isTrue();
    assertThat(HEAD.sameByAnotherProgram(HEAD)).isFalse();
    assertThat(HEAD.sameByAnotherProgram(new RunHead("rigmorrow 1.0", "c", "2 s"))).isFalse();
    Files.writeString(file, "name,price\n");
    assertThat(CellFile.head(file)).isEmpty();
    Files.writeString(file, "");
    assertThat(CellFile.head(file)).isEmpty();
  }
}
