package rigmorrow.app.board.desk;

import java.time.Instant;
import java.util.List;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/**
 * A plan as the board kept it.
 *
 * @param revision of the board when it became the plan there is; at least 1. A plan that was put by
 *     carries the revision at which it was kept
 * @param batch floor and shot list, with every pin and every job held back
 * @param plan decoded from the orders that were kept
 * @param breaches hard rules that the plan breaks; empty for a workable plan
 * @param sentence what was done to come here
 * @param at when
 */
public record BoardState(
    long revision, Batch batch, Plan plan, List<Breach> breaches, String sentence, Instant at) {
  public BoardState {
    breaches = List.copyOf(breaches);
  }

  /**
   * A plan that is handed out, with what its papers say of it, both of one moment.
   *
   * @param stamp which plan it is
   */
  public record Handed(BoardState state, PlanStamp stamp) {}
}
