package rigmorrow.app.whatif;

import java.util.List;
import java.util.OptionalLong;
import rigmorrow.app.report.Durations;
import rigmorrow.app.terminal.Session;
import rigmorrow.app.terminal.StatusLine;
import rigmorrow.app.whatif.plans.ComparisonWatch;
import rigmorrow.model.outcome.Cell;
import rigmorrow.solver.whatif.WhatIfListener;

/** Draws on a terminal how far a comparison is; Ctrl-C ends it. */
final class CellProgress implements ComparisonWatch {
  private final Session session;
  private final StatusLine line;
  private final Comparison comparison;

  CellProgress(Session session, StatusLine line, Comparison comparison) {
    this.session = session;
    this.line = line;
    this.comparison = comparison;
  }

  @Override
  public void begun(List<Cell> cells) {
    int known = cells.size();
    OptionalLong seconds = comparison.secondsLeft(cells);
    boolean timed = seconds.isPresent() && known < comparison.plans();
    String time = timed ? ", about " + Durations.left(seconds.getAsLong()) : "";
    session.note(comparison.inWords() + time + "; Ctrl-C keeps what is finished");
    if (known > 0) {
      session.note(known + " of " + comparison.plans() + " plans were there already");
      session.stop().searchBegins();
    }
  }

  @Override
  public void warmingUp() {
    line.draw("warming up");
  }

  @Override
  public void finished(Cell cell, WhatIfListener.Progress progress) {
    // Until there is something to keep, a signal may end the program at once.
    session.stop().searchBegins();
    line.draw(
        "%d of %d plans, %s left; last: %s"
            .formatted(
                progress.done(),
                progress.all(),
                Durations.left(progress.left().toSeconds()),
                comparison.inWords(cell.key())));
  }

  @Override
  public boolean stopRequested() {
    return session.stop().requested();
  }
}
