package rigmorrow.app.board.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * How quick the board is, measured in the browser. The machine may be busy with other things, so
 * the best of several tries counts; every try is printed.
 */
class SpeedBrowserTest {
  private static final int TOUCH_MILLIS = 100;
  private static final int DRAW_MILLIS = 1_000;
  private static final int TRIES = 8;

  /** Frames of 16.7 ms; with three of them lost a movement looks jerky. */
  private static final double SMOOTH_MILLIS = 67;

  @Test
  void answersATouchOnADayOf150JobsInTime() throws IOException {
    try (OpenBoard board = OpenBoard.demo(150)) {
      Page page = board.page();
      String job = board.desk().now().plan().rigs().get(0).jobs().get(10).job();
      page.evaluate(TOUCHES, job); // Warms the server up.
      double median = ((Number) page.evaluate(TOUCHES, job)).doubleValue();
      tell("touch at 150 jobs on 6 rigs, median of 30, in the browser", median);
      assertThat(median).isLessThan(TOUCH_MILLIS);
    }
  }

  @Test
  void staysSmoothAt400JobsOnTenRigs() throws IOException {
    try (OpenBoard board = OpenBoard.demo(400)) {
      Page page = board.page();
      assertThat(board.desk().now().plan().rigs()).hasSize(10);
      double best = Double.MAX_VALUE;
      for (int i = 0; i < TRIES && best > SMOOTH_MILLIS; i++) {
        double millis = ((Number) page.evaluate(PANNING)).doubleValue();
        tell("95 of 100 frames while panning 400 jobs on 10 rigs, at most", millis);
        best = Math.min(best, millis);
      }
      assertThat(best).isLessThanOrEqualTo(SMOOTH_MILLIS);
    }
  }

  @Test
  void drawsFiveThousandJobsInTime() throws IOException {
    try (OpenBoard board = OpenBoard.planned(ManyJobs.batch(), ManyJobs::plan)) {
      Page page = board.page();
      double best = Double.MAX_VALUE;
      for (int i = 0; i < TRIES && best > DRAW_MILLIS; i++) {
        page.reload();
        page.locator("#chart .bar[data-job]").first().waitFor();
        page.waitForFunction("() => performance.getEntriesByName('board-drawn').length > 0");
        double millis =
            ((Number)
                    page.evaluate("() => performance.getEntriesByName('board-drawn')[0].duration"))
                .doubleValue();
        tell("drawing 5,000 jobs", millis);
        best = Math.min(best, millis);
      }
      assertThat(board.desk().now().plan().figures().planned()).isGreaterThanOrEqualTo(5_000);
      assertThat(best).isLessThan(DRAW_MILLIS);
    }
  }

  private static void tell(String what, double millis) {
    System.out.printf(Locale.ROOT, "%s: %.0f ms%n", what, millis);
  }

  private static final String TOUCHES =
      """
      async job => {
        const board = await (await fetch('/api/board')).json();
        const times = [];
        for (let i = 0; i < 30; i++) {
          const body = JSON.stringify({revision: board.revision,
            touch: {kind: 'MOVE', job, rig: 'R1', place: i % 10}});
          const start = performance.now();
          const answer = await fetch('/api/try',
            {method: 'POST', headers: {'Content-Type': 'application/json'}, body});
          await answer.json();
          times.push(performance.now() - start);
        }
        return times.sort((a, b) => a - b)[15];
      }
      """;

  private static final String PANNING =
      """
      async () => {
        document.getElementById('zoom-in').click();
        const chart = document.getElementById('chart');
        chart.focus();
        const frames = [];
        let last = 0;
        const end = performance.now() + 2000;
        await new Promise(done => {
          const step = now => {
            if (last) frames.push(now - last);
            last = now;
            const key = frames.length % 60 < 30 ? 'ArrowRight' : 'ArrowLeft';
            (document.activeElement ?? chart).dispatchEvent(
              new KeyboardEvent('keydown', {key, shiftKey: true, bubbles: true, cancelable: true}));
            if (now < end) requestAnimationFrame(step); else done();
          };
          requestAnimationFrame(step);
        });
        frames.sort((a, b) => a - b);
        return frames[Math.floor(frames.length * 0.95)];
      }
      """;
}
