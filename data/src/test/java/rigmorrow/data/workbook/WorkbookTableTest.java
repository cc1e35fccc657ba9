package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigmorrow.data.workbook.RawWorkbook.cell;
import static rigmorrow.data.workbook.RawWorkbook.formula;
import static rigmorrow.data.workbook.RawWorkbook.number;
import static rigmorrow.data.workbook.RawWorkbook.text;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.table.TableForm;
import rigmorrow.data.table.TableOptions;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;

/** What cells and sheets of a workbook mean, beyond what a table means whatever its file. */
class WorkbookTableTest {
  private final RawWorkbook book = new RawWorkbook().sheet("Tomorrow");

  @Test
  void takesNumbersAsNumbersWithoutAskingForADecimalMark() throws Exception {
    book.texts("Article|Recipe|Height (cm)|Mass (kg)")
        .row(text("1"), text("spin-36"), number("12.345"), number("1.234"))
        .row(text("2"), text("spin-36"), number("30"), number("0.30000000000000004"));
    ShotTableReading reading = read();
    assertThat(items(reading)).extracting(Item::massKg).containsExactly(1.234, 0.3);
    assertThat(items(reading)).extracting(Item::heightMm).containsExactly(123, 300);
    assertThat(reading.notes().form()).isEqualTo(TableForm.ofSheet("Tomorrow"));
    assertThat(reading.notes().lines())
        .containsExactly(
            "sheet 'Tomorrow', decimal mark not settled by the file",
            "Height (cm): 2 values converted from cm to mm",
            "Height (cm): 1 size was rounded, 123.45 to 123 mm (sheet 'Tomorrow', row 2, column"
                + " C)");
  }

  @Test
  void readsNumbersWrittenAsTextLikeThoseOfCsv() throws Exception {
    book.texts("Article|Recipe|Height|Mass (kg)", "1|spin-36|30 cm|1,5");
    Item item = items(read()).get(0);
    assertThat(item.heightMm()).isEqualTo(300);
    assertThat(item.massKg()).isEqualTo(1.5);
    RawWorkbook asked =
        RawWorkbook.ofTexts("Tomorrow", "Article|Recipe|Mass (kg)", "1|spin-36|1,234");
    assertThatThrownBy(() -> ReadTable.workbook(asked.bytes()))
        .hasMessageContaining(
            "sheet 'Tomorrow', row 2, column C, Mass (kg): '1,234'; accepted: 1,2340 or 1234");
  }

  @Test
  void keepsTheDigitsOfAnArticleAsTheSheetShowsThem() throws Exception {
    book.texts("Article|Recipe")
        .row(number("4711"), text("spin-36"))
        .row(book.number("4712", "000000"), text("spin-36"))
        .row(book.number("13", "\"A\"-0000"), text("spin-36"))
        .row(text("004714"), text("spin-36"));
    assertThat(read().shotList().jobs())
        .extracting(ShotJob::article)
        .containsExactly("4711", "004712", "A-0013", "004714");
  }

  @Test
  void refusesAnArticleOfMoreDigitsThanANumberKeeps() {
    book.texts("Article|Recipe").row(number("1.2345678901234568E+17"), text("spin-36"));
    assertThatThrownBy(this::read)
        .hasMessageContaining("row 2, column A, Article: '123456789012345680'")
        .hasMessageContaining("the number as text");
  }

  /** The GTIN of GS1's own example, 6291041500213, and one with zeros in front. */
  @Test
  void restoresAGtinThatBecameANumber() throws Exception {
    book.texts("Article|Recipe|GTIN")
        .row(text("1"), text("spin-36"), book.number("6.2910415002130001E+12", "0.00E+00"))
        .row(text("2"), text("spin-36"), number("12345678905"))
        .row(text("3"), text("spin-36"), number("96385074"));
    ShotTableReading reading = read();
    assertThat(reading.shotList().jobs())
        .extracting(ShotJob::gtin)
        .containsExactly("6291041500213", "012345678905", "96385074");
    assertThat(reading.notes().remarks())
        .containsExactly("GTIN: zeros in front put back in 1 number");
  }

