package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.Formats;
import rigmorrow.data.samples.FormatPage;

class WorkbookFormatPageTest {
  private static final String PAGE = FormatPage.text("Shot list as a table");

  @Test
  void namesTheLimits() {
    assertThat(PAGE)
        .contains(WorkbookParts.MOST_BYTES + " bytes unpacked")
        .contains(SheetGuard.MOST_ROWS + " rows")
        .contains(WorkbookTable.MOST_COLUMNS + " columns")
        .contains(MergedCells.MOST_CELLS + " merged cells");
  }

  @Test
  void namesEveryEndingThatIsATable() {
    List<String> endings =
        List.of("csv", "tsv", "txt", "xlsx", "xlsm", "xls", "ods", "json", "xlsb");
    assertThat(endings)
        .allSatisfy(
            ending -> {
              boolean table = Formats.isTable(Path.of("list." + ending));
              String first = PAGE.substring(0, PAGE.indexOf("###"));
              assertThat(first.contains("`." + ending + "`")).as(ending).isEqualTo(table);
            });
  }
}
