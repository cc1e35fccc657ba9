package rigmorrow.solver.whatif;

import java.time.Duration;
import rigmorrow.model.outcome.Cell;

/** Is told of every finished cell and may end the run. Called by one thread at a time. */
public interface WhatIfListener {
  /**
   * A cell is finished. What it throws ends the run.
   *
   * @param progress with it
   */
  void finished(Cell cell, Progress progress);

  /** Asked several times a second, by several threads; true ends the run. */
  boolean stopRequested();

  /**
   * How far a run is.
   *
   * @param done cells that are there, also from earlier runs
   * @param all cells there will be
   * @param left time that the rest will take, if it goes on as in this run
   */
  record Progress(int done, int all, Duration left) {}
}
