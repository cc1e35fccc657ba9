package rigmorrow.data.sizes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.csv.CsvTable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.shottable.SmallFloor;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.workbook.RawWorkbook;
import rigmorrow.data.workbook.WorkbookTable;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotList;

class SizesMergeTest {
  private static final String LIST =
      "Id;Article;Recipe;Length (mm);Width (mm);Height (mm);Mass (kg);Estimated\n";
  private static final String SIZES = "Varenr;Længde (cm);Bredde (cm);Højde (cm);Vægt (g)\n";

  @Test
  void fillsWhatTheListLacks() throws Exception {
    SizesMerging merging =
        merge(LIST + "J1;00417;spin-36;;;;;\nJ2;00417;stills-4;100;;;;\n", "00417;10;12,5;31;750");
    for (int job = 0; job < 2; job++) {
      Item item = item(merging, job);
      assertThat(item.lengthMm()).isEqualTo(100);
      assertThat(item.widthMm()).isEqualTo(125);
      assertThat(item.heightMm()).isEqualTo(310);
      assertThat(item.massKg()).isEqualTo(0.75);
      assertThat(item.heightSource()).isEqualTo(HeightSource.DEVICE);
    }
    assertThat(merging.filled()).isEqualTo(7);
    assertThat(merging.differences()).isEmpty();
    assertThat(merging.notes().decimalMark()).isEqualTo(',');
    assertThat(merging.lines())
        .contains(
            "Højde (cm): 1 value converted from cm to mm",
            "1 article measured, 2 jobs of them, 7 values filled in");
  }

  @Test
  void keepsWhatTheListGivesAndTellsTheDifference() throws Exception {
    SizesMerging merging =
        merge(LIST + "J1;00417;spin-36;100;125;300;0.7;\n", "00417;10;12,5;31;750");
    assertThat(item(merging, 0).heightMm()).isEqualTo(300);
    assertThat(item(merging, 0).heightSource()).isEqualTo(HeightSource.LIST);
    assertThat(merging.lines())
        .contains(
            "job J1: heightMm 300 in the list, 310 by the device; the list's is taken"
                + " (--prefer-sizes takes the device's)",
            "job J1: massKg 0.7 in the list, 0.75 by the device; the list's is taken"
                + " (--prefer-sizes takes the device's)");
  }

  @Test
  void takesTheDevicesValueWhereItIsPreferred() throws Exception {
    SizesMerging merging =
        merge(
            ReadTable.csv(LIST + "J1;00417;spin-36;100;125;300;0.7;\n").shotList(),
            csv(SIZES + "00417;10;12,5;31;750"),
            true);
    assertThat(item(merging, 0).heightMm()).isEqualTo(310);
    assertThat(item(merging, 0).heightSource()).isEqualTo(HeightSource.DEVICE);
    assertThat(merging.differences()).hasSize(2).allMatch(SizesMerging.Difference::taken);
  }

  @Test
  void letsAnEstimateGiveWayToAMeasurement() throws Exception {
    SizesMerging merging =
        merge(
            LIST + "J1;1;spin-36;100;125;300;0.7;yes\nJ2;2;spin-36;100;125;300;0.7;yes\n",
            "1;10;12,5;31;750\n2;;;31;");
    assertThat(item(merging, 0).heightMm()).isEqualTo(310);
    assertThat(item(merging, 0).estimated()).isFalse();
    assertThat(item(merging, 1).heightMm()).isEqualTo(310);
    assertThat(item(merging, 1).estimated()).isTrue();
    assertThat(merging.differences())
        .extracting(SizesMerging.Difference::field)
        .containsExactly(JobField.HEIGHT_MM, JobField.MASS_KG, JobField.HEIGHT_MM);
  }

  @Test
  void tellsWhatMatchesNothingAndWhatIsStillLacking() throws Exception {
    SizesMerging merging =
        merge(LIST + "J1;00417;spin-36;;;;;\nJ2;8;spin-36;1;1;1;1;\n", "417;1;1;1;1\n99;1;1;1;1");
    assertThat(merging.matchedJobs()).isZero();
    assertThat(merging.lines())
        .contains(
            "articles of no job: 417 (is 00417 meant?), 99",
            "jobs still to be measured: J1 (lengthMm, widthMm, heightMm, massKg)");
  }

  @Test
  void takesTheSameTwiceAndAsksAboutDifferentValues() throws Exception {
    SizesMerging merging = merge(LIST + "J1;7;spin-36;;;;;\n", "7;1;;;\n7;1;2;;\n7;1;;3;4");
    assertThat(item(merging, 0).heightMm()).isEqualTo(30);
    assertThatThrownBy(() -> merge(LIST + "J1;7;spin-36;;;;;\n", "7;1;;;\n8;1;;;\n7;2;;;"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(
            "row 4, column B, Længde (cm): '20'; accepted: one value for article 7; row 2, column"
                + " B has 10");
  }

  @Test
  void tellsAllProblemsOfTheTable() {
    assertThatThrownBy(() -> merge(LIST + "J1;7;spin-36;;;;;\n", ";1;;;\n7;x;1,234;-3;0"))
        .hasMessageContaining("5 problems")
        .hasMessageContaining("row 2, column A, Varenr: nothing there")
        .hasMessageContaining("row 3, column B, Længde (cm): 'x'")
        .hasMessageContaining("(--sizes-decimal)")
        .hasMessageContaining("row 3, column D, Højde (cm): '-3'")
        .hasMessageContaining("row 3, column E, Vægt (g): '0'");
    assertThatThrownBy(() -> merge(LIST + "J1;7;spin-36;;;;;\n", csv("Varenr;Navn\n7;Vase")))
        .hasMessageContaining("accepted: a column Length, Width, Height or Mass");
  }

  @Test
  void refusesASizeThatTheJobDoesNotAllow() {
    String list = "Article;Recipe;Base length (mm)\n7;spin-36;120\n";
    assertThatThrownBy(() -> merge(list, "7;10;10;10;10"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("row 2, job 7, baseLengthMm: '120'; accepted: at most lengthMm 100");
  }

  @Test
  void readsAWorkbookToo() throws Exception {
    RawWorkbook book = RawWorkbook.ofTexts("Scan", "Article|Height (mm)|Operator");
    book.row(book.number("417", "00000"), RawWorkbook.number("310"), RawWorkbook.text("Ann"));
    Problems problems = new Problems("sizes.xlsx");
    Table table = WorkbookTable.read(book.bytes(), TableOptions.FIND, TableKind.SIZES, problems);
    ShotList list = ReadTable.csv(LIST + "J1;00417;spin-36;;;;;\n").shotList();
    SizesMerging merging = merge(list, table, false);
    assertThat(item(merging, 0).heightMm()).isEqualTo(310);
    assertThat(merging.notes().unknownColumns()).containsExactly("Operator");
  }

  private static SizesMerging merge(String list, String rows) throws InputException {
    return merge(list, csv(SIZES + rows));
  }

  private static SizesMerging merge(String list, Table table) throws InputException {
    return merge(ReadTable.csv(list).shotList(), table, false);
  }

  private static SizesMerging merge(ShotList list, Table table, boolean preferred)
      throws InputException {
    Problems problems = new Problems("sizes.csv");
    return SizesMerge.merge(table, TableOptions.FIND, list, SmallFloor.FLOOR, preferred, problems);
  }

  private static Table csv(String text) throws InputException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return CsvTable.read(bytes, TableOptions.FIND, TableKind.SIZES, new Problems("sizes.csv"));
  }

  private static Item item(SizesMerging merging, int job) {
    return merging.shotList().jobs().get(job).item();
  }
}
