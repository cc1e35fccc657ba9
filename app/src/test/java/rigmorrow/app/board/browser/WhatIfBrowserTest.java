package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;

/** The manager's view: scenarios from a file or a form, a comparison, what comes of it. */
class WhatIfBrowserTest {
  private static final int MOST_TABS = 120;
  private static final String FEW_STEPS = "60";

  /** So many that plans take a good part of a second, and the end is far off after the first. */
  private static final String MANY_STEPS = "30000";

  private static final String BAD =
      "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios:\n"
          + "  - {name: a, changes: [{removeRig: {rig: R9}}]}\n"
          + "  - {name: b, changes: [{longerHours: {rigs: [R1], laterMinutes: many}}]}\n";

  @TempDir Path folder;

  private OpenBoard open(int days, int jobs) {
    return open(days, jobs, ColorScheme.LIGHT, 1440);
  }

  private OpenBoard open(int days, int jobs, ColorScheme scheme, int wide) {
    SmallStudy.write(folder, SmallStudy.days(days, jobs), SmallStudy.study());
    OpenBoard board =
        OpenBoard.comparing(
            folder.resolve("board"),
            DaySource.folder(folder.resolve("days")),
            options -> options.setColorScheme(scheme).setViewportSize(wide, 900));
    board.view("whatif");
    assertThat(board.page().locator("#whatif-panels")).isVisible();
    return board;
  }

