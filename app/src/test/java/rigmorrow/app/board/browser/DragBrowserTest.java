package rigmorrow.app.board.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** Dragging with the mouse: it snaps, it tells before the drop, and the drop is no decision yet. */
class DragBrowserTest {

  @Test
  void snapsToAPlaceAndShowsWhatItCostsBeforeTheDrop() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      RigPlan rig = board.desk().now().plan().rigs().get(0);
      String job = rig.jobs().get(4).job();
      BoundingBox target = OpenBoard.box(board.bar(rig.jobs().get(1).job()));
      pick(board, job, target.x + 2, target.y + target.height / 2);
      assertThat(page.locator("#proposal[data-answered='true']")).isVisible();
      assertThat(page.locator("#peek")).isVisible();
      assertThat(page.locator("#peek")).containsText(job);
      assertThat(board.desk().now().revision()).isEqualTo(1);
      page.mouse().up();
      assertThat(page.locator("#proposal[data-allowed='true']")).isVisible();
      assertThat(board.desk().now().revision()).isEqualTo(1);
      page.locator("#keep").click();
      board.awaitRevision(2);
      List<String> now =
          board.desk().now().plan().rigs().get(0).jobs().stream().map(PlannedJob::job).toList();
      assertThat(now.indexOf(job)).isLessThan(4);
      page.keyboard().press("Control+z");
      board.awaitRevision(3);
      assertThat(board.desk().now().plan().rigs().get(0).jobs().get(4).job()).isEqualTo(job);
    }
  }

  @Test
  void saysBeforeTheDropThatARigCannotTakeIt() throws IOException {
    try (OpenBoard board = OpenBoard.demo(40)) {
      Page page = board.page();
      Batch batch = board.desk().now().batch();
      FitCheck check = new FitCheck(batch.floor());
      for (RigPlan rig : board.desk().now().plan().rigs()) {
        for (PlannedJob planned : rig.jobs()) {
          ShotJob job =
              batch.shotList().jobs().stream()
                  .filter(one -> one.id().equals(planned.job()))
                  .findFirst()
                  .orElseThrow();
          for (Rig other : batch.floor().rigs()) {
            if (!check.of(job, other).fits()) {
              refuse(board, page, job.id(), other.id());
              return;
            }
          }
        }
      }
      throw new AssertionError("every rig takes every job");
    }
  }

  private static void refuse(OpenBoard board, Page page, String job, String rig) {
    BoundingBox row = OpenBoard.box(page.locator("#chart .row-name[data-row='rig:" + rig + "']"));
    BoundingBox bar = OpenBoard.box(board.bar(job));
    pick(board, job, bar.x + 20, row.y + row.height / 2);
    assertThat(page.locator("#proposal[data-allowed='false']")).isVisible();
    assertThat(page.locator("#peek")).containsText("cannot go there");
    page.mouse().up();
    assertThat(page.locator("#refusals li").first()).containsText(rig);
    assertThat(page.locator("#keep")).isDisabled();
    page.keyboard().press("Escape");
    assertThat(page.locator("#proposal")).isHidden();
    assertThat(board.desk().now().revision()).isEqualTo(1);
  }

  /** Presses on a bar and drags it in small steps, as a hand does. */
  private static void pick(OpenBoard board, String job, double x, double y) {
    BoundingBox from = OpenBoard.box(board.bar(job));
    Mouse mouse = board.page().mouse();
    mouse.move(from.x + 3, from.y + from.height / 2);
    mouse.down();
    mouse.move(from.x, from.y + from.height / 2, new Mouse.MoveOptions().setSteps(4));
    mouse.move(x, y, new Mouse.MoveOptions().setSteps(12));
  }
}
