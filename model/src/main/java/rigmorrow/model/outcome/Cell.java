package rigmorrow.model.outcome;

import rigmorrow.model.check.Require;

/**
 * What came of one batch, one scenario, one demand and one seed.
 *
 * @param key which
 * @param outcome figures
 * @param millis that planning took, 0 or more
 */
public record Cell(Key key, Outcome outcome, long millis) {

  /**
   * Names a cell.
   *
   * @param scenario name
   * @param demandPercent jobs more than there were in the batch, besides what the scenario changes
   * @param batch name
   * @param seed of the search, counted from 1
   */
  public record Key(String scenario, double demandPercent, String batch, long seed) {
    public Key {
      Require.text("cell.scenario", scenario);
      Require.text("cell.batch", batch);
      // Minus zero would not be equal to zero.
      demandPercent = demandPercent == 0 ? 0 : demandPercent;
    }
  }

  /** The same plan under another name. */
  public Cell as(Key other) {
    return new Cell(other, outcome, millis);
  }
}
