package rigmorrow.app.board.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.HandTimer;

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
  void answersEveryTouchOnADayOf150JobsInTime() throws IOException {
    try (OpenBoard board = OpenBoard.demo(150)) {
      Page page = board.page();
      List<PlannedJob> jobs = board.desk().now().plan().rigs().get(0).jobs();
      String left = board.desk().now().plan().rigs().get(0).jobs().get(3).job();
      board.desk().keep(1, new Touch.LeaveOut(left));
      List<String> ids = jobs.stream().map(PlannedJob::job).filter(id -> !id.equals(left)).toList();
      page.evaluate(TOUCHES, List.of(ids, left)); // Warms the server up.
      Map<?, ?> medians = (Map<?, ?>) page.evaluate(TOUCHES, List.of(ids, left));
      medians.forEach(
          (kind, millis) ->
              tell(
                  kind + " at 150 jobs on 6 rigs, from the browser, median of 15",
                  ((Number) millis).doubleValue()));
      assertThat(medians.keySet().stream().map(Object::toString))
          .contains("MOVE", "SWAP", "LEAVE_OUT", "TAKE_IN", "HOLD", "SET_PROMISE", "SET_WEIGHT");
      assertThat(medians)
          .allSatisfy(
              (kind, millis) ->
                  assertThat(((Number) millis).doubleValue())
                      .as(kind + " in milliseconds")
                      .isLessThan(TOUCH_MILLIS));
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
      async ([jobs, left]) => {
        const {revision, date} = await (await fetch('/api/board')).json();
        const touches = i => ({
          MOVE: {job: jobs[10], rig: 'R1', place: i % 10},
          SWAP: {job: jobs[i % 8], other: jobs[9 + i % 8]},
          LEAVE_OUT: {job: jobs[i % 12]},
          TAKE_IN: {job: left},
          HOLD: {job: jobs[i % 12], place: i % 2 === 0, startsAt: null},
          SET_PROMISE: {job: jobs[i % 12], dueAt: `${date}T1${i % 6}:17`, must: i % 2 === 0},
          SET_WEIGHT: {job: jobs[i % 12], weight: 20 + i},
        });
        const medians = {};
        for (const kind of Object.keys(touches(0))) {
          const times = [];
          for (let i = 0; i < 15; i++) {
            const body = JSON.stringify({revision, touch: {kind, ...touches(i)[kind]}});
            const start = performance.now();
            const answer = await fetch('/api/try',
              {method: 'POST', headers: {'Content-Type': 'application/json'}, body});
            const tried = await answer.json();
            times.push(performance.now() - start);
            if (!tried.allowed) {
              throw new Error(kind + ': ' + JSON.stringify(tried.refusals ?? tried));
            }
          }
          medians[kind] = times.sort((a, b) => a - b)[7];
        }
        return medians;
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

  /** Weeks of work on one board: more than anybody plans at once, for seeing how quick it is. */
  private static final class ManyJobs {
    /** Some of them nobody measured, so that 5,000 are left to be drawn. */
    private static final int JOBS = 5_150;

    private ManyJobs() {}

    static Batch batch() {
      return Demo.batch(JOBS, 1, OpenBoard.DAY);
    }

    /** Every job on the rig that has the fewest of those that take it, in the order of the list. */
    static Plan plan(Batch batch) {
      HandTimer timer = new HandTimer(batch.floor());
      List<List<String>> orders = new ArrayList<>();
      batch.floor().rigs().forEach(rig -> orders.add(new ArrayList<>()));
      for (ShotJob job : batch.shotList().jobs()) {
        JobFit fit = timer.fit(job);
        IntStream.range(0, fit.rigs().size())
            .filter(rig -> fit.rigs().get(rig).fits())
            .boxed()
            .min(Comparator.comparingInt(rig -> orders.get(rig).size()))
            .ifPresent(rig -> orders.get(rig).add(job.id()));
      }
      PlanOrigin origin = new PlanOrigin("dispatch", 0, 1, 0, "done");
      return timer.time(batch, new Orders(orders), origin).plan();
    }
  }
}
