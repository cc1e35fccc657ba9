package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.data.demo.Demo;

/** A tablet on the floor, and what fits in a pocket. */
class NarrowBrowserTest {

  @ParameterizedTest
  @CsvSource({"768, 1024", "390, 844"})
  void worksOnANarrowScreen(int wide, int high) throws IOException {
    try (OpenBoard board =
        OpenBoard.of(
            Demo.batch(40, 1, OpenBoard.DAY),
            options -> options.setViewportSize(wide, high).setHasTouch(true))) {
      Page page = board.page();
      for (String view : List.of("plan", "jobs", "fit", "handout", "import", "whatif")) {
        board.view(view);
        assertThat(page.evaluate("() => document.documentElement.scrollWidth"))
            .as(view + " is no wider than the screen")
            .isEqualTo(page.evaluate("() => document.documentElement.clientWidth"));
        assertThat((List<?>) page.evaluate(TOO_SMALL)).as(view + ": too small to touch").isEmpty();
      }
      board.view("plan");
      String job = board.desk().now().plan().rigs().get(0).jobs().get(2).job();
      board.choose(job);
      page.locator("#move-place").fill("1");
      page.locator("#move-try").tap();
      assertThat(page.locator("#proposal[data-allowed='true']")).isVisible();
      page.locator("#keep").tap();
      board.awaitRevision(2);
    }
  }

  /** Target size (minimum) of WCAG 2.2: 24 by 24 pixels. */
  private static final String TOO_SMALL =
      """
      () => [...document.querySelectorAll('button, select, input:not([type=file]), nav a')]
        .filter(one => one.checkVisibility() && one.getBoundingClientRect().width > 0)
        .filter(one => { const box = one.getBoundingClientRect();
          return box.height < 24 || box.width < 24; })
        .filter(one => !(one.type === 'checkbox' && one.closest('label')))
        .map(one => one.outerHTML.slice(0, 120))
      """;
}
