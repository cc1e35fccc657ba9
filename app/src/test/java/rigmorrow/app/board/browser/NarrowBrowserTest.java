package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.app.board.touch.Touch;
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

  /** Between two widths of screen that are tested above; as many tablets are held. */
  @Test
  void theVersionsFitWithoutScrollingSideways() throws IOException {
    try (OpenBoard board = tablet(150)) {
      board.desk().putBy(1, "before lunch, with the lamp of Tuesday moved to the tall table");
      int published = board.desk().putBy(1, "after lunch").number();
      board.desk().publish(published);
      Page page = board.page();
      board.view("handout");
      assertThat(page.locator("#versions tbody tr")).hasCount(2);
      assertThat(page.evaluate(SIDEWAYS)).isEqualTo(0);
    }
  }

  @Test
  void whatIsToldCoversNeitherTheFloorsNameNorAProposal() throws IOException {
    try (OpenBoard board = tablet(40)) {
      Page page = board.page();
      String job = board.desk().now().plan().rigs().get(0).jobs().get(2).job();
      board.choose(job);
      page.locator("#move-place").fill("1");
      page.locator("#move-try").tap();
      assertThat(page.locator("#proposal[data-allowed='true']")).isVisible();
      String other = board.desk().now().plan().rigs().get(1).jobs().get(0).job();
      board.desk().keep(1, new Touch.LeaveOut(other));
      page.locator("#notice:not([hidden])").waitFor();
      page.evaluate("() => scrollTo(0, 0)");
      assertApart(page, "#notice", "#floor");
      assertApart(page, "#notice", "#proposal");
      page.evaluate("() => scrollTo(0, 600)");
      assertThat(page.locator("#notice")).isInViewport();
      assertApart(page, "#notice", "#proposal");
      page.evaluate("() => scrollTo(0, 0)");
      page.locator("#notice button").first().tap();
      assertThat(page.locator("#proposal")).isHidden();
      page.locator("#undo").tap();
      board.awaitRevision(3);
      assertThat(page.locator("#notice")).containsText("Undone");
      assertApart(page, "#notice", "#floor");
    }
  }

  private static OpenBoard tablet(int jobs) throws IOException {
    return OpenBoard.of(
        Demo.batch(jobs, 1, OpenBoard.DAY),
        options -> options.setViewportSize(820, 1180).setHasTouch(true));
  }

  private static void assertApart(Page page, String one, String other) {
    BoundingBox first = page.locator(one).boundingBox();
    BoundingBox second = page.locator(other).boundingBox();
    boolean apart =
        first.y + first.height <= second.y
            || second.y + second.height <= first.y
            || first.x + first.width <= second.x
            || second.x + second.width <= first.x;
    assertThat(apart).as("%s and %s lie apart", one, other).isTrue();
  }

  private static final String SIDEWAYS =
      """
      () => { const holder = document.querySelector('#versions').closest('.scroller');
        return holder.scrollWidth - holder.clientWidth; }
      """;

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
