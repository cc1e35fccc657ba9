package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rigmorrow.app.OddItems;
import rigmorrow.app.report.Durations;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;

/** What can be seen of a plan, and how one gets around in it. */
class SeeBrowserTest {
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm");

  private static final String HOURS = "#chart .vis-text.vis-minor:not(.vis-measure)";

  /** The last Sunday of March: from 02:00 to 03:00 there is no time at all. */
  private static final LocalDate CLOCK_CHANGE = LocalDate.of(2026, 3, 29);

  @Test
  void zoomsByWheelByButtonsAndByKeysAndFitsTheDay() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      Locator bar = board.bar(board.desk().now().plan().rigs().get(0).jobs().get(3).job());
      double day = width(bar);
      page.locator("#zoom-in").click();
      double closer = awaitWider(page, bar, day);
      page.locator("#chart").focus();
      page.keyboard().press("+");
      closer = awaitWider(page, bar, closer);
      bar.hover();
      page.keyboard().down("Control");
      page.mouse().wheel(0, -300);
      page.keyboard().up("Control");
      awaitWider(page, bar, closer);
      page.keyboard().press("0");
      page.waitForCondition(() -> Math.abs(width(bar) - day) < 2);
      page.locator("#zoom-in").click();
      awaitWider(page, bar, day);
      page.locator("#fit-day").click();
      page.waitForCondition(() -> Math.abs(width(bar) - day) < 2);
      page.keyboard().press("-");
      page.waitForCondition(() -> width(bar) < day);
    }
  }

  @Test
  void showsEveryPlannedJobByRigAndByOperator() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      Plan plan = board.desk().now().plan();
      assertThat(page.locator("#chart .bar[data-job][data-rig]"))
          .hasCount(plan.figures().planned());
      page.locator("#by-crew").click();
      String person = plan.rigs().get(0).jobs().get(0).load().operators().get(0);
      String name = board.desk().now().batch().floor().operator(person).orElseThrow().name();
      assertThat(page.locator("#chart .row-name", hasText(name)).first()).isVisible();
      page.locator("#by-rig").click();
      int rows = page.locator("#chart .row-name").count();
      page.locator("#show-kit").click();
      page.waitForCondition(() -> page.locator("#chart .row-name").count() > rows);
    }
  }

  @Test
  void tellsTheFloorsTimeWhereverTheBrowserIsAndOnTheDayOfTheClockChange() throws IOException {
    try (OpenBoard board = OpenBoard.of(Demo.batch(30, 1, CLOCK_CHANGE))) {
      Page page = board.page();
      Plan plan = board.desk().now().plan();
      PlanClock clock = new PlanClock(plan.zone(), plan.date(), plan.days());
      assertThat(page.locator("#zone")).containsText("Europe/Copenhagen");
      assertThat(page.locator("#zone")).containsText("+02:00");
      PlannedJob job = plan.rigs().get(0).jobs().get(0);
      String start = clock.at(job.whole().start()).format(HOUR);
      assertThat(job.whole().start())
          .as("one hour of the day is missing")
          .isLessThan(clock.at(job.whole().start()).toLocalTime().toSecondOfDay());
      board.view("jobs");
      assertThat(page.locator("#jobs-table tr[data-job='" + job.job() + "']")).containsText(start);
      board.view("plan");
      List<String> hours = page.locator(HOURS).allTextContents();
      double first = OpenBoard.box(page.locator(HOURS).first()).x;
      assertThat(hours).isNotEmpty().allMatch(text -> text.matches("\\d\\d:\\d\\d"));
      assertThat(first).isPositive();
      // The bar stands under the hour that the table tells.
      String hour = start.substring(0, 2) + ":00";
      Locator mark = page.locator(HOURS, hasText(hour)).first();
      Locator next =
          page.locator(
                  HOURS, hasText("%02d:00".formatted(Integer.parseInt(start.substring(0, 2)) + 1)))
              .first();
      double x = OpenBoard.box(board.bar(job.job())).x;
      assertThat(x).isGreaterThanOrEqualTo(OpenBoard.box(mark).x - 8);
      assertThat(x).isLessThan(OpenBoard.box(next).x + 8);
    }
  }

  @Test
  void listsLateJobsFirstInATableThatSaysTheSame() throws IOException {
    try (OpenBoard board = OpenBoard.demo(150)) {
      Page page = board.page();
      Plan plan = board.desk().now().plan();
      assertThat(plan.figures().lateJobs()).as("a dispatch plan has late jobs").isPositive();
      board.view("jobs");
      List<String> shown =
          page.locator("#jobs-table tbody tr").all().stream()
              .map(row -> row.getAttribute("data-job"))
              .toList();
      List<String> late =
          plan.rigs().stream()
              .flatMap(rig -> rig.jobs().stream())
              .filter(job -> job.lateSeconds() > 0)
              .map(PlannedJob::job)
              .toList();
      assertThat(shown.subList(0, late.size())).containsExactlyInAnyOrderElementsOf(late);
      assertThat(shown).hasSize(plan.figures().planned() + plan.figures().leftOut());
    }
  }

  @Test
  void tellsStatesByWordsAndPatternsAndNotByColourAlone() throws IOException {
    try (OpenBoard board = OpenBoard.demo(150)) {
      Page page = board.page();
      PlannedJob late =
          board.desk().now().plan().rigs().stream()
              .flatMap(rig -> rig.jobs().stream())
              .filter(job -> job.lateSeconds() > 0)
              .findFirst()
              .orElseThrow();
      board.choose(late.job());
      assertThat(page.locator("#job .chip.late")).containsText("late");
      page.locator("#chart").focus();
      assertThat(page.locator("#say")).containsText("late");
      for (String part : List.of("changeover", "warm-up", "load", "capture", "unload", "waiting")) {
        Locator sample = page.locator("#legend ." + part).first();
        assertThat(sample).isVisible();
        String picture =
            (String) sample.evaluate("e => getComputedStyle(e).backgroundImage + e.textContent");
        assertThat(picture).as(part).isNotEqualTo("none");
      }
    }
  }

  @Test
  void findsAJobByIdByArticleAndByName() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      var job = board.desk().now().batch().shotList().jobs().get(7);
      for (String text : List.of(job.id(), job.article(), job.name())) {
        page.locator("#find").fill(text);
        assertThat(page.locator("#find-list [role=option]", hasText(job.id())).first()).isVisible();
        page.keyboard().press("Escape");
      }
    }
  }

  private static Page.LocatorOptions hasText(String text) {
    return new Page.LocatorOptions().setHasText(text);
  }

  private static double width(Locator bar) {
    return OpenBoard.box(bar).width;
  }

  private static double awaitWider(Page page, Locator bar, double before) {
    page.waitForCondition(() -> width(bar) > before * 1.1);
    return width(bar);
  }

  @Test
  void showsInTheJobPanelWhatStandsOffItsBaseAndWhatIsMeasuredByHand() throws IOException {
    try (OpenBoard board = OpenBoard.of(OddItems.batch(OpenBoard.DAY))) {
      Page page = board.page();
      board.choose(OddItems.OFF_BASE);
      assertThat(page.locator("#job .facts"))
          .containsText("Centre of mass 140 mm off the plate's centre.");
      assertThat(page.locator("#job .note-late")).containsText("May tip");
      board.choose(OddItems.BY_HAND);
      assertThat(page.locator("#job .facts")).containsText("Measure by hand: height.");
    }
  }

  /** The page works out no time, but it does write lengths of time: as the server does. */
  @Test
  void writesLengthsOfTimeAsTheServerDoes() throws IOException {
    List<Integer> seconds =
        List.of(0, 1, 59, 60, 61, 728, 3599, 3600, 3601, 29_407, 86_399, 86_400, 86_401, 183_600);
    try (OpenBoard board = OpenBoard.demo(12)) {
      String words =
          "async ([seconds, name]) => (await import('/page/js/base/words.js'))[name](seconds)";
      for (int one : seconds) {
        assertThat(board.page().evaluate(words, List.of(one, "length")))
            .isEqualTo(Durations.of(one));
        assertThat(board.page().evaluate(words, List.of(one, "lateness")))
            .isEqualTo(Durations.late(one));
      }
    }
  }

  @Test
  void isAlarmedByLateJobsOnlyWhereThereAreSome() throws IOException {
    Batch batch = Demo.batch(12, 1, OpenBoard.DAY);
    String promised =
        batch.shotList().jobs().stream()
            .filter(job -> job.promise() != null)
            .map(ShotJob::id)
            .findFirst()
            .orElseThrow();
    Batch without = new Batch(batch.floor(), batch.shotList().withHeldBack(List.of(promised)));
    try (OpenBoard board = OpenBoard.of(without)) {
      assertThat(board.desk().now().plan().figures().lateJobs()).isZero();
      Locator late = board.page().locator("[data-figure='promises']");
      assertThat(late).containsText("0 jobs");
      assertThat(late).not().hasClass(Pattern.compile(".*\\bbad\\b.*"));
      assertThat(board.page().locator("[data-figure='leftout']"))
          .containsText("1 of them promised");
    }
  }
}
