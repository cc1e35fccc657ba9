package rigmorrow.app.board.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.server.BoardServer;
import rigmorrow.app.board.server.ServerSettings;
import rigmorrow.app.board.whatif.ComparisonDesk;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;

/**
 * A board with its server, opened in a browser. Closing it fails when the page wrote an error to
 * its console, or asked for anything that is not the board's own.
 */
final class OpenBoard implements AutoCloseable {
  /** A day of the demo studio in winter time. */
  static final LocalDate DAY = LocalDate.of(2026, 3, 18);

  private static final int WIDE = 1440;
  private static final int HIGH = 900;
  private static final String TWO_FRAMES =
      "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))";

  private final Desk desk;
  private final ComparisonDesk comparisons;
  private final BoardServer server;
  private final BrowserContext context;
  private final Page page;
  private final List<String> faults = new ArrayList<>();
  private final List<String> expected = new ArrayList<>();

  private OpenBoard(Batch batch, Plan plan, UnaryOperator<Browser.NewContextOptions> how)
      throws IOException {
    this(Files.createTempDirectory("board"), batch, plan, null, how);
  }

  private OpenBoard(
      Path folder,
      Batch batch,
      Plan plan,
      @Nullable DaySource days,
      UnaryOperator<Browser.NewContextOptions> how) {
    Browser browser = Chromium.running();
    desk = Desk.open(folder, batch, plan, Clock.systemUTC());
    comparisons = new ComparisonDesk(days, folder.resolve("whatif"), desk.cores(), "test");
    server =
        BoardServer.start(
            desk, comparisons, new ServerSettings("127.0.0.1", 0, null), Clock.systemUTC(), "test");
    Browser.NewContextOptions options =
        new Browser.NewContextOptions()
            .setViewportSize(WIDE, HIGH)
            .setLocale("en-GB")
            .setTimezoneId("Asia/Tokyo"); // Nobody's floor: what the page shows must not follow it.
    context = browser.newContext(how.apply(options));
    page = open();
  }

  /** The demo's day with so many jobs, as dispatch rules plan it. */
  static OpenBoard demo(int jobs) throws IOException {
    return of(Demo.batch(jobs, 1, DAY));
  }

  /** Any batch, as dispatch rules plan it. */
  static OpenBoard of(Batch batch) throws IOException {
    return of(batch, options -> options);
  }

  /** Any batch as somebody plans it. */
  static OpenBoard planned(Batch batch, Function<Batch, Plan> planner) throws IOException {
    return new OpenBoard(batch, planner.apply(batch), options -> options);
  }

  /** Any batch in a browser that is set up in another way. */
  static OpenBoard of(Batch batch, UnaryOperator<Browser.NewContextOptions> how)
      throws IOException {
    return new OpenBoard(batch, FloorSolver.dispatch(batch), how);
  }

  /** A plan of a batch, in a browser that is set up in another way. */
  static OpenBoard open(Batch batch, Plan plan, UnaryOperator<Browser.NewContextOptions> how)
      throws IOException {
    return new OpenBoard(batch, plan, how);
  }

  /** A small day, with past days beside it, to compare scenarios on. */
  static OpenBoard comparing(
      Path folder, DaySource days, UnaryOperator<Browser.NewContextOptions> how) {
    Batch batch = Demo.batch(12, 1, DAY);
    return new OpenBoard(folder, batch, FloorSolver.dispatch(batch), days, how);
  }

  /** One more tab on the same board. */
  Page open() {
    Page tab = context.newPage();
    tab.setDefaultTimeout(Chromium.PATIENCE_MILLIS);
    tab.onConsoleMessage(
        message -> {
          if (message.type().equals("error") || message.type().equals("warning")) {
            faults.add(message.text());
          }
        });
    tab.onPageError(error -> faults.add(error));
    tab.onRequest(
        request -> {
          boolean own = request.url().startsWith(server.address());
          if (!own && !request.url().startsWith("blob:") && !request.url().startsWith("data:")) {
            faults.add("asked for " + request.url());
          }
        });
    tab.navigate(server.address());
    tab.locator("#chart .bar[data-job]").first().waitFor();
    return tab;
  }

  Page page() {
    return page;
  }

  Desk desk() {
    return desk;
  }

  /** Where the board answers, with a slash at its end. */
  String address() {
    return server.address();
  }

  /** Console errors with this text are what the test is about. */
  void expectFault(String part) {
    expected.add(part);
  }

  /** The bar of a job in the chart. */
  Locator bar(String job) {
    return page.locator("#chart .bar[data-job='" + job + "']").first();
  }

  /**
   * Where an element stands, in pixels of the screen. The chart draws its rows again as it finds
   * their heights, and while it does, an element may be without a box: so this waits until two
   * looks in a row, two drawn frames apart, find the same box.
   */
  static BoundingBox box(Locator locator) {
    Page page = locator.page();
    BoundingBox[] last = {null};
    page.waitForCondition(
        () -> {
          BoundingBox before = last[0];
          page.evaluate(TWO_FRAMES);
          BoundingBox now = locator.boundingBox();
          last[0] = now;
          return before != null
              && now != null
              && before.x == now.x
              && before.y == now.y
              && before.width == now.width
              && before.height == now.height;
        });
    BoundingBox found = last[0];
    if (found == null) {
      throw new AssertionError("no box of " + locator);
    }
    return found;
  }

  /** Chooses a job by clicking on its bar, and opens its panel. */
  void choose(String job) {
    page.locator("#find").fill(job);
    page.locator("#find-list [role=option]").first().click();
    page.locator("#panel-job [data-job='" + job + "']").waitFor();
  }

  /** Opens one of the views by its link. */
  void view(String name) {
    page.locator("#views a[data-view='" + name + "']").click();
    page.locator("#view-" + name).waitFor();
  }

  /** Waits until the board stands at a revision and the page shows it. */
  void awaitRevision(long revision) {
    page.waitForCondition(() -> desk.now().revision() == revision);
    page.waitForFunction("revision => document.body.dataset.revision === revision", "" + revision);
  }

  @Override
  public void close() {
    context.close();
    server.close();
    comparisons.close();
    desk.close();
    faults.removeIf(fault -> expected.stream().anyMatch(fault::contains));
    if (!faults.isEmpty()) {
      throw new AssertionError("the page is not clean: " + faults);
    }
  }
}
