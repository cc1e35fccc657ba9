package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigmorrow.data.workbook.RawWorkbook.number;
import static rigmorrow.data.workbook.RawWorkbook.text;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.TableOptions;

/** Workbooks that cannot be copied, or only in part. */
class WorkbookAnnotatorLimitsTest {
  private static final String HEADER = "Article|Recipe";
  private static final List<InputProblem> TOLD =
      List.of(new InputProblem("list.xlsx", Place.cell("T", 2, 2), "Recipe", "nope", "a recipe"));

  @Test
  void refusesAnEmptySheet() {
    RawWorkbook book = RawWorkbook.ofTexts("Full", HEADER, "1|nope").sheet("T");
    assertThat(refusal(book, TableOptions.FIND.withSheet("T")))
        .isEqualTo("file: nothing there; accepted: a header row and at least one job");
  }

  @Test
  void refusesARowThatReachesTheLastColumn() {
    RawWorkbook book =
        RawWorkbook.ofTexts("T", HEADER).raw("<row r=\"2\"><c r=\"XFD2\"><v>1</v></c></row>");
    assertThat(refusal(book, TableOptions.FIND))
        .isEqualTo("sheet 'T', row 2, column XFD: '1'; accepted: at most 1000 columns");
  }

  @Test
  void refusesASheetWithoutRoomForTheProblems() throws Exception {
    assertThat(refusal(wide(1_000), TableOptions.FIND))
        .isEqualTo(
            "sheet 'T', row 1, column ALL: '1000 columns'; accepted: one less, to leave room for"
                + " the problems");
    assertThat(sheet(wide(999))).contains("<c r=\"ALL2\"");
  }

  @Test
  void refusesMergesThatOverlap() {
    RawWorkbook book =
        RawWorkbook.ofTexts("T", HEADER, "1|nope", "2|nope").merge("A2:A3").merge("A3:B3");
    assertThat(refusal(book, TableOptions.FIND)).startsWith("sheet 'T', row 3, column A: 'merged");
  }

  @Test
  void keepsMergesThatTouch() throws Exception {
    RawWorkbook book =
        RawWorkbook.ofTexts("T", HEADER, "1|nope", "|nope", "2|nope", "|nope")
            .merge("A2:A3")
            .merge("A4:A5");
    assertThat(sheet(book)).contains("ref=\"A2:A3\"", "ref=\"A4:A5\"");
  }

  @Test
  void cutsAMergeOfTheWholeSheetToWhatIsFilled() throws Exception {
    RawWorkbook book = RawWorkbook.ofTexts("T", HEADER, "1|nope").merge("A1:XFD1048576");
    assertThat(sheet(book)).contains("ref=\"A1:B2\"").doesNotContain("XFD");
  }

  @Test
  void leavesOutMergesBesideAndBelowWhatIsFilled() throws Exception {
    RawWorkbook book =
        RawWorkbook.ofTexts("T", HEADER, "1|nope").merge("D1:XFD2").merge("A4:B1048576");
    assertThat(sheet(book)).contains("<c r=\"C2\"").doesNotContain("mergeCell");
  }

  @Test
  void refusesMergesAcrossFarRows() {
    RawWorkbook book =
        RawWorkbook.ofTexts("T", HEADER, "1|nope")
            .rowAt(1_048_576, text("2"), text("nope"))
            .merge("A2:A1048576");
    assertThat(refusal(book, TableOptions.FIND))
        .startsWith("sheet 'T': 'more than 1000000 merged cells'");
  }

  @Test
  void leavesOutFormatsOfCellsBeyondWhatIsFilled() throws Exception {
    RawWorkbook book = new RawWorkbook().sheet("T").texts(HEADER);
    book.row(book.number("1", "00000"), text("nope"))
        .raw("<row r=\"3\"><c r=\"A3\"><v>2</v></c><c r=\"XFD3\" s=\"1\"/></row>")
        .raw("<row r=\"4\"><c r=\"A4\" s=\"1\"/></row>");
    assertThat(sheet(book)).contains("r=\"A3\"").doesNotContain("XFD3", "r=\"A4\"");
  }

  private static RawWorkbook wide(int columns) {
    String[] header = new String[columns];
    Arrays.fill(header, text("x"));
    header[0] = text("Article");
    header[1] = text("Recipe");
    return new RawWorkbook().sheet("T").row(header).row(number("1"), text("nope"));
  }

  private static String sheet(RawWorkbook book) throws InputException {
    WorkbookParts copy =
        WorkbookParts.unpack(annotated(book, TableOptions.FIND), new Problems("copy.xlsx"));
    byte[] part = Objects.requireNonNull(copy.part("xl/worksheets/sheet1.xml"));
    return new String(part, StandardCharsets.UTF_8);
  }

  private static String refusal(RawWorkbook book, TableOptions options) {
    InputException refusal =
        catchThrowableOfType(InputException.class, () -> annotated(book, options));
    assertThat(refusal.problems()).hasSize(1);
    return refusal.problems().get(0).line();
  }

  private static byte[] annotated(RawWorkbook book, TableOptions options) throws InputException {
    return WorkbookAnnotator.annotated(
        book.bytes(), options, TableKind.SHOT_LIST, TOLD, List.of(), "list.xlsx");
  }
}
