package rigmorrow.app.board.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.Batch;

/**
 * What a touch makes of a shot list and of the orders, before anything is decoded.
 *
 * @param sentence the touch in words, without a full stop
 * @param refusals why it cannot be done; empty when it can
 * @param batch floor and shot list with the touch; null when it cannot be done
 * @param orders with the touch; null when it cannot be done
 */
record Touched(
    String sentence, List<String> refusals, @Nullable Batch batch, @Nullable Orders orders) {
  static Touched refused(String sentence, List<String> refusals) {
    return new Touched(sentence, refusals, null, null);
  }
}
