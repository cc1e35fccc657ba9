package rigmorrow.app.board.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.print.Paper;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.app.whatif.page.AskedBy;
import rigmorrow.app.whatif.page.ReportPage;

/** The report of a comparison in a browser, wide and narrow. */
class ScenarioReportAccessibilityTest {
  @ParameterizedTest
  @ValueSource(ints = {1200, 400})
  void hasNoViolationsAndDoesNotScrollSideways(int width) {
    String html =
        new ReportPage(
                SmallStudy.compared(
                    SmallStudy.study(),
                    SmallStudy.days(3, 12),
                    SmallStudy.settings(1, List.of(), true, true)),
                AskedBy.BOARD,
                Paper.A4)
            .html();
    Browser.NewContextOptions options =
        new Browser.NewContextOptions().setViewportSize(width, 900).setLocale("en-GB");
    try (BrowserContext context = Chromium.running().newContext(options)) {
      Page page = context.newPage();
      page.setContent(html);
      assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
      assertThat(page.evaluate("document.documentElement.scrollWidth"))
          .isEqualTo(page.evaluate("document.documentElement.clientWidth"));
    }
  }
}
