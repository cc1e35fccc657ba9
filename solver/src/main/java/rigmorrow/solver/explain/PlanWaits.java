package rigmorrow.solver.explain;

import java.util.List;
import java.util.Map;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.hand.Trial;

/** For what rigs wait in a plan, as far as its own times show it. */
public final class PlanWaits {
  private PlanWaits() {}

  /**
   * The waits of every job that is planned, by its id, each list in order of time. None at all
   * where the plan's orders come to other times when they are decoded: then nobody knows the
   * reasons.
   *
   * @param plan of the batch; empty for one of another floor, shot list or day
   */
  public static Map<String, List<Wait>> of(Batch batch, Plan plan) {
    Orders orders;
    try {
      orders = Orders.of(batch, plan);
    } catch (IllegalArgumentException e) {
      return Map.of();
    }
    Trial trial = new Trial(batch, new KnownFacts(batch.floor(), orders));
    if (!orders.byRig().stream().flatMap(List::stream).allMatch(trial::knows)) {
      return Map.of();
    }
    return trial.decode(orders).differing(plan).isEmpty() ? trial.waits(orders) : Map.of();
  }
}
