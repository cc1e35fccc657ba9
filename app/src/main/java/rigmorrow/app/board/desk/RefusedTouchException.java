package rigmorrow.app.board.desk;

import java.util.List;

/** A touch that cannot be done. Nothing was kept. */
public final class RefusedTouchException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<String> refusals;

  /**
   * @param refusals why not, in sentences with figures; at least one
   */
  public RefusedTouchException(List<String> refusals) {
    super(String.join(" ", refusals));
    this.refusals = List.copyOf(refusals);
  }

  /** Why not, in sentences with figures. */
  public List<String> refusals() {
    return refusals;
  }
}
