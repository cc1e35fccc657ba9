package rigmorrow.data.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Place;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.table.TableOptions;

class CsvAnnotatorTest {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  @Test
  void addsAColumnAndLeavesEveryOtherByteAsItIs() throws Exception {
    String sheet =
        "Article; Recipe ;\"Height (mm)\";Navn\r\n1;spin-36;\"3\"\"1\";Rød\r\n\r\n2;nej\r\n3;spin-36;1;x";
    String copy = new String(annotated(sheet.getBytes(WINDOWS_1252)), WINDOWS_1252);
    assertThat(copy)
        .isEqualTo(
            "Article; Recipe ;\"Height (mm)\";Navn;problems\r\n"
                + "1;spin-36;\"3\"\"1\";Rød;\"C Height (mm): '3\"\"1'; accepted: a number such as"
                + " 12 or 12.5, not below 0\"\r\n"
                + "\r\n"
                + "2;nej;;;\"B Recipe: 'nej'; accepted: a recipe of the floor: spin-36,"
                + " stills-4\"\r\n"
                + "3;spin-36;1;x");
  }

  @Test
  void keepsTheMarkTheDelimiterLineAndUtf16() throws Exception {
    byte[] body = "sep=\t\nArticle\tRecipe\n1\tnope\n".getBytes(StandardCharsets.UTF_16LE);
    byte[] sheet = new byte[body.length + 2];
    sheet[0] = (byte) 0xFF;
    sheet[1] = (byte) 0xFE;
    System.arraycopy(body, 0, sheet, 2, body.length);
    byte[] copy = annotated(sheet);
    assertThat(copy).startsWith(0xFF, 0xFE);
    assertThat(new String(copy, 2, copy.length - 2, StandardCharsets.UTF_16LE))
        .startsWith("sep=\t\nArticle\tRecipe\tproblems\n1\tnope\tB Recipe: 'nope'");
  }

  @Test
  void writesAnOldColumnOfProblemsAnew() throws Exception {
    String once = text("Article,Recipe\n1,nope\n2,nope\n");
    String mended = once.replaceFirst("1,nope", "1,spin-36");
    assertThat(text(mended))
        .isEqualTo(
            "Article,Recipe,problems\n1,spin-36,\n2,nope,\"B Recipe: 'nope'; accepted: a recipe of"
                + " the floor: spin-36, stills-4\"\n");
  }

  @Test
  void tellsWhatBelongsToNoRowInTheHeader() throws Exception {
    assertThat(text("Article,Height (kg)\n1,2\n"))
        .isEqualTo(
            "Article,Height (kg),\"problems: row 1, column B, Height (kg): 'kg'; accepted: a unit:"
                + " mm, cm, m or in | row 1, Recipe: nothing there; accepted: a column Recipe\"\n"
                + "1,2\n");
    assertThat(text("Article,Recipe\n"))
        .startsWith("Article,Recipe,problems: row 2: nothing there; accepted: at least one job");
  }

  @Test
  void tellsARowWithTooManyCellsBehindThemAll() throws Exception {
    String once = text("Article,Recipe\n1,spin-36,5\n");
    assertThat(once).contains("\n1,spin-36,5,\"C: '5'; accepted: at most 2 cells");
    assertThat(text(once)).contains("\n1,spin-36,5,\"C: '5'");
  }

  @Test
  void tellsAQuoteThatIsNeverClosedInTheHeader() throws Exception {
    String copy = text("Article,Recipe\n1,nope\n2,\"spin-36\n3,spin-36\n");
    assertThat(copy)
        .startsWith(
            "Article,Recipe,\"problems: row 3: '\"\"spin-36 3,spin-36'; accepted: a closing")
        .contains("\n1,nope,\"B Recipe: 'nope'")
        .endsWith("2,\"spin-36\n3,spin-36\n");
  }

  @Test
  void refusesAFileWithoutRows() {
    byte[] noText = {'P', 'K', 3, 4};
    assertThatThrownBy(
            () ->
                CsvAnnotator.annotated(
                    noText,
                    TableOptions.FIND,
                    TableKind.SHOT_LIST,
                    List.of(),
                    List.of(),
                    "list.csv"))
        .isInstanceOf(InputException.class);
  }

  @Test
  void refusesAFileWithBlankRowsOnly() {
    byte[] blank = "\n \n\n".getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(
            () ->
                CsvAnnotator.annotated(
                    blank,
                    TableOptions.FIND,
                    TableKind.SHOT_LIST,
                    List.of(),
                    List.of(),
                    "list.csv"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("a header row");
  }

  @Test
  void tellsLettersThatTheCharacterSetLacksByTheirNumber() throws Exception {
    byte[] sheet = "Article,Recipe,Navn\n1,nope,R\u00f8d?\n".getBytes(WINDOWS_1252);
    InputProblem problem =
        new InputProblem(
            "list.csv", Place.cell("", 2, 2), "Recipe", "nope", "\u0142\ud83d\ude00 \u00e5");
    byte[] copy =
        CsvAnnotator.annotated(
            sheet, TableOptions.FIND, TableKind.SHOT_LIST, List.of(problem), List.of(), "list.csv");
    assertThat(copy)
        .isEqualTo(
            ("Article,Recipe,Navn,problems\n1,nope,R\u00f8d?,"
                    + "B Recipe: 'nope'; accepted: [U+0142][U+1F600] \u00e5\n")
                .getBytes(WINDOWS_1252));
  }

  @Test
  void refusesACharacterSetThatWouldWriteOtherBytes() {
    byte[] sheet = "Article,Recipe\n1,nope\n".getBytes(StandardCharsets.UTF_16BE);
    TableOptions utf16 = TableOptions.FIND.withCharset(StandardCharsets.UTF_16);
    assertThatThrownBy(
            () ->
                CsvAnnotator.annotated(
                    sheet, utf16, TableKind.SHOT_LIST, List.of(), List.of(), "list.csv"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("byte for byte");
  }

  @Test
  void makesACopyThatIsReadAsIfItHadNoProblems() throws Exception {
    String sheet = "Article;Recipe;Height (mm)\n1;spin-99;310\n2;spin-36;\n";
    String mended = text(sheet).replace("spin-99;", "spin-36;");
    assertThat(mended).contains("did you mean");
    assertThat(ReadTable.csv(mended).shotList())
        .isEqualTo(ReadTable.csv(sheet.replace("spin-99", "spin-36")).shotList());
    assertThat(ReadTable.csv(mended).notes().unknownColumns()).isEmpty();
  }

  @Test
  void passesOverARowInWhichOnlyAProblemIsLeft() throws Exception {
    String mended = "Article,Recipe,Problems\n1,spin-36,\n,,A: gone\n";
    assertThat(ReadTable.csv(mended).shotList().jobs()).hasSize(1);
  }

  private static String text(String sheet) throws Exception {
    return new String(annotated(sheet.getBytes(StandardCharsets.UTF_8)), StandardCharsets.UTF_8);
  }

  private static byte[] annotated(byte[] sheet) throws Exception {
    InputException refusal =
        catchThrowableOfType(
            InputException.class, () -> ReadTable.csv(sheet, "list.csv", TableOptions.FIND));
    List<InputProblem> told = refusal.problems();
    return CsvAnnotator.annotated(
        sheet, TableOptions.FIND, TableKind.SHOT_LIST, told, List.of(), "list.csv");
  }
}
