package rigmorrow.data.cells;

import rigmorrow.model.check.Require;
import rigmorrow.model.outcome.Cell;

/**
 * A cell as it is kept.
 *
 * @param plan what its plan rests on, as {@link PlanDigest} names it; cells with the same name in
 *     one file are the same
 * @param cell under the key that it was first planned for
 */
public record KeptCell(String plan, Cell cell) {
  public KeptCell {
    Require.text("cell.plan", plan);
  }
}
