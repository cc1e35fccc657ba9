package rigmorrow.app.board.desk;

import rigmorrow.model.explain.Cost;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.shot.Batch;

/**
 * A state, decoded, with what it costs.
 *
 * @param id of the state in the store
 * @param state what others see of it
 * @param orders that its plan was decoded from
 * @param cost of its plan
 */
public record Kept(long id, BoardState state, Orders orders, Cost cost) {
  Batch batch() {
    return state.batch();
  }

  Plan plan() {
    return state.plan();
  }

  /** The same at another revision. */
  Kept at(long revision) {
    return with(revision, state.plan());
  }

  /** The same with what no plan can be below. */
  Kept with(PlanBounds bounds) {
    return with(state.revision(), state.plan().withBounds(bounds));
  }

  private Kept with(long revision, Plan plan) {
    BoardState other =
        new BoardState(
            revision, state.batch(), plan, state.breaches(), state.sentence(), state.at());
    return new Kept(id, other, orders, cost);
  }
}
