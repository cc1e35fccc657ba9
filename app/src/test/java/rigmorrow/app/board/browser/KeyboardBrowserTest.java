package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;

/** The whole way through without a mouse. */
class KeyboardBrowserTest {

  @Test
  void reachesEveryJobAndShowsWhereTheFocusIs() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      Keyboard keys = page.keyboard();
      page.locator("#chart").focus();
      keys.press("ArrowRight"); // A focus that no key brought need not be shown.
      Set<String> reached = new LinkedHashSet<>();
      for (RigPlan rig : board.desk().now().plan().rigs()) {
        keys.press("Home");
        for (int i = 0; i < rig.jobs().size(); i++) {
          reached.add(focusedJob(page));
          assertThat(focusRing(page)).isTrue();
          keys.press("ArrowRight");
        }
        keys.press("ArrowDown");
      }
      List<String> all =
          board.desk().now().plan().rigs().stream()
              .flatMap(rig -> rig.jobs().stream())
              .map(PlannedJob::job)
              .toList();
      assertThat(reached).containsExactlyInAnyOrderElementsOf(all);
    }
  }

  @Test
  void movesKeepsUndoesAndDropsByKeysAlone() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      Keyboard keys = page.keyboard();
      String job = board.desk().now().plan().rigs().get(0).jobs().get(2).job();
      keys.press("/");
      keys.type(job);
      keys.press("Enter");
      page.locator("#job[data-job='" + job + "']").waitFor();
      page.locator("#chart").focus();
      assertThat(focusedJob(page)).isEqualTo(job);
      keys.press("m");
      keys.press("ArrowLeft");
      assertThat(page.locator("#proposal[data-answered='true'][data-allowed='true']")).isVisible();
      assertThat(page.locator("#say")).containsText(job);
      keys.press("Enter");
      board.awaitRevision(2);
      assertThat(board.desk().now().plan().rigs().get(0).jobs().get(1).job()).isEqualTo(job);
      keys.press("Control+z");
      board.awaitRevision(3);
      keys.press("Control+y");
      board.awaitRevision(4);
      page.locator("#chart").focus();
      keys.press("m");
      keys.press("ArrowRight");
      assertThat(page.locator("#proposal[data-answered='true']")).isVisible();
      keys.press("Escape");
      assertThat(page.locator("#proposal")).isHidden();
      assertThat(board.desk().now().revision()).isEqualTo(4);
    }
  }

  @Test
  void comesThroughEveryControlAndOutAgain() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      page.locator("body").focus();
      Set<String> passed = new LinkedHashSet<>();
      for (int i = 0; i < 120; i++) {
        page.keyboard().press("Tab");
        String id =
            (String)
                page.evaluate(
                    "() => { const e = document.activeElement;"
                        + " return e === document.body ? 'body' : e.id || e.className ||"
                        + " e.getAttribute('data-view') || e.tagName; }");
        if (id.equals("body")) {
          break;
        }
        passed.add(id);
      }
      assertThat(passed).contains("find", "by-rig", "by-crew", "zoom-in", "fit-day", "tab-job");
      assertThat(page.evaluate("() => document.activeElement === document.body"))
          .as("the focus leaves the page at its end; passed " + passed)
          .isEqualTo(true);
    }
  }

  @Test
  void opensHelpAndClosesIt() throws IOException {
    try (OpenBoard board = OpenBoard.demo(12)) {
      Page page = board.page();
      page.locator("#chart").focus();
      page.keyboard().press("?");
      assertThat(page.locator("#help")).isVisible();
      page.keyboard().press("Escape");
      assertThat(page.locator("#help")).isHidden();
    }
  }

  private static String focusedJob(Page page) {
    return (String) page.evaluate("() => document.activeElement.dataset.job ?? ''");
  }

  private static boolean focusRing(Page page) {
    return (Boolean)
        page.evaluate(
            "() => { const style = getComputedStyle(document.activeElement);"
                + " return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2"
                + " || style.boxShadow !== 'none'; }");
  }
}
