package rigmorrow.app.board.desk;

import java.time.Instant;

/**
 * A plan that was put by.
 *
 * @param number 1 for the first
 * @param note what the planner wrote; may be empty
 * @param at when it was put by
 * @param published true for the one that the crew works from
 */
public record Version(int number, String note, Instant at, boolean published) {}
