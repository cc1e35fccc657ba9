package rigmorrow.app.board.desk;

import java.util.List;
import java.util.stream.Collectors;

/** Somebody else changed the plan since the revision that a wish is about. Nothing was done. */
public final class StaleException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private static final int MOST_NAMED = 5;

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
    String named = since.stream().limit(MOST_NAMED).collect(Collectors.joining("; "));
    int more = since.size() - MOST_NAMED;
    return "The plan was changed since: "
        + named
        + (more > 0 ? "; and " + more + " more" : "")
        + ".";
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
