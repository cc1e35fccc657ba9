package rigmorrow.app.board.desk;

import org.jspecify.annotations.Nullable;
import rigmorrow.app.runsheet.text.PlanStamp;

/**
 * What anybody may see of a board at any time, all of one moment.
 *
 * @param state the plan there is
 * @param stamp what its papers say of it
 * @param undo what would be undone; null when there is nothing
 * @param redo what would be done again; null when there is nothing
 * @param change grows with every change of the plan, of what no plan can be below, and of the
 *     versions; not with the progress of a search. It begins anew when the board is opened again
 */
public record Glance(
    BoardState state, PlanStamp stamp, @Nullable String undo, @Nullable String redo, long change) {}
