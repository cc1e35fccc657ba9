package rigmorrow.model.lifting;

/**
 * How well the hands hold the item (NIOSH 94-110, Tables 6 and 7). In doubt the worse one.
 *
 * <p>The classification in short: good are handles or cut-outs that suit a hand, or a loose item
 * the hand wraps round; fair are lesser handles, or a box the fingers can flex under at about 90
 * degrees; poor is all the rest, bulky, sagging or hard to hold.
 */
public enum Coupling {
  /** Handles, cut-outs or an item the hand wraps round comfortably. */
  GOOD(1.00, 1.00),
  /** Fingers flex under the item at about 90 degrees. */
  FAIR(0.95, 1.00),
  /** Bulky, sagging or hard to hold. */
  POOR(0.90, 0.90);

  /** Height of the hands, in cm, at which Tables 5 and 7 change columns. */
  static final double COLUMN_CHANGE_CM = 75;

  private final double belowColumnChange;
  private final double fromColumnChange;

  Coupling(double belowColumnChange, double fromColumnChange) {
    this.belowColumnChange = belowColumnChange;
    this.fromColumnChange = fromColumnChange;
  }

  /**
   * Returns the coupling multiplier CM of Table 7.
   *
   * @param verticalCm height of the hands above the floor
   */
  public double multiplier(double verticalCm) {
    return verticalCm < COLUMN_CHANGE_CM ? belowColumnChange : fromColumnChange;
  }
}
