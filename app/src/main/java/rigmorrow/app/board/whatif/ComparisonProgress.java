package rigmorrow.app.board.whatif;

/**
 * How far a comparison is, or how the last one ended.
 *
 * @param state how it stands
 * @param sentence the same in words with figures
 * @param done plans that are there
 * @param all plans there will be; 0 before any comparison
 * @param leftSeconds time that the rest takes; below 0 where nobody knows, 0 where nothing is left
 *     to do or nothing runs
 */
public record ComparisonProgress(
    State state, String sentence, int done, int all, long leftSeconds) {
  /** Before any comparison. */
  static final ComparisonProgress NONE =
      new ComparisonProgress(State.NONE, "Nothing has been compared yet.", 0, 0, 0);

  /** How a comparison stands. */
  public enum State {
    /** There was none of these scenarios. */
    NONE,
    /** It goes on. */
    RUNNING,
    /** It was stopped or interrupted; what is finished is kept. */
    STOPPED,
    /** Every plan is there. */
    DONE,
    /** It ended by a fault; what is finished is kept. */
    FAILED
  }
}
