package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigmorrow.data.workbook.RawWorkbook.cell;
import static rigmorrow.data.workbook.RawWorkbook.formula;
import static rigmorrow.data.workbook.RawWorkbook.number;
import static rigmorrow.data.workbook.RawWorkbook.text;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.table.TableOptions;

class WorkbookAnnotatorTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final List<String> PARTS =
      List.of(
          "[Content_Types].xml",
          "_rels/.rels",
          "xl/workbook.xml",
          "xl/_rels/workbook.xml.rels",
          "xl/styles.xml",
          "xl/sharedStrings.xml",
          SHEET);

  @Test
  void keepsEveryCellAndItsPlace() throws Exception {
    RawWorkbook book = book();
    List<InputProblem> told = told(book.bytes());
    byte[] copy = annotated(book.bytes(), told);
    assertThat(told(copy))
        .extracting(InputProblem::line)
        .containsExactlyElementsOf(told.stream().map(InputProblem::line).toList());
    List<Row> rows = rows(copy);
    assertThat(rows).extracting(Row::getRowNum).containsExactly(2, 3, 5, 6, 7);
    assertThat(rows.get(0).getCellText(7)).isEqualTo("problems");
    assertThat(rows.get(1).getCellText(7)).isEmpty();
    assertThat(rows.get(2).getCellText(7))
        .startsWith("C Recipe: 'nope'; accepted: a recipe of the floor: spin-36, stills-4 | D ")
        .contains("D Height (cm): '=B9*2'; accepted: a formula with its value");
  }

  @Test
  void makesACopyThatIsReadLikeASoundFileOnceItIsMended() throws Exception {
    RawWorkbook book = book();
    Map<String, String> parts = parts(annotated(book.bytes(), told(book.bytes())));
    parts.computeIfPresent(
        SHEET,
        (name, xml) ->
            xml.replaceAll("<c r=\"C5\".*?</c>", text("spin-36").replace("<c", "<c r=\"C5\""))
                .replaceAll("<c r=\"D5\".*?</c>", number("30").replace("<c", "<c r=\"D5\"")));
    assertThat(parts.get(SHEET)).contains("<c r=\"H5\""); // the problem is told still
    RawWorkbook sound = new RawWorkbook().sheet("Tomorrow").from1904();
    fill(sound, text("spin-36"), number("30"));
    ShotTableReading reading = ReadTable.workbook(RawWorkbook.zipped(parts));
    assertThat(reading.shotList()).isEqualTo(ReadTable.workbook(sound.bytes()).shotList());
    assertThat(reading.shotList().jobs()).hasSize(4);
    assertThat(reading.notes().unknownColumns()).containsExactly("column G, without header");
  }

  @Test
  void marksTheCellsThatProblemsAreAbout() throws Exception {
    RawWorkbook book = book();
    Map<String, String> parts = parts(annotated(book.bytes(), told(book.bytes())));
    assertThat(parts.get("xl/styles.xml")).contains("FFE0B2");
    assertThat(styleOf("C5", parts.get(SHEET)))
        .isNotEmpty()
        .isEqualTo(styleOf("D5", parts.get(SHEET)))
        .isNotEqualTo(styleOf("C3", parts.get(SHEET)));
  }

  private static String styleOf(String cell, String sheet) {
    return sheet.replaceAll("(?s).*<c r=\"" + cell + "\"(?: s=\"(\\d+)\")?.*", "$1");
  }

  private static Map<String, String> parts(byte[] workbook) throws InputException {
    WorkbookParts parts = WorkbookParts.unpack(workbook, new Problems("copy.xlsx"));
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : PARTS) {
      texts.put(name, new String(parts.part(name), StandardCharsets.UTF_8));
    }
    return texts;
  }

  private static RawWorkbook book() {
    RawWorkbook book = new RawWorkbook().sheet("Read me").texts("x").sheet("Tomorrow");
    return fill(book.from1904(), text("nope"), formula("B9*2"));
  }

  /** Leading rows and columns are empty, days are counted from 1904, an article is merged. */
  private static RawWorkbook fill(RawWorkbook book, String recipe, String height) {
    return book.rowAt(
            2, "", text("Article"), text("Recipe"), text("Height (cm)"), text("Due"), text("Glass"))
        .row(
            "",
            book.number("417", "00000"),
            text("spin-36"),
            number("30.5"),
            book.number("44890.666666666664", "yyyy-mm-dd hh:mm"),
            cell("b", "1"))
        .rowAt(5, "", text("00418"), recipe, height, book.number("0.5", "h:mm"), cell("b", "0"))
        .row("", "", text("stills-4"), formula("15*2", "n", "30"), "", "")
        .row("", text("00419"), text("spin-36"), "", "", "", text("call me"))
        .merge("B5:B6");
  }

  private static List<InputProblem> told(byte[] bytes) {
    return catchThrowableOfType(InputException.class, () -> ReadTable.workbook(bytes)).problems();
  }

  private static byte[] annotated(byte[] bytes, List<InputProblem> told) throws InputException {
    return WorkbookAnnotator.annotated(
        bytes, TableOptions.FIND, TableKind.SHOT_LIST, told, List.of(), "list.xlsx");
  }

  private static List<Row> rows(byte[] workbook) throws Exception {
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook))) {
      assertThat(book.getSheets()).hasSize(1);
      assertThat(book.getFirstSheet().getName()).isEqualTo("Tomorrow");
      return book.getFirstSheet().read();
    }
  }
}
