package rigmorrow.app.planning;

/** Something else has the cores; says what, and what the user can do about it. */
public final class CoresTakenException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param sentence for the user
   */
  public CoresTakenException(String sentence) {
    super(sentence);
  }
}
