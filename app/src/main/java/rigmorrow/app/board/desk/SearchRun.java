package rigmorrow.app.board.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.board.desk.SearchProgress.Moment;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.PlanText;
import rigmorrow.app.report.Times;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/** One search on a thread of its own, from the plan there is. */
final class SearchRun implements SolveListener {
  private static final Logger LOG = LoggerFactory.getLogger(SearchRun.class);
  private static final long MILLIS_PER_SECOND = 1000;

  private final Kept from;
  private final SolverSettings settings;
  private final Times times;
  private final BiConsumer<SearchRun, Plan> ended;
  private final Runnable changed;
  private final long begin = System.nanoTime();
  private final List<Moment> course = new ArrayList<>();
  private final Thread thread;
  private volatile boolean stopped;
  private @Nullable SearchProgress outcome;

  /**
   * @param from the plan there is
   * @param ended takes the plan that was found, and says what became of it
   * @param changed told of every better plan, and of the end
   */
  SearchRun(
      Kept from, SolverSettings settings, BiConsumer<SearchRun, Plan> ended, Runnable changed) {
    this.from = from;
    this.settings = settings;
    this.times = Times.of(from.batch());
    this.ended = ended;
    this.changed = changed;
    this.thread = new Thread(this::run, "board search");
    thread.setDaemon(true);
  }

  void start() {
    thread.start();
  }

  /** Ends it soon with the best plan so far. */
  void stop() {
    stopped = true;
  }

  /** Waits until it has ended, or for so long. */
  void join(Duration limit) {
    try {
      thread.join(limit.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  synchronized boolean running() {
    return outcome == null;
  }

  synchronized SearchProgress progress() {
    return outcome == null ? progress(SearchProgress.State.RUNNING, running(stopped)) : outcome;
  }

  @Override
  public void improved(Duration elapsed, PlanFigures figures) {
    synchronized (this) {
      course.add(new Moment(elapsed.toMillis(), figures));
    }
    changed.run();
  }

  @Override
  public boolean stopRequested() {
    return stopped;
  }

  private void run() {
    try {
      Plan plan = FloorSolver.improve(from.batch(), from.orders(), settings, this);
      ended.accept(this, plan);
    } catch (RuntimeException | Error e) {
      LOG.error("The search failed", e);
      end(
          SearchProgress.State.FAILED,
          "The search failed; the plan stays as it is. It said: " + e.getMessage());
    }
    changed.run();
  }

  /** Notes that the plan was kept; from then on it does not run. */
  void kept(Plan plan) {
    end(
        SearchProgress.State.KEPT,
        "Found a better plan and kept it: "
            + inShort(plan.figures())
            + ". Before: "
            + inShort(from.state().plan().figures())
            + ".");
  }

  /** Notes that the plan there is stays; from then on it does not run. */
  void noBetter() {
    end(
        SearchProgress.State.NO_BETTER,
        "Found nothing better; the plan stays as it is: "
            + inShort(from.state().plan().figures())
            + ".");
  }

  private synchronized void end(SearchProgress.State state, String sentence) {
    outcome = progress(state, sentence);
  }

  private SearchProgress progress(SearchProgress.State state, String sentence) {
    Duration limit = settings.timeLimit();
    long elapsed = (System.nanoTime() - begin) / 1_000_000;
    return new SearchProgress(
        state, sentence, limit == null ? 0 : (int) limit.toSeconds(), elapsed, course);
  }

  private String running(boolean ending) {
    String what = ending ? "Ending; " : "Searching; ";
    if (course.isEmpty()) {
      return what + "no plan yet.";
    }
    Moment last = course.get(course.size() - 1);
    return what
        + "the best after "
        + Counted.of(last.millis() / MILLIS_PER_SECOND, "second")
        + ": "
        + inShort(last.figures())
        + ".";
  }

  /** Points, which is what the search goes by, and what they mean. */
  private String inShort(PlanFigures figures) {
    return (figures.hard() > 0 ? "breaks rules that must hold, " : "")
        + Counted.of(figures.softPoints(), "point")
        + ", "
        + PlanText.inShort(figures, times);
  }
}
