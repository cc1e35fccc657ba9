package rigmorrow.app.board.desk;

import rigmorrow.model.explain.Cost;
import rigmorrow.model.plan.Orders;

/**
 * A state with what the next touch starts from.
 *
 * @param state what others see of it
 * @param orders that the plan was decoded from
 * @param cost of the plan
 */
record Kept(BoardState state, Orders orders, Cost cost) {
  /** The same state at another revision. */
  Kept at(long revision) {
    BoardState other =
        new BoardState(
            revision, state.batch(), state.plan(), state.breaches(), state.sentence(), state.at());
    return new Kept(other, orders, cost);
  }
}
