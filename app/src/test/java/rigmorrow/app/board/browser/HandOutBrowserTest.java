package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.app.print.ReadPdf;

/** Files of the plan, and versions of it. */
class HandOutBrowserTest {

  @Test
  void handsOutEveryFile() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      board.view("handout");
      List<String> names =
          List.of(
              "run-sheets.pdf",
              "calendars.zip",
              "labels.pdf",
              "plan.csv",
              "plan.json",
              "shot-list.json");
      for (String name : names) {
        Download download =
            page.waitForDownload(
                () -> page.locator("#downloads a[data-name='" + name + "']").click());
        String[] parts = name.split("\\.");
        assertThat(download.suggestedFilename())
            .startsWith(parts[0])
            .contains("2026-03-18")
            .endsWith("." + parts[1]);
        assertThat(Files.size(download.path())).as(name).isGreaterThan(200);
        if (name.equals("labels.pdf")) {
          assertThat(new ReadPdf(Files.readAllBytes(download.path())).pages())
              .allMatch(text -> text.contains("Not published: revision 1 of the board, made "));
        }
      }
      Page sheets =
          page.waitForPopup(
              () -> page.locator("#downloads a[data-name='run-sheets.html']").click());
      assertThat(sheets.locator("body"))
          .containsText(board.desk().now().plan().rigs().get(0).jobs().get(0).job());
    }
  }

  @Test
  void putsVersionsByComparesPublishesAndGoesBack() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      board.view("handout");
      page.locator("#version-note").fill("before lunch <b>");
      page.locator("#version-put").click();
      assertThat(page.locator("#versions tr[data-version='1']")).containsText("before lunch <b>");
      board.view("plan");
      String job = board.desk().now().plan().rigs().get(0).jobs().get(1).job();
      board.choose(job);
      page.locator("#move-place").fill("1");
      page.locator("#move-try").click();
      page.locator("#keep").click();
      page.waitForCondition(
          () -> board.desk().now().plan().rigs().get(0).jobs().get(0).job().equals(job));
      board.view("handout");
      page.locator("#compare-before").selectOption("1");
      page.locator("#compare-after").selectOption("0");
      page.locator("#compare").click();
      String group = "#moves details:has([data-job='" + job + "'])";
      assertThat(page.locator(group + " summary")).containsText(", at another place: ");
      if (page.locator(group + "[open]").count() == 0) {
        page.locator(group + " summary").click();
      }
      assertThat(page.locator("#moves [data-job='" + job + "']")).isVisible();
      page.locator("#versions tr[data-version='1'] .publish").click();
      assertThat(page.locator("#versions tr[data-version='1'][data-published='true']")).isVisible();
      page.locator("#versions tr[data-version='1'] .restore").click();
      page.waitForCondition(
          () -> board.desk().now().plan().rigs().get(0).jobs().get(1).job().equals(job));
    }
  }
}
