package rigmorrow.app.board.desk;

/** A search runs, and its plan may become the one there is: until it ends nothing is changed. */
public final class SearchingException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Says what the planner can do about it. */
  public SearchingException() {
    super("A search runs; stop it, or wait until it ends.");
  }
}
