package rigmorrow.data.shottable;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.csv.CsvAnnotator;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Place;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.workbook.RawWorkbook;
import rigmorrow.data.workbook.WorkbookAnnotator;
import rigmorrow.model.shot.ShotJob;

/** Titles above the header, and headers with a slip of the keyboard. */
class HeaderRowTest {
  private static final String DANISH =
      "Fotoliste, uge 48;;;;\n\nStudie Nord;;;uge 48;\n"
          + "Varenummer;Opskrift;Bredde (cm);Højde (cm);Frist\n"
          + "00417;spin-36;12,5;30;26.11.2026 16.00\n";

  @Test
  void titlesAreSkippedWhereOneRowBelowIsAHeader() throws Exception {
    ShotTableReading reading = ReadTable.csv(DANISH);

    ShotJob job = reading.shotList().jobs().get(0);
    assertThat(job.article()).isEqualTo("00417");
    assertThat(job.item().widthMm()).isEqualTo(125);
    assertThat(reading.notes().remarks())
        .contains(
            "row 4 was taken as the header; rows 1 to 3 above it were not read"
                + " ('Fotoliste, uge 48')");
  }

  @Test
  void aWorkbookMayHaveATitleToo() throws Exception {
    RawWorkbook book =
        RawWorkbook.ofTexts(
                "Fotoliste",
                "Fotoliste, uge 48",
                "Varenummer|Opskrift|Bredde (cm)",
                "00417|spin-36|12,5",
                "00418|spin-36|20")
            .merge("A1:C1");

    ShotTableReading reading = ReadTable.workbook(book.bytes());

    assertThat(reading.shotList().jobs())
        .extracting(ShotJob::article)
        .containsExactly("00417", "00418");
    assertThat(reading.notes().remarks())
        .contains(
            "row 2 was taken as the header; row 1 above it was not read ('Fotoliste, uge 48')");
  }

  @Test
  void aFileWithoutTitlesIsReadAsBefore() throws Exception {
    ShotTableReading reading = ReadTable.csv("article,recipe\n1,spin-36\n");
    assertThat(reading.notes().remarks()).isEmpty();
  }

  @Test
  void twoRowsThatCouldBeTheHeaderAreNotGuessedAt() {
    assertThatThrownBy(
            () -> ReadTable.csv("list,\narticle,recipe\n1,spin-36\narticle,recipe\n2,spin-36\n"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("this header has one column");
  }

  /** Else the jobs above the second header would be taken for titles, and lost without a word. */
  @Test
  void jobsBelowAHeaderWithASlipAreNotTakenForTitles() {
    StringBuilder list = new StringBuilder("Article;Recipie;Width\n");
    for (int article = 1; article <= 5; article++) {
      list.append(article).append(";spin-36;20\n");
    }
    list.append("\nArticle;Recipe;Width\n6;spin-36;20\n7;spin-36;20\n");
    assertThatThrownBy(() -> ReadTable.csv(list.toString()))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(
            "row 1, Recipe: nothing there; accepted: a column Recipe (is 'Recipie' meant?)");
  }

  @Test
  void belowATitleTheHeaderWithASlipIsNamedAndNotTheTitle() {
    assertThatThrownBy(() -> ReadTable.csv(DANISH.replace("Opskrift", "Opskirft")))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(
            "row 4, Recipe: nothing there; accepted: a column Recipe (is 'Opskirft' meant?); row 4"
                + " looks most like the header")
        .hasMessageNotContaining("row 1");
    assertThatThrownBy(() -> ReadTable.csv("Shots of Thursday\nArtikle;Recipie\n1;spin-36\n"))
        .hasMessageContaining("row 2, Article: nothing there")
        .hasMessageContaining("(is 'Artikle' meant?)")
        .hasMessageContaining("(is 'Recipie' meant?)");
  }

  @Test
  void aWorkbookWithATitleAndASlipIsNamedByItsRowToo() {
    byte[] book =
        RawWorkbook.ofTexts(
                "Fotoliste",
                "Fotoliste, uge 48",
                "Varenummer|Opskirft|Bredde (cm)",
                "00417|spin-36|12")
            .bytes();
    assertThatThrownBy(() -> ReadTable.workbook(book))
        .hasMessageContaining("sheet 'Fotoliste', row 2, Recipe")
        .hasMessageContaining("(is 'Opskirft' meant?)");
  }

  /** A word of a job that is nearly a header makes its row none. */
  @Test
  void whereNoRowLooksLikeAHeaderTheFirstIsNamed() {
    assertThatThrownBy(() -> ReadTable.csv("Fotos;Donnerstag\nVase;glas\nStuhl;Holz\n"))
        .hasMessageContaining("row 1, Article: nothing there")
        .hasMessageNotContaining("looks most like");
  }

  @Test
  void aHeaderFartherDownIsNotLookedFor() {
    assertThatThrownBy(() -> ReadTable.csv("a,b\n".repeat(10) + "article,recipe\n1,spin-36\n"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("a column Article or Id");
  }

  @Test
  void problemsKeepTheRowsOfTheFileAndTheCopyKeepsTheTitle() throws Exception {
    String bad = DANISH.replace("12,5", "wide");
    assertThatThrownBy(() -> ReadTable.csv(bad)).hasMessageContaining("row 5, column C");
    List<InputProblem> told =
        List.of(
            new InputProblem("list.csv", Place.cell("", 5, 3), "Bredde (cm)", "wide", "a number"));

    String copy =
        new String(
            CsvAnnotator.annotated(
                bad.getBytes(UTF_8),
                TableOptions.FIND,
                TableKind.SHOT_LIST,
                told,
                List.of(),
                "list.csv"),
            UTF_8);

    assertThat(copy.lines().toList().get(0)).isEqualTo("Fotoliste, uge 48;;;;");
    assertThat(copy.lines().toList().get(3)).endsWith(";Frist;problems");
    assertThat(copy.lines().toList().get(4)).contains("'wide'");
    assertThat(ReadTable.csv(copy.replace("wide;", "12,5;")).shotList().jobs()).hasSize(1);
  }

  @Test
  void theCopyOfAWorkbookKeepsItsTitle() throws Exception {
    RawWorkbook book =
        RawWorkbook.ofTexts(
            "Liste", "Fotoliste", "Varenummer|Opskrift|Bredde (cm)", "00417|spin-36|12,5");
    byte[] copy =
        WorkbookAnnotator.annotated(
            book.bytes(),
            TableOptions.FIND,
            TableKind.SHOT_LIST,
            List.of(),
            List.of(),
            "list.xlsx");

    assertThat(ReadTable.workbook(copy).shotList())
        .isEqualTo(ReadTable.workbook(book.bytes()).shotList());
    assertThat(ReadTable.workbook(copy).notes().remarks().get(0)).startsWith("row 2 was taken");
  }

  @Test
  void aSlipInAHeaderIsToldWithWhatWasMeant() throws Exception {
    ShotTableReading reading =
        ReadTable.csv(
            "article,recipe,Widht (mm),height mm,hoejd,brede,Date,Price,nte,heigth\n"
                + "1,spin-36,5,20,,,,,,\n");

    assertThat(reading.notes().remarks())
        .containsExactly(
            "no column was read as Due: no job of this list has a promise, so that none can be late",
            "Widht (mm): did you mean Width?",
            "brede: did you mean bredde?");
    assertThat(reading.notes().lines())
        .contains("column 'Widht (mm)' is not known and was not read");
  }
}
