package rigmorrow.app.board.desk;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

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

  /**
   * The bounds of this plan, where they hold for a next one too: the same jobs, at most more pins,
   * and no more left out. Null where they do not, or nobody knows them.
   */
  @Nullable PlanBounds boundsFor(Batch batch, Plan plan) {
    PlanBounds bounds = plan().bounds();
    ShotList before = batch().shotList();
    ShotList after = batch.shotList();
    boolean holds =
        bounds != null
            && plan.figures().hard() == 0
            && plan.figures().leftOutPoints() <= plan().figures().leftOutPoints()
            && batch.floor().equals(batch().floor())
            && after.date().equals(before.date())
            && after.days() == before.days()
            && after.jobs().equals(before.jobs())
            && Set.copyOf(after.heldBack()).equals(Set.copyOf(before.heldBack()))
            && Set.copyOf(after.pins()).containsAll(before.pins());
    return holds ? bounds : null;
  }
}
