package rigmorrow.solver.whatif;

import rigmorrow.model.check.Require;
import rigmorrow.model.shot.Batch;

/**
 * A batch that was.
 *
 * @param name unique in a comparison
 * @param batch floor and shot list as they were
 */
public record Past(String name, Batch batch) {
  public Past {
    Require.text("past.name", name);
  }
}
