package rigmorrow.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.shottable.SmallFloor;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.workbook.RawWorkbook;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;

/** What users expect of an import; the numbers are those of our list of expectations. */
class ImportExpectationsTest {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  @TempDir private Path folder;

  /** A table in either kind of file. */
  private enum Kind {
    CSV("list.csv", ""),
    XLSX("list.xlsx", "sheet 'Tomorrow', ");

    private final String file;
    private final String sheet;

    Kind(String file, String sheet) {
      this.file = file;
      this.sheet = sheet;
    }

    /** Lines of texts divided by bars. */
    private byte[] bytes(String... lines) {
      String text = String.join("\n", lines).replace('|', ';') + "\n";
      return this == CSV
          ? text.getBytes(StandardCharsets.UTF_8)
          : RawWorkbook.ofTexts("Tomorrow", lines).bytes();
    }
  }

  @ParameterizedTest
  @EnumSource
  void tellsAllErrorsAtOnceWithPlaceValueAndMend(Kind kind) throws Exception { // 21
    assertThat(
            told(
                kind,
                "Article|Recipe|Height|Glass",
                "1|spin-99|30|yes",
                "2|spin-36|30 cm|maybe",
                "3||31 cm|no"))
        .containsExactly(
            kind.sheet
                + "row 2, column C, Height: '30'; accepted: a unit (mm, cm, m or in) behind the"
                + " number or in the header, such as 'Height (mm)'",
            kind.sheet
                + "row 2, column B, Recipe: 'spin-99'; accepted: a recipe of the floor: spin-36,"
                + " stills-4 (did you mean spin-36?)",
            kind.sheet
                + "row 3, column D, Glass: 'maybe'; accepted: yes or no, ja or nej/nein, true or"
                + " false, 1 or 0, x",
            kind.sheet
                + "row 4, column B, Recipe: nothing there; accepted: a recipe of the floor:"
                + " spin-36, stills-4");
  }

  @ParameterizedTest
  @EnumSource
  void countsRowsAsTheSpreadsheetDoes(Kind kind) throws Exception { // 22
    assertThat(told(kind, "", "Article|Recipe", "", "1|spin-36", "", "", "2|nope"))
        .singleElement()
        .asString()
        .startsWith(kind.sheet + "row 7, column B, Recipe: 'nope'");
  }

  @Test
  void readsUtf8WithAMarkAndWindows1252() throws Exception { // 23
    String sheet = "Varenr;Opskrift;Navn\n1;spin-36;Rød vase på sokkel\n";
    ShotTableReading marked = read("a.csv", ("\uFEFF" + sheet).getBytes(StandardCharsets.UTF_8));
    ShotTableReading western = read("b.csv", sheet.getBytes(WINDOWS_1252));
    assertThat(marked.shotList()).isEqualTo(western.shotList());
    assertThat(western.shotList().jobs().get(0).name()).isEqualTo("Rød vase på sokkel");
    assertThat(marked.notes().form().charset()).isEqualTo("UTF-8 with byte order mark");
    assertThat(western.notes().form().charset()).isEqualTo("Windows-1252");
  }

