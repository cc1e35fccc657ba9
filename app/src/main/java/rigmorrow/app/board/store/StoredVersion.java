package rigmorrow.app.board.store;

import java.time.Instant;

/**
 * A state that was put by.
 *
 * @param number 1 for the first
 * @param state id of the state
 * @param note what the planner wrote; may be empty
 * @param at when
 */
public record StoredVersion(int number, long state, String note, Instant at) {}