  private FilePayload scenarios() throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve("scenarios.yaml"));
    return new FilePayload("next-year.yaml", "application/yaml", bytes);
  }

  private static void compare(Page page, String steps) {
    page.locator("#effort-by-steps").check();
    page.locator("#effort-steps").fill(steps);
    page.locator("#compare-start").click();
  }

  private static Locator state(Page page, String state) {
    return page.locator("#comparison[data-state='" + state + "']");
  }

  /** A file dropped as from a folder of the desktop. */
  private static void drop(Page page, String name, String text) {
    page.evaluate(
        """
        ([name, text]) => {
          const data = new DataTransfer();
          data.items.add(new File([text], name));
          document.querySelector('#scenario-drop')
            .dispatchEvent(new DragEvent('drop', {dataTransfer: data, bubbles: true, cancelable: true}));
        }""",
        List.of(name, text));
  }

  @Test
  void takesAFileComparesAndTells() throws IOException {
    try (OpenBoard board = open(3, 8)) {
      Page page = board.page();
      drop(page, "<img src=x>.yaml", BAD);
      assertThat(page.locator("#scenario-problems tbody tr")).hasCount(2);
      assertThat(page.locator("#scenario-refused")).containsText("<img src=x>.yaml: 2 problems");
      assertThat(page.locator("#scenario-problems tbody tr").first())
          .containsText(Pattern.compile("removeRig.*R9.*R1, R2"));
      assertThat(page.locator("#compare-start")).isDisabled();
      drop(page, "next-year.yaml", Files.readString(folder.resolve("scenarios.yaml"), UTF_8));
      assertThat(page.locator("#scenario-list li")).hasCount(5);
      assertThat(page.locator("#scenario-problems")).hasCount(0);
      page.locator("#scenario-list li[data-scenario='less'] .remove").click();
      assertThat(page.locator("#scenario-list li")).hasCount(4);
      page.locator("#one-more").check();
      page.locator("#demand").fill("-20, 20");
      assertThat(page.locator("#estimate"))
          .containsText("93 plans of 2 s on one core: 31 floors and demands on 3 days");
      assertThat(page.locator("#estimate")).containsText("That takes about ");
      compare(page, FEW_STEPS);
      assertThat(page.locator("#report .answer")).hasCount(4);
      assertThat(state(page, "DONE")).isVisible();
      assertThat(page.locator("#comparison-sentence")).hasText("All 93 plans are made.");
      JsonNode summary = new ObjectMapper().readTree(saved(page, "summary.json"));
      for (int i = 0; i < 4; i++) {
        assertThat(page.locator("#report .answer p").nth(0)).not().isEmpty();
        assertThat(page.locator("#answers > li").nth(i).locator("p").first())
            .hasText(summary.at("/scenarios/" + i + "/sentence").asText());
      }
      Locator first = page.locator("#scenario-1");
      assertThat(first.locator(".lanes svg")).hasCount(2);
      assertThat(page.locator("#scenario-2 .lanes svg")).hasCount(2 + 3);
      assertThat(first.locator(".plane svg")).hasCount(3);
      assertThat(first.locator("table.figures-of").first().locator("tbody tr")).hasCount(10);
      assertThat(page.locator("#one-more-buys tbody tr th").first()).isVisible();
      assertThat(page.locator("#one-more-buys table.figures-of tbody tr")).hasCount(16);
      assertThat(new String(saved(page, "report.pdf"), UTF_8)).startsWith("%PDF-");
      assertThat(new String(saved(page, "summary.csv"), UTF_8)).startsWith("scenario,");
    }
  }

  private static byte[] saved(Page page, String name) throws IOException {
    return page.waitForDownload(
            () -> page.locator("#report-files a[data-name='" + name + "']").click())
        .createReadStream()
        .readAllBytes();
  }

  @Test
  void isReloadedStoppedAndGoesOn() throws IOException {
    try (OpenBoard board = open(4, 30)) {
      Page page = board.page();
      page.locator("#scenario-file").setInputFiles(scenarios());
      assertThat(page.locator("#scenario-list li")).hasCount(5);
      compare(page, MANY_STEPS);
      assertThat(page.locator("#comparison-sentence"))
          .containsText(Pattern.compile("^[1-9]\\d* of 24 plans are made, about "));
      page.reload();
      assertThat(state(page, "RUNNING")).isVisible();
      assertThat(page.locator("#effort-steps")).hasValue(MANY_STEPS);
      Page second = board.open();
      second.locator("#views a[data-view='whatif']").click();
      assertThat(state(second, "RUNNING")).isVisible();
      assertThat(second.locator("#scenario-list .remove").first()).isDisabled();
      second.locator("#compare-stop").click();
      assertThat(state(page, "STOPPED")).isVisible();
      String kept = page.locator("#comparison-sentence").textContent();
      assertThat(kept).matches("\\d+ of 24 plans are made and kept\\. Started again, it goes on.*");
      assertThat(page.locator("#compare-word")).hasText("Go on");
      assertThat(page.locator("#estimate")).containsText(kept.split(" ", 2)[0] + " are there");
      page.locator("#compare-start").click();
      assertThat(state(second, "RUNNING")).isVisible();
      assertThat(state(page, "DONE")).isVisible();
      assertThat(page.locator("#comparison-sentence")).hasText("All 24 plans are made.");
      assertThat(second.locator("#report .answer")).hasCount(5);
    }
  }

  @Test
  void doesNotLetASearchTakeTheCores() throws IOException {
    try (OpenBoard board = open(2, 8)) {
      Page page = board.page();
      board.expectFault("423");
      page.locator("#scenario-file").setInputFiles(scenarios());
      assertThat(page.locator("#scenario-list li")).hasCount(5);
      compare(page, "1000000000");
      assertThat(state(page, "RUNNING")).isVisible();
      board.view("plan");
      assertThat(page.locator("#comparing")).containsText("Scenarios are being compared: 0 of 12");
      page.locator("#tab-search").click();
      page.locator("#search-start").click();
      assertThat(page.locator("#search-failure")).containsText("Stop it under What if");
      board.view("whatif");
      page.locator("#compare-stop").click();
      assertThat(state(page, "STOPPED")).isVisible();
      assertThat(page.locator("#comparing")).hasText("");
      board.view("plan");
      page.locator("#search-seconds").fill("600");
      page.locator("#search-start").click();
      assertThat(page.locator("#search-state[data-state='RUNNING']")).isVisible();
      board.view("whatif");
      page.locator("#compare-start").click();
      assertThat(page.locator("#compare-failure")).containsText("A search for the plan of the day");
      board.desk().stopSearch();
    }
  }

  @Test
  void worksByKeyboardAlone() {
    try (OpenBoard board = open(2, 8)) {
      Page page = board.page();
      page.locator("#views a[data-view='plan']").focus();
      tabTo(page, "#views a[data-view='whatif']");
      page.keyboard().press("Enter");
      assertThat(page.locator("#change-kind")).isVisible();
      tabTo(page, "#change-kind");
      page.keyboard().press("ArrowDown");
      tabTo(page, "#change-add");
      page.keyboard().press("Enter");
      assertThat(page.locator("#scenario-list li")).hasText("Without R1 (Small glass table)");
      tabTo(page, "#effort-by-seconds");
      page.keyboard().press("ArrowDown");
      assertThat(page.locator("#effort-by-steps")).isChecked();
      tabTo(page, "#effort-steps");
      page.keyboard().press("Control+A");
      page.keyboard().type(FEW_STEPS);
      tabTo(page, "#compare-start");
      page.keyboard().press("Enter");
      assertThat(page.locator("#report .answer")).hasCount(1);
      assertThat(page.locator("#compare-start")).isFocused();
      tabTo(page, "#scenario-1-tables > summary");
      page.keyboard().press("Enter");
      assertThat(page.locator("#scenario-1-tables table").first()).isVisible();
    }
  }

  private static void tabTo(Page page, String selector) {
    for (int i = 0; i < MOST_TABS; i++) {
      page.keyboard().press("Tab");
      if ((boolean) page.evaluate("one => document.activeElement.matches(one)", selector)) {
        return;
      }
    }
    throw new AssertionError("Tab does not lead to " + selector);
  }

  @ParameterizedTest
  @CsvSource({"LIGHT, 1440", "DARK, 1440", "LIGHT, 390", "DARK, 820"})
  void canBeReadByAll(ColorScheme scheme, int wide) throws IOException {
    try (OpenBoard board = open(2, 8, scheme, wide)) {
      Page page = board.page();
      check(page, wide);
      page.locator("#scenario-file")
          .setInputFiles(new FilePayload("bad.yaml", "", BAD.getBytes(UTF_8)));
      assertThat(page.locator("#scenario-problems")).isVisible();
      check(page, wide);
      page.locator("#scenario-file").setInputFiles(scenarios());
      assertThat(page.locator("#scenario-list li")).hasCount(5);
      page.locator("#one-more").check();
      page.locator("#again").check();
      compare(page, FEW_STEPS);
      assertThat(page.locator("#report .answer")).hasCount(5);
      page.locator("#report details")
          .evaluateAll("all => all.forEach(one => { one.open = true; })");
      check(page, wide);
    }
  }

  private static void check(Page page, int wide) {
    assertThat(new AxeBuilder(page).analyze().getViolations())
        .extracting(rule -> rule.getId() + " at " + rule.getNodes().get(0).getHtml())
        .isEmpty();
    assertThat(page.evaluate("() => document.documentElement.scrollWidth"))
        .as("no wider than " + wide)
        .isEqualTo(page.evaluate("() => document.documentElement.clientWidth"));
  }
}
