package rigmorrow.app.whatif;

import java.util.List;
import rigmorrow.app.terminal.EarlyStop;
import rigmorrow.app.terminal.StatusLine;
import rigmorrow.data.cells.CellFile;
import rigmorrow.model.outcome.Cell;
import rigmorrow.solver.whatif.WhatIfListener;

/** Keeps every finished cell and draws how far the run is. */
final class CellProgress implements WhatIfListener {
  private static final long SECONDS_PER_MINUTE = 60;
  private static final long SECONDS_PER_HOUR = 3600;

  private final StatusLine line;
  private final EarlyStop stop;
  private final CellFile file;
  private final List<Cell> all;

  /**
   * @param all takes every cell
   */
  CellProgress(StatusLine line, EarlyStop stop, CellFile file, List<Cell> all) {
    this.line = line;
    this.stop = stop;
    this.file = file;
    this.all = all;
  }

  @Override
  public void finished(Cell cell, Progress progress) {
    file.append(cell);
    all.add(cell);
    // Until there is something to keep, a signal may end the program at once.
    stop.searchBegins();
    line.draw(
        "%d of %d plans, %s left; last: %s on %s"
            .formatted(
                progress.done(),
                progress.all(),
                time(progress.left().toSeconds()),
                cell.key().scenario(),
                cell.key().batch()));
  }

  @Override
  public boolean stopRequested() {
    return stop.requested();
  }

  /** A length of time to be read at a glance: "40 s", "12 min", "3 h 5 min". */
  static String time(long seconds) {
    if (seconds < 2 * SECONDS_PER_MINUTE) {
      return seconds + " s";
    }
    long minutes = (seconds + SECONDS_PER_MINUTE / 2) / SECONDS_PER_MINUTE;
    if (seconds < SECONDS_PER_HOUR) {
      return minutes + " min";
    }
    long rest = minutes % SECONDS_PER_MINUTE;
    return minutes / SECONDS_PER_MINUTE + " h" + (rest == 0 ? "" : " " + rest + " min");
  }
}
