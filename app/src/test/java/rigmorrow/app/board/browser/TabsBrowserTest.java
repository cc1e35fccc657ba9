package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import rigmorrow.app.board.touch.Touch;

/** Two tabs on one board never lose each other's change. */
class TabsBrowserTest {

  @Test
  void followsWhatAnotherTabKeeps() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page second = board.open();
      String job = board.desk().now().plan().rigs().get(0).jobs().get(0).job();
      board.choose(job);
      board.page().locator("#leave-out").click();
      board.page().locator("#keep").click();
      board.awaitRevision(2);
      second.waitForFunction("() => document.body.dataset.revision === '2'");
      assertThat(second.locator("#chart .bar[data-job='" + job + "']")).hasCount(0);
    }
  }

  @Test
  void refusesAStaleTouchAndTellsWhatChanged() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      board.expectFault("409");
      // This tab hears nothing of the other: its line is cut.
      page.route("**/api/events", route -> route.abort());
      board.expectFault("/api/events");
      board.expectFault("ERR_FAILED");
      page.reload();
      page.locator("#chart .bar[data-job]").first().waitFor();
      String job = board.desk().now().plan().rigs().get(0).jobs().get(0).job();
      String other = board.desk().now().plan().rigs().get(1).jobs().get(0).job();
      board.choose(job);
      page.locator("#leave-out").click();
      assertThat(page.locator("#proposal[data-answered='true']")).isVisible();
      board.desk().keep(1, new Touch.LeaveOut(other));
      page.locator("#keep").click();
      assertThat(page.locator("#stale")).isVisible();
      assertThat(page.locator("#stale-since")).containsText(other);
      assertThat(board.desk().now().plan().job(job)).isPresent();
      assertThat(board.desk().now().revision()).isEqualTo(2);
      page.locator("#stale-ok").click();
      assertThat(page.locator("#chart .bar[data-job='" + other + "']")).hasCount(0);
    }
  }
}
