package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.data.column.Numeral;

/** The form for a usual change: what it offers for a purchase, and which amounts it takes. */
class ChangeFormBrowserTest {
  @TempDir Path folder;

  private OpenBoard open() {
    SmallStudy.write(folder, SmallStudy.days(2, 8), SmallStudy.study());
    OpenBoard board =
        OpenBoard.comparing(
            folder.resolve("board"),
            DaySource.folder(folder.resolve("days")),
            options -> options.setViewportSize(1440, 900));
    board.view("whatif");
    assertThat(board.page().locator("#whatif-panels")).isVisible();
    return board;
  }

  private static String purchaseFields(Page page) {
    return Stream.of("price", "life", "running", "interest")
        .map(id -> page.locator("#change-" + id).inputValue())
        .collect(Collectors.joining(" / "));
  }

  @Test
  void fillsInWhatTheFileSaysOfPrices() {
    try (OpenBoard board = open()) {
      Page page = board.page();
      assertThat(page.locator("#change-listed")).isHidden();
      page.locator("#scenario-file").setInputFiles(folder.resolve("scenarios.yaml"));
      assertThat(page.locator("#change-listed")).isVisible();
      assertThat(purchaseFields(page)).isEqualTo("28000 / 8 / 1200 / 6");
      page.locator("#change-rig").selectOption("R3");
      assertThat(purchaseFields(page)).isEqualTo("55000 / 8 / 2100 / 6");
      assertThat(page.locator("#estimate")).containsText("12 plans"); // Asked of what there is now.
      page.locator("#change-price").fill("60000");
      page.locator("#change-add").click();
      assertThat(page.locator("#scenario-list li[data-scenario='another-R3']"))
          .containsText("60,000 EUR, used for 8 years");
      assertThat(purchaseFields(page)).isEqualTo("55000 / 8 / 2100 / 6");
      page.locator("#change-kind").selectOption("ANOTHER_UNIT");
      page.locator("#change-kit").selectOption("docking-arm");
      assertThat(purchaseFields(page)).isEqualTo("8200 / 8 / 200 / 6");
    }
  }

  @Test
  void takesTheInterestOfTheFileWhereItHasNoPrice() {
    String file =
        "version: 1\nname: x\nmoney: {interestPercent: 6.5}\nscenarios:\n"
            + "  - {name: a, changes: [{removeRig: {rig: R1}}]}\n";
    try (OpenBoard board = open()) {
      Page page = board.page();
      assertThat(purchaseFields(page)).isEqualTo(" / 8 / 0 / 5");
      page.locator("#scenario-file")
          .setInputFiles(new FilePayload("x.yaml", "application/yaml", file.getBytes(UTF_8)));
      assertThat(page.locator("#change-interest")).hasValue("6.5");
      assertThat(purchaseFields(page)).isEqualTo(" / 8 / 0 / 6.5");
      assertThat(page.locator("#change-listed")).isHidden();
    }
  }

  @Test
  void guessesNoAmountThatCouldBeTwo() throws IOException {
    try (OpenBoard board = open()) {
      Page page = board.page();
      Locator price = page.locator("#change-price");
      Locator problem = page.locator("#change-price-problem");
      price.fill("60.000");
      page.locator("#change-add").click();
      assertThat(problem).hasText("60.000 could be 60,000 or 60. Write 60000 or 60.00.");
      assertThat(price).isFocused();
      assertThat(price).hasAttribute("aria-invalid", "true");
      assertThat(page.locator("#scenario-list li")).hasCount(0);
      assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
      price.fill("1,250");
      page.locator("#change-running").fill("-1.234");
      page.locator("#change-add").click();
      assertThat(problem).hasText("1,250 could be 1,250 or 1.25. Write 1250 or 1.25.");
      assertThat(page.locator("#change-running-problem"))
          .hasText("-1.234 could be -1,234 or -1.234. Write -1234 or -1.2340.");
      price.fill("60.000,50");
      page.locator("#change-running").fill("0");
      page.locator("#change-add").click();
      assertThat(page.locator("#scenario-list li")).containsText("60,000 EUR");
      assertThat(problem).isHidden();
      String file =
          new String(
              page.waitForDownload(() -> page.locator("#scenario-download").click())
                  .createReadStream()
                  .readAllBytes(),
              UTF_8);
      assertThat(file).contains("price: 60000.5");
    }
  }

  /** One rule for tables that are dropped and for what is typed. */
  @Test
  void readsAmountsAsATableIsRead() {
    try (OpenBoard board = open()) {
      String read =
          "async text => String((await import('/page/js/base/amount.js')).amount(text, 0, 1e12).value)";
      for (String text :
          List.of(
              "60000",
              "60.000",
              "1,250",
              "0.500",
              "0,5",
              ".5",
              "12.",
              "1.250.000",
              "1,250.50",
              "1.250,50",
              "1 250",
              "1 250,5",
              "1'250",
              "12,34,567",
              "1.2.3",
              "1,250,5",
              "1234.567",
              "6e4",
              "EUR 60",
              "012,345",
              "1.250.000.000")) {
        Numeral numeral = Numeral.of(text);
        String expected =
            numeral == null || numeral.ambiguous() ? "NaN" : number(numeral.read('.'));
        assertThat(board.page().evaluate(read, text)).as(text).isEqualTo(expected);
      }
    }
  }

  private static String number(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
