package rigmorrow.app.board.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.touch.Hand;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.hand.Timed;

/**
 * What a touch would come to; decoded, nothing of it is kept.
 *
 * @param before the plan as it is
 * @param allowed false when the touch cannot be done at all
 * @param refusals why not, in sentences with figures; empty when it is allowed
 * @param sentence the touch in words
 * @param after the plan with the touch; null when it is not allowed
 * @param batchAfter floor and shot list with the touch; null when it is not allowed
 * @param breaches every hard rule that the plan with the touch breaks
 * @param costBefore of the plan as it is
 * @param costAfter of the plan with the touch; null when it is not allowed
 */
public record Tried(
    BoardState before,
    boolean allowed,
    List<String> refusals,
    String sentence,
    @Nullable Plan after,
    @Nullable Batch batchAfter,
    List<Breach> breaches,
    Cost costBefore,
    @Nullable Cost costAfter) {
  public Tried {
    refusals = List.copyOf(refusals);
    breaches = List.copyOf(breaches);
  }

  /** What a touch would come to at the plan there is. */
  static Tried of(History history, Touch touch) {
    Kept now = history.now();
    Hand.Touched touched = history.touched(touch);
    Batch batch = touched.batch();
    Orders orders = touched.orders();
    if (batch == null || orders == null) {
      return new Tried(
          now.state(),
          false,
          touched.refusals(),
          touched.sentence(),
          null,
          null,
          List.of(),
          now.cost(),
          null);
    }
    Timed timed = history.timed(batch, orders);
    return new Tried(
        now.state(),
        true,
        List.of(),
        touched.sentence(),
        timed.plan(),
        batch,
        History.breaches(batch, timed.plan()),
        now.cost(),
        timed.cost());
  }
}