  @Test
  void readsADanishSpreadsheet() throws Exception { // 23, 24, 25, 26, 27
    String sheet =
        "Varenr.;Opskrift;Varenavn;Længde (cm);Højde (cm);Vægt (kg);Frist;Skal;Hylde\r\n"
            + "00417;spin-36;Rød vase på sokkel;12,5;31,0;1,234;26.11.2026 16:00;ja;B7\r\n";
    ShotTableReading reading = read("dansk.csv", sheet.getBytes(WINDOWS_1252));
    ShotJob vase = reading.shotList().jobs().get(0);
    assertThat(vase.id()).isEqualTo("00417");
    assertThat(vase.item().lengthMm()).isEqualTo(125);
    assertThat(vase.item().massKg()).isEqualTo(1.234);
    assertThat(vase.promise().must()).isTrue();
    assertThat(reading.notes().lines())
        .containsExactly(
            "text Windows-1252, delimiter semicolon, decimal mark comma",
            "Længde (cm): 1 value converted from cm to mm",
            "Højde (cm): 1 value converted from cm to mm",
            "column 'Hylde' is not known and was not read",
            "Vægt (kg): 1 number with two meanings was read, 1,234 as 1.234 (row 2, column F), since"
                + " the file has a decimal comma");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {";|semicolon", ",|comma", "`\t`|tab"})
  void findsShowsAndObeysTheDelimiter(char sign, String name) throws Exception { // 24
    byte[] bytes = "Article;Recipe\n1;spin-36\n".replace(';', sign).getBytes(WINDOWS_1252);
    assertThat(read("list.csv", bytes).notes().lines().get(0)).contains("delimiter " + name);
    char other = sign == ',' ? ';' : ',';
    TableOptions wrong = TableOptions.FIND.withDelimiter(other);
    assertThat(lines(() -> read("list.csv", bytes, wrong)))
        .singleElement()
        .asString()
        .contains("this header has one column");
  }

  @ParameterizedTest
  @EnumSource
  void readsADecimalCommaAndAsksAboutOneThatMayDivideThousands(Kind kind) throws Exception { // 25
    String[] sheet = {"Article|Recipe|Mass (kg)", "1|spin-36|1,234"};
    assertThat(told(kind, sheet))
        .containsExactly(
            kind.sheet
                + "row 2, column C, Mass (kg): '1,234'; accepted: 1,2340 or 1234; or say which"
                + " decimal mark the file has (--decimal)");
    assertThat(mass(kind, TableOptions.FIND.withDecimalMark(','), sheet)).isEqualTo(1.234);
    assertThat(mass(kind, TableOptions.FIND.withDecimalMark('.'), sheet)).isEqualTo(1_234);
    String[] settled = {"Article|Recipe|Mass (kg)", "1|spin-36|1,234", "2|spin-36|12,5"};
    assertThat(mass(kind, TableOptions.FIND, settled)).isEqualTo(1.234);
  }

  @Test
  void asksNothingAboutANumberThatIsOne() throws Exception { // 25
    RawWorkbook book = RawWorkbook.ofTexts("Tomorrow", "Article|Recipe|Mass (kg)");
    book.row(RawWorkbook.text("1"), RawWorkbook.text("spin-36"), RawWorkbook.number("1.234"));
    assertThat(read("list.xlsx", book.bytes()).shotList().jobs().get(0).item().massKg())
        .isEqualTo(1.234);
  }

  @ParameterizedTest
  @EnumSource
  void readsUnitsOfHeaderOrCellAndEchoesTheConversion(Kind kind) throws Exception { // 26
    ShotTableReading reading =
        read(
            kind,
            "Article|Recipe|Height (cm)|Width|Mass (lb)",
            "1|spin-36|30|0,5 m|2",
            "2|spin-36|12 in|40 mm|750 g");
    assertThat(reading.shotList().jobs())
        .extracting(job -> job.item().heightMm())
        .containsExactly(300, 305);
    assertThat(reading.shotList().jobs())
        .extracting(job -> job.item().widthMm())
        .containsExactly(500, 40);
    assertThat(reading.notes().conversions())
        .containsExactly(
            "Width: 1 value converted from m to mm",
            "Height (cm): 1 value converted from cm to mm",
            "Height (cm): 1 value converted from in to mm",
            "Mass (lb): 1 value converted from g to kg",
            "Mass (lb): 1 value converted from lb to kg");
  }

  @ParameterizedTest
  @EnumSource
  void knowsOtherWordsAndReportsColumnsItDoesNotKnow(Kind kind) throws Exception { // 27
    ShotTableReading reading =
        read(kind, "Artikelnr.|Rezept|Höhe in cm|Bezeichnung|Regal", "1|spin-36|31|Vase|B7");
    ShotJob job = reading.shotList().jobs().get(0);
    assertThat(job.name()).isEqualTo("Vase");
    assertThat(job.item().heightMm()).isEqualTo(310);
    assertThat(reading.notes().unknownColumns()).containsExactly("Regal");
  }

