package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import rigmorrow.data.demo.Demo;
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
