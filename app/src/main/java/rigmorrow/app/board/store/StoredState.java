package rigmorrow.app.board.store;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;

/**
 * What is kept of a plan: all that the decoder needs to time it again, and no time.
 *
 * @param id of the state, 1 for the first
 * @param parent id of the state that it was made from; null for the first
 * @param revision of the board at which it was made
 * @param content what it consists of
 */
public record StoredState(long id, @Nullable Long parent, long revision, Content content) {

  /**
   * What a state consists of.
   *
   * @param batch floor and shot list
   * @param orders which job is where
   * @param origin how the orders came about
   * @param bounds what no plan of the batch can be below; null where nobody worked it out
   * @param touch what was done, as JSON; null when it was no touch
   * @param sentence what was done, in words
   * @param at when
   */
  public record Content(
      Batch batch,
      Orders orders,
      PlanOrigin origin,
      @Nullable PlanBounds bounds,
      @Nullable String touch,
      String sentence,
      Instant at) {}
}
