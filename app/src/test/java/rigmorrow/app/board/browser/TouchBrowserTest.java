package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotJob;

/** The forms of the job panel: each shows what it costs, keeps it when asked, and can be undone. */
class TouchBrowserTest {
  private static final int SMALL_TABLE = 0;

  private static OpenBoard board;
  private Page page;
  private long before;
  private String job;

  @BeforeAll
  static void open() throws IOException {
    board = OpenBoard.demo(40);
  }

  @AfterAll
  static void close() {
    if (board != null) {
      board.close();
    }
  }

  @BeforeEach
  void chooseTheThirdJob() {
    page = board.page();
    before = board.desk().now().revision();
    job = jobs().get(2);
    board.choose(job);
    page.locator("#job details").evaluateAll("all => all.forEach(one => { one.open = true; })");
  }

  @Test
  void showsWhatAMoveCostsBeforeItIsKept() {
    page.locator("#move-place").fill("1");
    page.locator("#move-try").click();
    assertThat(page.locator("#proposal[data-allowed='true']")).isVisible();
    assertThat(page.locator("#before-after tbody tr")).not().hasCount(0);
    assertThat(page.locator("#chart .ghost-bar").first()).isVisible();
    assertThat(board.desk().now().revision()).isEqualTo(before);
    keep();
    assertThat(jobs().get(0)).isEqualTo(job);
    undo();
    assertThat(jobs().get(2)).isEqualTo(job);
    redo();
    assertThat(jobs().get(0)).isEqualTo(job);
  }

  @Test
  void dropsAProposalWithoutATrace() {
    page.locator("#move-place").fill("2");
    page.locator("#move-try").click();
    assertThat(page.locator("#proposal[data-answered='true']")).isVisible();
    page.locator("#dont").click();
    assertThat(page.locator("#proposal")).isHidden();
    assertThat(page.locator("#chart .ghost-bar")).hasCount(0);
    assertThat(board.desk().now().revision()).isEqualTo(before);
  }

  @Test
  void saysWhyARigCannotTakeIt() {
    String misfit =
        page.locator("#move-rig option")
            .filter(new com.microsoft.playwright.Locator.FilterOptions().setHasText("does not fit"))
            .first()
            .getAttribute("value");
    page.locator("#move-rig").selectOption(misfit);
    page.locator("#move-place").fill("1");
    page.locator("#move-try").click();
    assertThat(page.locator("#proposal[data-allowed='false']")).isVisible();
    assertThat(page.locator("#refusals li").first().textContent())
        .contains(misfit)
        .matches(".*\\d.*");
    assertThat(page.locator("#keep")).isDisabled();
    page.locator("#dont").click();
  }

  @Test
  void swapsTwoJobs() {
    String other = jobs().get(4);
    page.locator("#swap-with").fill(other);
    page.locator("#swap-try").click();
    keep();
    assertThat(jobs().get(4)).isEqualTo(job);
    assertThat(jobs().get(2)).isEqualTo(other);
    undo();
  }

  @Test
  void leavesOutAndTakesIn() {
    page.locator("#leave-out").click();
    keep();
    assertThat(board.desk().now().plan().job(job)).isEmpty();
    page.locator("#tab-out").click();
    assertThat(page.locator("#out-list [data-job='" + job + "']")).isVisible();
    page.locator("#tab-job").click();
    page.locator("#take-in").click();
    keep();
    assertThat(board.desk().now().plan().job(job)).isPresent();
    undo();
    undo();
  }

  @Test
  void pinsAndShowsThePinWhereverTheJobIs() {
    page.locator("#pin-rig").click();
    keep();
    assertThat(pin().place()).isNull();
    assertThat(page.locator("#chart .bar.pinned[data-job='" + job + "']").first()).isVisible();
    assertThat(page.locator("#job .chip.pinned").first()).isVisible();
    page.locator("#pin-place").click();
    keep();
    assertThat(pin().place()).isEqualTo(2);
    page.locator("#tab-pins").click();
    page.locator("#pin-list [data-job='" + job + "'] button.unpin").click();
    keep();
    assertThat(board.desk().now().batch().shotList().pins()).isEmpty();
    undo();
    undo();
    undo();
  }

  @Test
  void pinsToATime() {
    page.locator("#pin-at").fill("2026-03-18T13:30");
    page.locator("#pin-time").click();
    keep();
    assertThat(pin().startsAt()).hasToString("2026-03-18T13:30");
    PlannedJob planned = board.desk().now().plan().job(job).orElseThrow();
    assertThat(planned.whole().start()).isEqualTo((13 * 60 + 30) * 60);
    undo();
  }

  @Test
  void refusesToMoveAPinnedJob() {
    page.locator("#pin-rig").click();
    keep();
    String rig = page.locator("#move-rig option:not([value='R1'])").first().getAttribute("value");
    page.locator("#move-rig").selectOption(rig);
    page.locator("#move-place").fill("1");
    page.locator("#move-try").click();
    assertThat(page.locator("#refusals li").first()).containsText("pin");
    page.locator("#dont").click();
    undo();
  }

  @Test
  void changesPromiseAndWeight() {
    page.locator("#promise-at").fill("2026-03-18T08:00");
    page.locator("#promise-must").check();
    page.locator("#promise-try").click();
    assertThat(page.locator("#broken li").first()).containsText(job);
    keep();
    assertThat(shotJob().must()).isTrue();
    assertThat(page.locator("#breaches")).isVisible();
    undo();
    assertThat(page.locator("#breaches")).isHidden();
    page.locator("#weight-is").fill("7");
    page.locator("#weight-try").click();
    keep();
    assertThat(shotJob().weight()).isEqualTo(7);
    undo();
  }

  private static List<String> jobs() {
    return board.desk().now().plan().rigs().get(SMALL_TABLE).jobs().stream()
        .map(PlannedJob::job)
        .toList();
  }

  private Pin pin() {
    return board.desk().now().batch().shotList().pins().stream()
        .filter(pin -> pin.job().equals(job))
        .findFirst()
        .orElseThrow();
  }

  private ShotJob shotJob() {
    return board.desk().now().batch().shotList().jobs().stream()
        .filter(one -> one.id().equals(job))
        .findFirst()
        .orElseThrow();
  }

  private void keep() {
    long now = board.desk().now().revision();
    page.locator("#keep").click();
    board.awaitRevision(now + 1);
  }

  private void undo() {
    long now = board.desk().now().revision();
    page.locator("#undo").click();
    board.awaitRevision(now + 1);
  }

  private void redo() {
    long now = board.desk().now().revision();
    page.locator("#redo").click();
    board.awaitRevision(now + 1);
  }
}
