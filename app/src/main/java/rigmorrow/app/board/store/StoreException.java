package rigmorrow.app.board.store;

/** Something could not be written to a board's file, or read from it. Nothing was kept. */
public final class StoreException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param message a sentence that names the file
   * @param cause what the file system or the data base said
   */
  public StoreException(String message, Throwable cause) {
    super(message, cause);
  }
}