  @ParameterizedTest
  @EnumSource
  void flagsDuplicatesPassesOverBlankRowsAndKeepsZeros(Kind kind) throws Exception { // 28
    assertThat(told(kind, "Article|Recipe", "00417|spin-36", "", "00417|spin-36"))
        .containsExactly(
            kind.sheet
                + "row 4, column A, Article: '00417'; accepted: an id that no other job has; "
                + kind.sheet
                + "row 2, column A has it");
    assertThat(read(kind, "Article|Recipe", "00417|spin-36", "", "417|spin-36").shotList().jobs())
        .extracting(ShotJob::article)
        .containsExactly("00417", "417");
    assertThat(told(kind, "Article|Recipe|EAN", "1|spin-36|6,29104E+12"))
        .singleElement()
        .asString()
        .contains("column C, EAN: '6,29104E+12'; accepted: the whole number");
  }

  @ParameterizedTest
  @EnumSource
  void failsLoudlyWithoutRowsOrWithOneColumn(Kind kind) throws Exception { // 29
    assertThat(told(kind, "Article|Recipe"))
        .containsExactly(
            kind.sheet + "row 2: nothing there; accepted: at least one job below the header");
    assertThat(told(kind, "Article", "1"))
        .singleElement()
        .asString()
        .startsWith(kind.sheet + "row 1: 'Article'; accepted: several columns")
        .endsWith("this header has one column");
  }

  @ParameterizedTest
  @EnumSource
  void exportsErrorsBesideTheirRowsToBeMendedAndReadAgain(Kind kind) throws Exception { // 30
    String[] sheet = {"Article|Recipe|Height (mm)", "1|spin-99|30", "", "2|spin-36|tall"};
    List<InputProblem> told = problems(() -> read(kind, sheet));
    Path file = folder.resolve(kind.file);
    byte[] copy = Formats.annotatedShotTable(file, TableOptions.FIND, told);
    List<InputProblem> again = problems(() -> read("copy-" + kind.file, copy));
    assertThat(again)
        .extracting(InputProblem::line)
        .containsExactlyElementsOf(told.stream().map(InputProblem::line).toList());

    String[] mended = {
      "Article|Recipe|Height (mm)|problems",
      "1|spin-36|30|B Recipe: 'spin-99', told before",
      "",
      "2|spin-36|310|C Height (mm): 'tall', told before"
    };
    ShotTableReading reading = read(kind, mended);
    assertThat(reading.notes().unknownColumns()).isEmpty();
    assertThat(reading.shotList())
        .isEqualTo(
            read(kind, "Article|Recipe|Height (mm)", "1|spin-36|30", "2|spin-36|310").shotList());
  }

  private ShotTableReading read(Kind kind, String... lines) throws IOException, InputException {
    return read(kind.file, kind.bytes(lines));
  }

  private ShotTableReading read(String name, byte[] bytes) throws IOException, InputException {
    return read(name, bytes, TableOptions.FIND);
  }

  private ShotTableReading read(String name, byte[] bytes, TableOptions options)
      throws IOException, InputException {
    Path file = Files.write(folder.resolve(name), bytes);
    ShotTableOptions all = new ShotTableOptions(ReadTable.DATE, 2, options);
    return Formats.readShotTable(file, SmallFloor.FLOOR, all);
  }

  private double mass(Kind kind, TableOptions options, String... lines)
      throws IOException, InputException {
    Item item = read(kind.file, kind.bytes(lines), options).shotList().jobs().get(0).item();
    return item.massKg();
  }

  private List<String> told(Kind kind, String... lines) {
    return lines(() -> read(kind, lines));
  }

  private interface Reading {
    ShotTableReading read() throws IOException, InputException;
  }

  private static List<String> lines(Reading reading) {
    return problems(reading).stream().map(InputProblem::line).toList();
  }

  private static List<InputProblem> problems(Reading reading) {
    InputException refusal = catchThrowableOfType(InputException.class, reading::read);
    assertThat(refusal).as("refusal").isNotNull();
    return refusal.problems();
  }
}
