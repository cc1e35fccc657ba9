package rigmorrow.app.board.store;

import java.time.Instant;

/**
 * One change of the plan there is.
 *
 * @param revision of the board from then on, 1 for the first
 * @param state id of the state that became the plan there is
 * @param tip id of the state up to which undone steps can be done again; the state itself when
 *     there is nothing to do again
 * @param kind what was done
 * @param sentence of the state that was kept, undone or done again
 * @param at when
 */
public record Step(long revision, long state, long tip, Kind kind, String sentence, Instant at) {

  /** What was done. */
  public enum Kind {
    /** A new state was kept. */
    KEPT,
    /** The last one was taken back. */
    UNDONE,
    /** One that was taken back was done again. */
    REDONE
  }
}
