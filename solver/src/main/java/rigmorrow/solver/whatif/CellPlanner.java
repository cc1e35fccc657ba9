package rigmorrow.solver.whatif;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/** Plans one cell on one core, with the effort that every cell gets. */
@FunctionalInterface
public interface CellPlanner {
  /**
   * A plan.
   *
   * @param seed of the search
   * @param stop asked several times a second; true ends it early
   * @return nothing where it was ended early, since that plan had less effort than others
   */
  Optional<Plan> plan(Batch batch, long seed, BooleanSupplier stop);
}
