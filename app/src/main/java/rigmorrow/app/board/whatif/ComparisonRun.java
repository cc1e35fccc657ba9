package rigmorrow.app.board.whatif;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.board.whatif.ComparisonProgress.State;
import rigmorrow.app.files.FileFailures;
import rigmorrow.app.print.Paper;
import rigmorrow.app.report.Durations;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.app.whatif.page.AskedBy;
import rigmorrow.app.whatif.page.ReportDocument;
import rigmorrow.app.whatif.page.ReportPage;
import rigmorrow.app.whatif.plans.ComparisonWatch;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.outcome.Cell;
import rigmorrow.solver.whatif.WhatIfListener;

/** One comparison on a thread of its own, or what an earlier one has left. */
public final class ComparisonRun implements ComparisonWatch {
  private static final Logger LOG = LoggerFactory.getLogger(ComparisonRun.class);

  private final Comparison comparison;
  private final Runnable changed;
  private final List<Cell> cells = new ArrayList<>();
  private final @Nullable Thread thread;
  private volatile boolean stopped;
  private State state;
  private int reused;
  private String failure = "";
  private String doing = "Plans from before are looked for";
  private long leftSeconds;
  private volatile @Nullable Reported reported;

  /**
   * A report.
   *
   * @param cells it is made of
   */
  private record Reported(int cells, ReportDocument document) {}

  /**
   * One that will run.
   *
   * @param kept cells that are there already, as far as anybody knows; it looks again
   * @param file for the cells, in a folder that is there
   * @param changed told of every plan, and of the end
   */
  ComparisonRun(Comparison comparison, List<Cell> kept, Path file, Runnable changed) {
    this.comparison = comparison;
    this.changed = changed;
    this.cells.addAll(kept);
    this.reused = kept.size();
    this.state = State.RUNNING;
    this.leftSeconds = comparison.secondsLeft(kept).orElse(-1);
    this.thread = new Thread(() -> run(file), "comparison");
    thread.setDaemon(true);
  }

  /**
   * One that has ended and is only looked at: none of its plans is used again for others, and which
   * of them one comparison took from another is not kept.
   *
   * @param kept cells that are there
   */
  ComparisonRun(Comparison comparison, List<Cell> kept) {
    this.comparison = comparison;
    this.changed = () -> {};
    this.cells.addAll(kept);
    this.reused = 0;
    this.state = kept.size() == comparison.plans() ? State.DONE : State.STOPPED;
    this.thread = null;
  }

  /** Begins; nothing happens for one that has ended. */
  void start() {
    Thread mine = thread;
    if (mine != null) {
      mine.start();
    }
  }

  /** Ends it soon; what is finished is kept. */
  void stop() {
    stopped = true;
  }

  /** Waits until it has ended, or for so long. */
  void join(Duration limit) {
    Thread mine = thread;
    if (mine != null) {
      try {
        mine.join(limit.toMillis());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }

  synchronized boolean running() {
    return state == State.RUNNING;
  }

  /** What came of it so far. */
  public synchronized Compared compared() {
    return comparison.compared(List.copyOf(cells), reused);
  }

  /** The report of what there is so far; it says little before any scenario can be told of. */
  public ReportDocument report() {
    Compared compared = compared();
    int count = compared.cells().all().size();
    Reported known = reported;
    if (known == null || known.cells() != count) {
      // Not while the run is held: that would hold up its plans.
      known =
          new Reported(count, new ReportPage(compared, AskedBy.BOARD, Paper.A4).document(false));
      reported = known;
    }
    return known.document();
  }

  /** True when something can be told of a scenario already. */
  public boolean tells() {
    ReportDocument report = report();
    return !report.sections().isEmpty() || report.oneMore() != null;
  }

  /** How far it is. */
  public synchronized ComparisonProgress progress() {
    return new ComparisonProgress(
        state, sentence(), cells.size(), comparison.plans(), running() ? leftSeconds : 0);
  }

  private String sentence() {
    String made = cells.size() + " of " + comparison.plans() + " plans";
    return switch (state) {
      case NONE, RUNNING -> running(made);
      case DONE -> "All " + comparison.plans() + " plans are made.";
      case STOPPED -> made + " are made and kept. Started again, it goes on from there.";
      case FAILED -> // Without any cells nobody knows whether the file has some.
          "It could not go on"
              + (cells.isEmpty() ? "" : "; " + made + " are kept")
              + ". "
              + failure;
    };
  }

  private String running(String made) {
    if (stopped) {
      return "Stopping; " + made + " are kept.";
    }
    String left = leftSeconds < 0 ? "" : ", about " + Durations.left(leftSeconds) + " left";
    return cells.isEmpty() ? doing + left + "." : made + " are made" + left + ". " + doing + ".";
  }

  @Override
  public void begun(List<Cell> known) {
    synchronized (this) {
      cells.clear();
      cells.addAll(known);
      reused = known.size();
      leftSeconds = comparison.secondsLeft(known).orElse(-1);
      doing = known.isEmpty() ? "The first plans are being made" : "The others are being made";
    }
    changed.run();
  }

  @Override
  public void warmingUp() {
    synchronized (this) {
      doing = "The machine is being warmed up with plans that do not count";
    }
    changed.run();
  }

  @Override
  public void finished(Cell cell, WhatIfListener.Progress progress) {
    synchronized (this) {
      cells.add(cell);
      doing = "The last one: " + comparison.inWords(cell.key());
      leftSeconds = progress.left().toSeconds();
    }
    changed.run();
  }

  @Override
  public boolean stopRequested() {
    return stopped;
  }

  private void run(Path file) {
    try {
      Optional<Compared> compared = comparison.run(file, this);
      end(compared.map(Compared::whole).orElse(false) ? State.DONE : State.STOPPED, "");
    } catch (InputException e) {
      end(State.FAILED, e.problems().get(0).line() + ".");
    } catch (IOException e) {
      end(State.FAILED, FileFailures.sentence(e));
    } catch (RuntimeException | Error e) {
      LOG.error("The comparison failed", e);
      end(State.FAILED, sentence(e));
    }
    changed.run();
  }

  private static String sentence(Throwable failure) {
    Throwable cause = failure.getCause();
    if (cause instanceof UncheckedIOException unchecked && unchecked.getCause() != null) {
      return FileFailures.sentence(unchecked.getCause());
    }
    return "A fault of the program; its window says more.";
  }

  private synchronized void end(State how, String why) {
    state = how;
    failure = why;
  }
}
