package rigmorrow.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigmorrow.data.shottable.ReadTable.DATE;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.shottable.SmallFloor;
import rigmorrow.data.table.CellEdit;
import rigmorrow.data.table.OpenTable;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.workbook.RawWorkbook;

/** A table that is mended cell by cell reads like a file in which the same was mended. */
class MendedTableTest {
  private static final ShotTableOptions OPTIONS = new ShotTableOptions(DATE, 2, TableOptions.FIND);

  private static final String SHEET =
      """
      article;recipe;length (cm);note

      0417;spin-99;30,5;"a;b"
      00418;stills-4;1.234,5
      00419;spin-36;wide;
      """;

  private static final List<CellEdit> EDITS =
      List.of(
          new CellEdit(3, 2, "spin-36"),
          new CellEdit(4, 3, "12,5"),
          new CellEdit(4, 4, "say \"when\"; then go"),
          new CellEdit(5, 3, ""));

  @Test
  void readsAsAFileThatWasMendedTheSameWay() throws Exception {
    InputFile file = csv(SHEET);
    ShotTableReading mended = read(mended(file, EDITS));
    assertThat(mended.shotList().jobs()).hasSize(3);
    assertThat(mended.shotList().jobs().get(1).item().lengthMm()).isEqualTo(125);
    assertThat(mended.shotList().jobs().get(1).note()).isEqualTo("say \"when\"; then go");
    byte[] copy = Formats.annotatedShotTable(file, TableOptions.FIND, List.of(), EDITS);
    ShotTableReading again =
        read(Formats.openShotTable(new InputFile("list.csv", copy), TableOptions.FIND));
    assertThat(again.shotList()).isEqualTo(mended.shotList());
  }

  @Test
  void keepsOtherCellsOfTheFileByteForByte() throws Exception {
    byte[] copy = Formats.annotatedShotTable(csv(SHEET), TableOptions.FIND, List.of(), EDITS);
    assertThat(new String(copy, StandardCharsets.UTF_8).lines())
        .containsExactly(
            "article;recipe;length (cm);note;problems",
            "",
            "0417;spin-36;30,5;\"a;b\"",
            "00418;stills-4;12,5;\"say \"\"when\"\"; then go\"",
            "00419;spin-36;;");
  }

  @Test
  void tellsWhatIsStillWrong() throws Exception {
    InputFile file = csv(SHEET);
    List<InputProblem> before = problems(Formats.openShotTable(file, TableOptions.FIND));
    List<InputProblem> after = problems(mended(file, EDITS.subList(0, 1)));
    List<InputProblem> expected = new ArrayList<>(before);
    expected.removeIf(problem -> problem.place().row() == 3);
    assertThat(expected).isNotEmpty().hasSizeLessThan(before.size());
    assertThat(after).containsExactlyElementsOf(expected);
  }

  @Test
  void mendsAHeader() throws Exception {
    InputFile file = csv("article,recepie\n1,spin-36\n");
    assertThat(problems(Formats.openShotTable(file, TableOptions.FIND))).isNotEmpty();
    List<CellEdit> edits = List.of(new CellEdit(1, 2, "recipe"));
    assertThat(read(mended(file, edits)).shotList().jobs()).hasSize(1);
  }

  @Test
  void mendsAWorkbookAndTakesMergedCellsApart() throws Exception {
    RawWorkbook book =
        new RawWorkbook()
            .sheet("Tomorrow")
            .row(RawWorkbook.text("Article"), RawWorkbook.text("Recipe"))
            .row(RawWorkbook.text("00417"), RawWorkbook.text("nope"))
            .row(RawWorkbook.text("00418"), "")
            .row(RawWorkbook.text("00419"), "")
            .merge("B2:B4");
    InputFile file = new InputFile("list.xlsx", book.bytes());
    List<CellEdit> edits = List.of(new CellEdit(2, 2, "spin-36"), new CellEdit(4, 2, "stills-4"));
    List<InputProblem> left = problems(mended(file, edits));
    assertThat(left).extracting(problem -> problem.place().row()).containsExactly(3);
    List<CellEdit> all = new ArrayList<>(edits);
    all.add(new CellEdit(3, 2, "stills-4"));
    byte[] copy = Formats.annotatedShotTable(file, TableOptions.FIND, List.of(), all);
    OpenTable again = Formats.openShotTable(new InputFile("copy.xlsx", copy), TableOptions.FIND);
    assertThat(read(again).shotList()).isEqualTo(read(mended(file, all)).shotList());
    byte[] half = Formats.annotatedShotTable(file, TableOptions.FIND, left, edits);
    OpenTable halfAgain =
        Formats.openShotTable(new InputFile("half.xlsx", half), TableOptions.FIND);
    assertThat(problems(halfAgain)).extracting(InputProblem::value).containsExactly("nope");
  }

  @Test
  void leavesOutARowOfWhichNothingIsLeft() throws Exception {
    InputFile file = csv("article,recipe\n1,spin-36\n2,\n");
    OpenTable mended = mended(file, List.of(new CellEdit(3, 1, " ")));
    assertThat(read(mended).shotList().jobs()).hasSize(1);
  }

  /** Whoever empties a row's only cell and fills another moves what stands there. */
  @Test
  void doesAllThatIsMendedInARowBeforeItIsBlank() throws Exception {
    InputFile file = csv("article,recipe,name\n1,spin-36,\n2,,\n");
    List<CellEdit> edits =
        List.of(new CellEdit(3, 1, ""), new CellEdit(3, 2, "spin-36"), new CellEdit(3, 1, "00007"));
    assertThat(read(mended(file, edits)).shotList().jobs())
        .extracting(job -> job.article())
        .containsExactly("1", "00007");
  }

  @Test
  void refusesCellsThatAreNotThere() throws Exception {
    OpenTable table = Formats.openShotTable(csv(SHEET), TableOptions.FIND);
    assertThatThrownBy(() -> table.with(List.of(new CellEdit(2, 1, "x"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("row 2");
    assertThatThrownBy(() -> table.with(List.of(new CellEdit(3, 9, "x"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("accepted: 1 to 4");
    assertThatThrownBy(() -> new CellEdit(0, 1, "x")).isInstanceOf(IllegalArgumentException.class);
  }

  private static InputFile csv(String text) {
    return new InputFile("list.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static OpenTable mended(InputFile file, List<CellEdit> edits) throws InputException {
    return Formats.openShotTable(file, TableOptions.FIND).with(edits);
  }

  private static ShotTableReading read(OpenTable table) throws InputException {
    return Formats.readShotTable(table, SmallFloor.FLOOR, OPTIONS);
  }

  private static List<InputProblem> problems(OpenTable table) {
    return catchThrowableOfType(InputException.class, () -> read(table)).problems();
  }
}
