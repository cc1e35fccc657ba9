package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;

/** What the page says a comparison would take, while scenarios change under it. */
class EstimateBrowserTest {
  private static final String PLANS_OF = "%d plans of 60 steps on one core";

  @TempDir Path folder;

  private OpenBoard open() throws IOException {
    SmallStudy.write(folder, SmallStudy.days(2, 6), SmallStudy.study());
    OpenBoard board =
        OpenBoard.comparing(
            folder.resolve("board"), DaySource.folder(folder.resolve("days")), options -> options);
    board.view("whatif");
    Page page = board.page();
    assertThat(page.locator("#whatif-panels")).isVisible();
    byte[] bytes = Files.readAllBytes(folder.resolve("scenarios.yaml"));
    page.locator("#scenario-file")
        .setInputFiles(new FilePayload("mine.yaml", "application/yaml", bytes));
    assertThat(page.locator("#scenario-list li")).hasCount(5);
    page.locator("#effort-by-steps").check();
    page.locator("#effort-steps").fill("60");
    assertThat(page.locator("#estimate")).containsText(PLANS_OF.formatted(12));
    return board;
  }

  /** The server has other scenarios already and the page does not know it yet. */
  @Test
  void waitsForAChangeThatIsUnderWay() throws IOException {
    try (OpenBoard board = open()) {
      Page page = board.page();
      page.evaluate(
          """
          () => {
            const ask = window.fetch;
            window.fetch = async (path, how) => {
              const answer = await ask(path, how);
              const name = String(path).replace(/.*[/]/, '');
              if (name === 'remove') {
                document.body.dataset.removed = 'yes';
              }
              if (name === 'remove' || name === 'whatif') {
                await new Promise(done => setTimeout(done, 1500));
              }
              return answer;
            };
          }""");
      page.locator("#scenario-list li[data-scenario='less'] .remove").click();
      assertThat(page.locator("body[data-removed='yes']")).isVisible();
      page.locator("#seeds").fill("2");
      assertThat(page.locator("#estimate")).containsText(PLANS_OF.formatted(20));
      assertThat(page.locator("#scenario-list li")).hasCount(4);
      assertThat(page.locator("#compare-failure")).isHidden();
    } // Fails where the console has an error.
  }

  /** Another tab may have changed them: what there is then is asked for, and nothing said. */
  @Test
  void asksAgainWhereItWasOvertaken() throws IOException {
    try (OpenBoard board = open()) {
      Page page = board.page();
      page.evaluate(
          """
          () => {
            const ask = window.fetch;
            const left = [409, 423];
            document.body.dataset.failed = '';
            new MutationObserver(() => {
              const line = document.querySelector('#compare-failure');
              document.body.dataset.failed += line.hidden ? '' : line.textContent;
            }).observe(document.querySelector('#compare-failure'), {attributes: true, childList: true});
            window.fetch = (path, how) => {
              const status = String(path).endsWith('/estimate') ? left.shift() : undefined;
              return status === undefined ? ask(path, how)
                : Promise.resolve(Response.json({message: 'Other scenarios.'}, {status}));
            };
          }""");
      page.locator("#seeds").fill("3");
      assertThat(page.locator("#estimate")).containsText(PLANS_OF.formatted(36));
      assertThat(page.locator("body")).hasAttribute("data-failed", "");
    }
  }

  @Test
  void saysHowManyPlansAreThereAlready() throws IOException {
    try (OpenBoard board = open()) {
      Page page = board.page();
      page.locator("#compare-start").click();
      assertThat(page.locator("#comparison[data-state='DONE']")).isVisible();
      assertThat(page.locator("#estimate"))
          .containsText("All of them are there already, so nothing is left to plan.");
      page.locator("#seeds").fill("2");
      assertThat(page.locator("#estimate"))
          .containsText(
              Pattern.compile(
                  "Of 24 plans 12 are there already; to make the other 12 takes about \\d+ s"));
    }
  }
}
