package rigmorrow.app.board.desk;

import java.util.List;

/** Somebody else changed the plan since the revision that a wish is about. Nothing was done. */
public final class StaleException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final long revision;
  private final transient List<String> since;

  /**
   * @param asked revision the wish was about
   * @param revision the board's now
   * @param since what was kept, undone or done again since, oldest first
   */
  public StaleException(long asked, long revision, List<String> since) {
    super(message(asked, revision, since));
    this.revision = revision;
    this.since = List.copyOf(since);
  }

  private static String message(long asked, long revision, List<String> since) {
    if (asked > revision) {
      return "The board has no revision "
          + asked
          + " yet; the plan is at revision "
          + revision
          + ".";
    }
    return "The plan was changed since: " + String.join("; ", since) + ".";
  }

  /** The board's revision now. */
  public long revision() {
    return revision;
  }

  /** What was kept, undone or done again since, oldest first, without full stops. */
  public List<String> since() {
    return since;
  }
}
