package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import rigmorrow.model.plan.PlannedJob;

/** Asking why, and planning again around the pins. */
class AskBrowserTest {

  @Test
  void answersWhyAndWhatEveryRigWouldCostAndMovesThere() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      String job = board.desk().now().plan().rigs().get(0).jobs().get(2).job();
      board.choose(job);
      page.locator("#job details[data-section='why'] summary").click();
      assertThat(page.locator("#why-rigs > li"))
          .hasCount(board.desk().now().batch().floor().rigs().size());
      assertThat(page.locator("#why-sections li").first().textContent()).matches(".*\\d.*");
      page.locator("#why-rigs button.move-there").first().click();
      assertThat(page.locator("#proposal[data-allowed='true']")).isVisible();
      page.locator("#keep").click();
      board.awaitRevision(2);
    }
  }

  @Test
  void saysWhatStandsInTheWayOfLatePromises() throws IOException {
    try (OpenBoard board = OpenBoard.demo(150)) {
      Page page = board.page();
      int late = board.desk().now().plan().figures().lateJobs();
      page.locator("#tab-troubles").click();
      assertThat(page.locator("#trouble-list > [data-job]")).hasCount(late);
      assertThat(page.locator("#trouble-list > [data-job]").first().textContent())
          .matches("(?s).*\\d.*");
      assertThat(page.locator("#panel-troubles .actions + #trouble-list")).isVisible();
      Locator move = page.locator("#trouble-list button.move-there").first();
      String aim = move.getAttribute("aria-label");
      move.click();
      assertThat(page.locator("#proposal[data-allowed='true']")).isVisible();
      String job = aim.replaceFirst("Move (\\S+) to .*", "$1");
      assertThat(page.locator("#proposal .sentence")).containsText(job);
      page.locator("#dont").click();
      page.locator("#trouble-search").click();
      assertThat(page.locator("#search-start")).isVisible();
    }
  }

  @Test
  void offersNoMoveToWhereAJobIs() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      String job = board.desk().now().plan().rigs().get(0).jobs().get(2).job();
      board.choose(job);
      page.locator("#job details[data-section='why'] summary").click();
      page.locator("#why-rigs > li").first().waitFor();
      Locator own =
          page.locator(
              "#why-rigs > li[data-rig='"
                  + board.desk().now().plan().rigs().get(0).rig()
                  + "'] button.move-there");
      assertThat(own).hasCount(1); // The best other place of its own rig.
      for (Locator button : own.all()) {
        assertThat(button.textContent()).doesNotEndWith("place 3");
      }
      assertThat(page.locator("#why-sections h4").allTextContents())
          .doesNotContain("Rigs, every place tried");
    }
  }

  @Test
  void plansAgainAroundThePinsShowsTheCourseAndKeepsTheBest() throws IOException {
    try (OpenBoard board = OpenBoard.demo(60)) {
      Page page = board.page();
      PlannedJob pinned = board.desk().now().plan().rigs().get(0).jobs().get(0);
      board.choose(pinned.job());
      page.locator("#job details[data-section='pin'] summary").click();
      page.locator("#pin-place").click();
      page.locator("#keep").click();
      board.awaitRevision(2);
      long before = board.desk().now().plan().figures().softPoints();
      page.locator("#tab-search").click();
      page.locator("#search-seconds").fill("60");
      page.locator("#search-start").click();
      assertThat(page.locator("#search-state[data-state='RUNNING']")).isVisible();
      page.locator("#search-course .uplot").waitFor();
      page.waitForCondition(() -> board.desk().progress().course().size() > 2);
      assertThat(page.locator("#undo")).isDisabled();
      page.locator("#search-stop").click();
      board.awaitRevision(3);
      assertThat(page.locator("#search-state[data-state='KEPT']")).isVisible();
      assertThat(board.desk().now().plan().figures().softPoints()).isLessThan(before);
      assertThat(board.desk().now().plan().rigs().get(0).jobs().get(0).job())
          .isEqualTo(pinned.job());
      page.locator("#undo").click();
      board.awaitRevision(4);
      assertThat(board.desk().now().plan().figures().softPoints()).isEqualTo(before);
    }
  }
}
