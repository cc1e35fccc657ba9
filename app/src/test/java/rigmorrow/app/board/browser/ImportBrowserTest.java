package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.shottable.ShotTableWriter;

/** Bringing a shot list in by dropping it on the page. */
class ImportBrowserTest {

  @Test
  void showsProblemsBesideTheirCellsTakesMendsAndPlansIt() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      board.view("import");
      page.locator("#file").setInputFiles(file("tomorrow.csv", broken()));
      Locator cell = page.locator("#intake-table td.wrong input").first();
      assertThat(cell).hasValue("heavy");
      assertThat(page.locator("#intake-problems tbody tr")).hasCount(1);
      String row = page.locator("#intake-problems tbody tr").getAttribute("data-row");
      assertThat(row).as("as the spreadsheet counts it: the header is row 1").isEqualTo("3");
      assertThat(page.locator("#intake-table td.wrong .wrong-note")).containsText("Accepted");
      cell.fill("2.5");
      page.locator("#intake-check").click();
      assertThat(page.locator("#intake-fit")).isVisible();
      assertThat(page.locator("#intake-fit table tbody tr")).hasCount(20);
      page.locator("#plan-this").click();
      page.waitForCondition(() -> board.desk().now().batch().shotList().jobs().size() == 20);
      page.locator("#undo").click();
      page.waitForCondition(() -> board.desk().now().batch().shotList().jobs().size() == 12);
    }
  }

  @Test
  void handsOutACopyWithTheProblemsInIt() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      board.view("import");
      page.locator("#file").setInputFiles(file("<img src=x onerror=alert(1)>.csv", broken()));
      assertThat(page.locator("#intake h3").first()).containsText("<img src=x");
      var download = page.waitForDownload(() -> page.locator("#annotated").click());
      String text = new String(download.createReadStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(text).contains("heavy").contains("accepted:");
    }
  }

  @Test
  void asksInTheWordsOfThePageAndIsAnsweredThere() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      board.view("import");
      String list = "Uge 12;;\n\nVarenr;Opskrift;Vægt (kg)\n417;stills;1,234\n";
      page.locator("#file").setInputFiles(file("uge12.csv", list));
      assertThat(page.locator("#intake-notes")).containsText("row 3 was taken as the header");
      assertThat(page.locator("#intake-problems")).containsText("(Decimal mark)");
      assertThat(page.locator("#intake")).not().containsText("--decimal");
      page.getByLabel("Decimal mark", new Page.GetByLabelOptions().setExact(true))
          .selectOption("comma");
      page.locator("#intake-options button").click();
      assertThat(page.locator("#intake h3").first()).containsText("no problems, 1 job");
      assertThat(page.locator("#intake-fit-table .chip")).hasText("measure length, width, height");
    }
  }

  @Test
  void showsTheFitCheckOfTheDayWithReasons() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      board.view("fit");
      page.locator("#fit-table tbody tr").first().waitFor();
      assertThat(page.locator("#fit-table thead th").allTextContents().size())
          .isGreaterThan(board.desk().now().batch().floor().rigs().size());
      assertThat(page.locator("#fit-table").textContent()).matches("(?s).*\\d+ (mm|kg).*");
      assertThat(page.locator("#fit-table .misfit summary").allTextContents())
          .anyMatch(text -> text.matches(" no: .+, \\d+ more reasons"))
          .noneMatch(text -> text.contains("+"));
    }
  }

  private static FilePayload file(String name, String text) {
    return new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8));
  }

  /** Twenty jobs; in the second a word stands where its mass belongs. */
  private static String broken() {
    String text =
        new String(
            ShotTableWriter.write(Demo.batch(20, 3, OpenBoard.DAY).shotList()),
            StandardCharsets.UTF_8);
    List<String> lines = new java.util.ArrayList<>(text.lines().toList());
    List<String> header = List.of(lines.get(0).split(","));
    int mass =
        header.indexOf(header.stream().filter(one -> one.contains("kg")).findFirst().orElseThrow());
    String[] cells = lines.get(2).split(",", -1);
    cells[mass] = "heavy";
    lines.set(2, String.join(",", cells));
    return String.join("\n", lines) + "\n";
  }
}
