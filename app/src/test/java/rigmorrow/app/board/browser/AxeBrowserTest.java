package rigmorrow.app.board.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.demo.Demo;

/** What axe-core finds in every view, by day and by night: nothing. */
class AxeBrowserTest {

  @ParameterizedTest
  @EnumSource(names = {"LIGHT", "DARK"})
  void findsNothingInAnyView(ColorScheme scheme) throws IOException {
    try (OpenBoard board =
        OpenBoard.of(Demo.batch(40, 1, OpenBoard.DAY), options -> options.setColorScheme(scheme))) {
      Page page = board.page();
      check(page, "plan");
      page.locator("#show-kit").click();
      page.locator("#show-samples").click();
      check(page, "plan with kit and samples");
      page.locator("#by-crew").click();
      check(page, "plan by operator");
      page.locator("#by-rig").click();
      board.choose(board.desk().now().plan().rigs().get(0).jobs().get(2).job());
      page.locator("#job details").evaluateAll("all => all.forEach(one => { one.open = true; })");
      page.locator("#why-rigs").waitFor();
      check(page, "job");
      page.locator("#move-place").fill("1");
      page.locator("#move-try").click();
      page.locator("#proposal[data-answered='true']").waitFor();
      check(page, "proposal");
      page.locator("#keep-pin").click();
      board.awaitRevision(2);
      for (String tab : List.of("out", "troubles", "pins", "search")) {
        page.locator("#tab-" + tab).click();
        check(page, tab);
      }
      for (String view : List.of("jobs", "fit", "handout", "import", "whatif")) {
        board.view(view);
        check(page, view);
      }
      page.locator("#help-open").click();
      check(page, "help");
    }
  }

  private static void check(Page page, String where) {
    List<String> found =
        new AxeBuilder(page).analyze().getViolations().stream().map(rule -> text(rule)).toList();
    assertThat(found).as(where).isEmpty();
  }

  private static String text(Rule rule) {
    String first = rule.getNodes().isEmpty() ? "" : rule.getNodes().get(0).getHtml();
    return rule.getId() + ": " + rule.getHelp() + " at " + first;
  }
}
