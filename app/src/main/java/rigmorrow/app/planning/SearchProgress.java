package rigmorrow.app.planning;

import java.time.Duration;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.report.PlanText;
import rigmorrow.app.report.Times;
import rigmorrow.app.terminal.EarlyStop;
import rigmorrow.app.terminal.StatusLine;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.solver.SolveListener;

/** Draws how far a search is, and passes on the wish to stop it. */
final class SearchProgress implements SolveListener {
  private static final long REDRAW_NANOS = 200_000_000L;
  private static final double NANOS_PER_SECOND = 1e9;

  private final StatusLine line;
  private final EarlyStop stop;
  private final Times times;
  private final long startNanos = System.nanoTime();
  private volatile @Nullable PlanFigures best;
  private long drawnNanos = startNanos - REDRAW_NANOS;

  SearchProgress(StatusLine line, EarlyStop stop, Times times) {
    this.line = line;
    this.stop = stop;
    this.times = times;
  }

  @Override
  public void improved(Duration elapsed, PlanFigures figures) {
    best = figures;
    draw();
  }

  @Override
  public boolean stopRequested() {
    draw();
    return stop.requested();
  }

  private synchronized void draw() {
    long now = System.nanoTime();
    PlanFigures figures = best;
    if (figures == null || now - drawnNanos < REDRAW_NANOS) {
      return;
    }
    drawnNanos = now;
    String seconds = String.format(Locale.ROOT, "%5.1f s", (now - startNanos) / NANOS_PER_SECOND);
    line.draw(seconds + "  " + PlanText.inShort(figures, times));
  }
}
