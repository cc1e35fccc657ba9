package rigmorrow.app.board.desk;

import rigmorrow.app.report.PlanStamp;

/**
 * A plan that is handed out, with what its papers say of it, both of one moment.
 *
 * @param state the plan
 * @param stamp which one it is
 */
public record Handed(BoardState state, PlanStamp stamp) {}
