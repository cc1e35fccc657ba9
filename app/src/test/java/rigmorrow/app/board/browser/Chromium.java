package rigmorrow.app.board.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * The browser that the tests drive: {@code CHROME_BIN}, or the first Chromium or Chrome on the
 * path. One for the whole run, since starting it takes a second. It fails where there is none; only
 * {@code -Drigmorrow.browser=none} leaves the tests out.
 */
final class Chromium {
  private static final List<String> NAMES =
      List.of(
          "chromium",
          "chromium-headless-shell",
          "chromium-browser",
          "google-chrome",
          "google-chrome-stable");

  /**
   * On a busy machine an answer takes its time; a right one is waited for no longer than it takes.
   */
  static final double PATIENCE_MILLIS = 20_000;

  private static Browser running;

  private Chromium() {}

  /** The running browser. */
  static synchronized Browser running() {
    Assumptions.assumeFalse(
        "none".equals(System.getProperty("rigmorrow.browser")), "browser tests are left out");
    if (running == null) {
      // The driver would fetch browsers of its own.
      Playwright.CreateOptions options =
          new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1"));
      PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MILLIS);
      running = Playwright.create(options).chromium().launch(launch());
    }
    return running;
  }

  private static BrowserType.LaunchOptions launch() {
    List<String> arguments =
        new ArrayList<>(
            List.of("--disable-quic", "--disable-background-networking", "--disable-gpu"));
    // Inside most containers the browser's own sandbox cannot be set up; it only sees our pages.
    arguments.add("--no-sandbox");
    return new BrowserType.LaunchOptions().setExecutablePath(binary()).setArgs(arguments);
  }

  private static Path binary() {
    String named = System.getenv("CHROME_BIN");
    if (named != null && Files.isExecutable(Path.of(named))) {
      return Path.of(named);
    }
    Optional<Path> found =
        Stream.of(System.getenv("PATH").split(File.pathSeparator))
            .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
            .filter(Files::isExecutable)
            .findFirst();
    return found.orElseThrow(
        () ->
            new IllegalStateException(
                "no Chromium found; install one, point CHROME_BIN to one, or run with"
                    + " -Drigmorrow.browser=none"));
  }
}
