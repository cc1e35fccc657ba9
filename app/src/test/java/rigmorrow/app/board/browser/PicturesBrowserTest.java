package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.data.BatchFolder;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.demo.DemoHistory;
import rigmorrow.data.demo.DemoScenarios;
import rigmorrow.data.json.Trees;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/**
 * Makes the pictures of the README. Every run takes them anew and looks at them; they are written
 * with {@code -Drigmorrow.rewrite=true}, since fonts differ from machine to machine.
 */
class PicturesBrowserTest {
  private static final Path FOLDER = Path.of("pictures");
  private static final long STEPS = 30_000;
  private static final int PAST_DAYS = 10;
  private static final String STEPS_OF_A_PAST_DAY = "1000";

  @Test
  void showsThePlanWithAJobChosen() throws IOException {
    try (OpenBoard board = day(ColorScheme.LIGHT, 1440, 900)) {
      board.choose(board.desk().now().plan().rigs().get(1).jobs().get(9).job());
      picture(board.page(), "board-plan.png", 1440, 900);
    }
  }

  @Test
  void showsATouchBeforeItIsKept() throws IOException {
    try (OpenBoard board = day(ColorScheme.DARK, 1440, 900)) {
      Page page = board.page();
      board.choose(board.desk().now().plan().rigs().get(1).jobs().get(9).job());
      page.locator("#move-place").fill("3");
      page.locator("#move-try").click();
      assertThat(page.locator("#proposal[data-answered='true']")).isVisible();
      picture(page, "board-touch.png", 1440, 900);
    }
  }

  @Test
  void showsTheJobsOnATablet() throws IOException {
    try (OpenBoard board = day(ColorScheme.LIGHT, 820, 1000)) {
      board.view("jobs");
      picture(board.page(), "board-tablet.png", 820, 1000);
    }
  }

  @Test
  void showsWhatScenariosWouldBuy(@TempDir Path folder) throws IOException {
    for (Batch day : DemoHistory.days(PAST_DAYS)) {
      BatchFolder.write(folder.resolve("days"), day);
    }
    DaySource days = DaySource.folder(folder.resolve("days"));
    String text =
        ScenarioWriter.write(
            DemoScenarios.study(), DemoScenarios.INTEREST_PERCENT, Trees.Notation.YAML);
    try (OpenBoard board = OpenBoard.comparing(folder.resolve("board"), days, options -> options)) {
      Page page = board.page();
      board.view("whatif");
      assertThat(page.locator("#whatif-panels")).isVisible();
      page.locator("#scenario-file")
          .setInputFiles(
              new FilePayload("scenarios.yaml", "", text.getBytes(StandardCharsets.UTF_8)));
      assertThat(page.locator("#scenario-list li")).hasCount(4);
      page.locator("#effort-by-steps").check();
      page.locator("#effort-steps").fill(STEPS_OF_A_PAST_DAY);
      page.locator("#compare-start").click();
      page.locator("#report .answer").first().waitFor(new Locator.WaitForOptions().setTimeout(0));
      page.locator("#report").evaluate("one => one.scrollIntoView()");
      page.locator("#notice button").click();
      picture(page, "whatif.png", 1440, 900);
    }
  }

  private static OpenBoard day(ColorScheme scheme, int wide, int high) throws IOException {
    Batch batch = Demo.batch(150, 1, OpenBoard.DAY);
    Plan plan = FloorSolver.solve(batch, SolverSettings.steps(STEPS, 1), SolveListener.NONE);
    return OpenBoard.open(
        batch, plan, options -> options.setColorScheme(scheme).setViewportSize(wide, high));
  }

  private static void picture(Page page, String name, int wide, int high) throws IOException {
    page.waitForTimeout(500); // Until what moves has come to rest.
    byte[] bytes = page.screenshot();
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(bytes));
    assertThat(picture.getWidth()).isEqualTo(wide);
    assertThat(picture.getHeight()).isEqualTo(high);
    assertThat(colours(picture)).as("more than an empty page").isGreaterThan(50);
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("rigmorrow.rewrite")) {
      Files.createDirectories(FOLDER);
      Files.write(file, bytes);
    }
    assertThat(file).exists();
    assertThat(Files.readString(Path.of("../README.md"), StandardCharsets.UTF_8))
        .contains("app/pictures/" + name);
  }

  private static long colours(BufferedImage picture) {
    int[] all =
        picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    return java.util.Arrays.stream(all).distinct().count();
  }
}
