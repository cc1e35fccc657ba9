package rigmorrow.app.whatif.plans;

import java.util.List;
import rigmorrow.model.outcome.Cell;
import rigmorrow.solver.whatif.WhatIfListener;

/** Follows a comparison and may end it. Every cell it is told of is on the disk already. */
public interface ComparisonWatch {
  /**
   * Begins.
   *
   * @param known cells that were there already
   */
  void begun(List<Cell> known);

  /** Plans are made and forgotten for a second, so that the first that counts is not made cold. */
  void warmingUp();

  /**
   * A plan is finished. Called by one thread at a time.
   *
   * @param progress with it
   */
  void finished(Cell cell, WhatIfListener.Progress progress);

  /** Asked several times a second, by several threads; true ends the comparison. */
  boolean stopRequested();
}