  @Test
  void refusesAGtinThatIsNoneHoweverManyZerosStandInFront() {
    book.texts("Article|Recipe|GTIN").row(text("1"), text("spin-36"), number("12345678904"));
    assertThatThrownBy(this::read)
        .hasMessageContaining("column C, GTIN: '12345678904'; accepted: 8, 12, 13 or 14 digits");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "46352.666666666664|yyyy-mm-dd hh:mm|2026-11-26T16:00",
        "46352.6666666667|m/d/yy h:mm|2026-11-26T16:00",
        "46352|dd.mm.yyyy hh:mm|2026-11-26T00:00",
        "46352.666666666664|dd.mm.yyyy|2026-11-26T16:00",
        "0.66666666666666663|h:mm|2026-11-26T16:00",
        "0.33333333333333331|h:mm AM/PM|2026-11-26T08:00"
      })
  void readsDatesAsDaysSince1900(String serial, String format, LocalDateTime due) throws Exception {
    book.texts("Article|Recipe|Due").row(text("1"), text("spin-36"), book.number(serial, format));
    assertThat(read().shotList().jobs().get(0).promise().dueAt()).isEqualTo(due);
  }

  /** 2026-11-26 is day 44890 counted from 1904-01-01: 1,462 fewer than from 1900. */
  @ParameterizedTest
  @CsvSource({"44890.666666666664,2026-11-26T16:00", "0.5,2026-11-26T12:00"})
  void readsDatesAsDaysSince1904(String serial, LocalDateTime due) throws Exception {
    book.from1904()
        .texts("Article|Recipe|Due")
        .row(text("1"), text("spin-36"), book.number(serial, "yyyy-mm-dd hh:mm"));
    assertThat(read().shotList().jobs().get(0).promise().dueAt()).isEqualTo(due);
  }

  @Test
  void refusesDaysWithoutATimeAndNumbersThatAreNoDates() {
    book.texts("Article|Recipe|Due")
        .row(text("1"), text("spin-36"), book.number("46352", "dd.mm.yyyy"))
        .row(text("2"), text("spin-36"), number("46352.5"))
        .row(text("3"), text("spin-36"), book.number("60.5", "yyyy-mm-dd hh:mm"));
    assertThatThrownBy(this::read)
        .hasMessageContaining("row 2, column C, Due: '2026-11-26'; accepted: the time of day too")
        .hasMessageContaining("row 3, column C, Due: '46352.5'; accepted: a time such as")
        .hasMessageContaining("row 4, column C, Due: '1900-");
  }

  /** As "Strict Open XML" and some other programs write dates. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-11-26T16:00:00|yyyy-mm-dd hh:mm|2026-11-26T16:00",
        "2026-11-26T16:00:00.000|dd.mm.yyyy|2026-11-26T16:00",
        "2026-11-26T00:00:00|dd-mm-yyyy hh:mm|2026-11-26T00:00",
        "2026-11-26T16:00|General|2026-11-26T16:00",
        "1899-12-30T16:00:00|hh:mm|2026-11-26T16:00",
        "1899-12-31T16:00:00|hh:mm|2026-11-26T16:00",
        "1904-01-01T16:00:00|hh:mm|2026-11-26T16:00",
        "2026-11-28T16:00|hh:mm|2026-11-28T16:00",
        "16:00:00|hh:mm|2026-11-26T16:00"
      })
  void readsDatesInIso8601(String written, String format, LocalDateTime due) throws Exception {
    book.texts("Article|Recipe|Due|Note")
        .row(text("1"), text("spin-36"), book.isoDate(written, format), text("a <d> & \"d\""));
    ShotJob job = read().shotList().jobs().get(0);
    assertThat(job.promise().dueAt()).isEqualTo(due);
    assertThat(job.note()).isEqualTo("a <d> & \"d\"");
  }

  @Test
  void keepsTheDateOfATextThatItsFormatWouldHide() throws Exception {
    String computed = book.isoDate("2026-11-28T16:00", "hh:mm").replace("t=\"d\"", "t=\"str\"");
    book.texts("Article|Recipe|Due")
        .row(text("1"), text("spin-36"), book.text("2026-11-28T16:00", "hh:mm"))
        .row(text("2"), text("spin-36"), computed)
        .row(text("3"), text("spin-36"), computed.replace("2026-11-28", "1899-12-30"));
    assertThat(read().shotList().jobs())
        .extracting(job -> job.promise().dueAt().toString())
        .containsExactly("2026-11-28T16:00", "2026-11-28T16:00", "2026-11-26T16:00");
  }

  @Test
  void refusesIsoDatesWithoutATimeOfDayAndWhatIsNone() {
    book.texts("Article|Recipe|Due")
        .row(text("1"), text("spin-36"), book.isoDate("2026-11-26", "dd.mm.yyyy"))
        .row(text("2"), text("spin-36"), book.isoDate("2026-11-26T00:00:00", "dd.mm.yyyy"))
        .row(text("3"), text("spin-36"), book.isoDate("2026-11-26T16:00:00Z", "dd.mm.yyyy"))
        .row(text("4"), text("spin-36"), book.isoDate("tomorrow", "dd.mm.yyyy"));
    assertThatThrownBy(this::read)
        .hasMessageContaining("row 2, column C, Due: '2026-11-26'; accepted: the time of day too")
        .hasMessageContaining("row 3, column C, Due: '2026-11-26'; accepted: the time of day too")
        .hasMessageContaining("row 4, column C, Due: '2026-11-26T16:00:00Z'; accepted: a time such")
        .hasMessageContaining("row 5, column C, Due: 'tomorrow'; accepted: a time such as");
  }

  @Test
  void readsYesAndNo() throws Exception {
    book.texts("Article|Recipe|Glass")
        .row(text("1"), text("spin-36"), cell("b", "1"))
        .row(text("2"), text("spin-36"), cell("b", "0"))
        .row(text("3"), text("spin-36"), number("1"))
        .row(text("4"), text("spin-36"), text("ja"));
    assertThat(items(read())).extracting(Item::glass).containsExactly(true, false, true, true);
  }

  @Test
  void takesTheValueThatWasSavedWithAFormula() throws Exception {
    book.texts("Article|Recipe|Height (mm)|Glass|Note")
        .row(
            formula("\"A\"&1", "str", "A1"),
            text("spin-36"),
            formula("100*3", "n", "300"),
            formula("TRUE()", "b", "1"),
            formula("IF(TRUE,\"\")", "str", ""));
    ShotJob job = read().shotList().jobs().get(0);
    assertThat(job.article()).isEqualTo("A1");
    assertThat(job.item().heightMm()).isEqualTo(300);
    assertThat(job.item().glass()).isTrue();
    assertThat(job.note()).isNull();
  }

  @Test
  void refusesFormulasInErrorOrWithoutAValueButOnlyWhereTheyAreRead() {
    book.texts("Article|Recipe|Height (mm)|Shelf")
        .row(cell("e", "#REF!"), text("spin-36"), formula("B9*2"), cell("e", "#N/A"))
        .row(formula("X1", "e", "#N/A"), text("spin-36"), text("#VÆRDI!"), formula("1+1"));
    assertThatThrownBy(this::read)
        .hasMessageContaining("4 problems")
        .hasMessageContaining("row 2, column A, Article: '#REF!'")
        .hasMessageContaining("row 2, column C, Height (mm): '=B9*2'; accepted: a formula with")
        .hasMessageContaining("row 3, column A, Article: '#N/A'")
        .hasMessageContaining("row 3, column C, Height (mm): '#VÆRDI!'");
  }

  @Test
  void countsRowsAndColumnsAsTheSheetDoes() {
    book.rowAt(3)
        .rowAt(4, "", "", text("Article"), text("Recipe"))
        .rowAt(5, "", "", text("1"), text("spin-36"))
        .rowAt(17, "", "", text("2"), text("nope"));
    assertThatThrownBy(this::read)
        .isInstanceOf(InputException.class)
        .hasMessageContaining("sheet 'Tomorrow', row 17, column D, Recipe: 'nope'");
  }

  @Test
  void countsRowsThatSayNoNumber() {
    book.raw("<row>" + text("Article") + text("Recipe") + "</row>")
        .raw("<row>" + text("1") + text("nope") + "</row>")
        .raw("<row r=\"9\">" + text("2") + text("nope") + "</row>")
        .raw("<row>" + text("3") + text("nope") + "</row>");
    assertThatThrownBy(this::read)
        .hasMessageContaining("row 2, column B")
        .hasMessageContaining("row 9, column B")
        .hasMessageContaining("row 10, column B");
  }

  @Test
  void readsSharedTextsAndSignsThatXmlCannotHold() throws Exception {
    book.row(book.shared("Article"), book.shared("Recipe"), book.shared("Name"))
        .row(book.shared("1"), book.shared("spin-36"), book.shared("Vase_x000D_\n& more "));
    assertThat(read().shotList().jobs().get(0).name()).isEqualTo("Vase\r\n& more");
  }

  @Test
  void refusesACellLongerThanASpreadsheetKeeps() {
    book.texts("Article|Recipe|Name", "1|spin-36|" + "x".repeat(32_768));
    assertThatThrownBy(this::read)
        .hasMessageContaining("row 2, column C, Name: 'xxx")
        .hasMessageContaining("at most 32767 characters in a cell");
  }

  @Test
  void readsTheUnitThatANumberFormatShows() throws Exception {
    book.texts("Article|Recipe|Height|Mass (kg)")
        .row(
            text("1"),
            text("spin-36"),
            book.number("30", "0\" cm\""),
            book.number("750", "0\" g\""));
    Item item = items(read()).get(0);
    assertThat(item.heightMm()).isEqualTo(300);
    assertThat(item.massKg()).isEqualTo(0.75);
  }

  @Test
  void refusesANumberBelowZeroAndOneInAnotherUnit() {
    book.texts("Article|Recipe|Height (mm)")
        .row(text("1"), text("spin-36"), number("-5"))
        .row(text("2"), text("spin-36"), book.number("30", "0\" kr\""));
    assertThatThrownBy(this::read)
        .hasMessageContaining("row 2, column C, Height (mm): '-5'; accepted: a number such as")
        .hasMessageContaining("row 3, column C, Height (mm): '30 kr'; accepted: a unit");
  }

  @Test
  void fillsWhatIsMergedDownwards() throws Exception {
    book.texts("Article|Recipe|Name", "7|spin-36|Vase", "|stills-4|", "|stills-4|", "8|spin-36|")
        .merge("A2:A3")
        .merge("C2:C3");
    assertThatThrownBy(this::read)
        .hasMessageContaining("1 problem")
        .hasMessageContaining("row 4, column A, Article: nothing there");
    RawWorkbook sound =
        RawWorkbook.ofTexts("Tomorrow", "Article|Recipe|Name", "7|spin-36|Vase", "|stills-4|")
            .merge("A2:A3")
            .merge("C2:C9");
    List<ShotJob> jobs = ReadTable.workbook(sound.bytes()).shotList().jobs();
    assertThat(jobs).extracting(ShotJob::id).containsExactly("7/spin-36", "7/stills-4");
    assertThat(jobs).extracting(ShotJob::name).containsExactly("Vase", "Vase");
  }

  @Test
  void refusesWhatIsMergedSidewaysWhereItIsRead() {
    book.texts("Article|Recipe|Height (mm)|Width (mm)|Shelf|Bay")
        .row(text("1"), text("spin-36"), number("300"), "", text("x"), "")
        .merge("C2:D2")
        .merge("E2:F2");
    assertThatThrownBy(this::read)
        .hasMessageContaining("1 problem")
        .hasMessageContaining(
            "row 2, column D, Width (mm): nothing there; accepted: a value of its own; the cell is"
                + " merged with C2");
  }

  @Test
  void passesOverNotesBesideTheTable() throws Exception {
    book.texts("Article|Recipe", "1|spin-36|||call me");
    assertThat(read().notes().unknownColumns()).containsExactly("column E, without header");
  }

  @Test
  void findsTheSheetWhoseHeaderIsKnown() throws Exception {
    RawWorkbook several =
        RawWorkbook.ofTexts("Read me", "This list is for Thursday")
            .sheet("Empty")
            .sheet("Prices")
            .texts("Article|Price", "1|10")
            .sheet("Tomorrow")
            .texts("Varenr|Opskrift", "1|spin-36")
            .sheet("Old", "hidden")
            .texts("Article|Recipe", "2|spin-36");
    assertThat(ReadTable.workbook(several.bytes()).notes().form().sheet()).isEqualTo("Tomorrow");
  }

  @Test
  void readsTheSheetThatIsNamedEvenAHiddenOne() throws Exception {
    RawWorkbook several =
        RawWorkbook.ofTexts("Today", "Article|Recipe", "1|spin-36")
            .sheet("Old", "veryHidden")
            .texts("Article|Recipe", "2|spin-36");
    byte[] bytes = several.bytes();
    TableOptions old = TableOptions.FIND.withSheet("Old");
    assertThat(ReadTable.workbook(bytes, old).shotList().jobs().get(0).id()).isEqualTo("2");
    assertThat(ReadTable.workbook(bytes).shotList().jobs().get(0).id()).isEqualTo("1");
  }

  private ShotTableReading read() throws InputException {
    return ReadTable.workbook(book.bytes());
  }

  private static List<Item> items(ShotTableReading reading) {
    return reading.shotList().jobs().stream().map(ShotJob::item).toList();
  }
}
