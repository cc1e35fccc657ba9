package rigmorrow.solver.whatif;

import rigmorrow.model.outcome.Cell;

/**
 * One cell that is to be planned.
 *
 * @param arm what is compared
 * @param past the batch
 * @param seed counted from 1
 */
public record CellTask(Arm arm, Past past, long seed) {

  /** Names the cell. */
  public Cell.Key key() {
    return new Cell.Key(arm.scenario(), arm.demandPercent(), past.name(), seed);
  }

  /** The seed that its search gets. */
  public long searchSeed() {
    return seed + arm.seedShift();
  }
}
