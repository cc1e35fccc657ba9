package rigmorrow.app.board.whatif;

/** A wish is about scenarios that are no longer the ones there are. */
public final class OtherScenariosException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Says what has happened. */
  public OtherScenariosException() {
    super("Other scenarios were chosen meanwhile, in another tab; look at them first.");
  }
}
