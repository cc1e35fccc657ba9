package rigmorrow.model.floor;

import rigmorrow.model.check.Require;

/**
 * How long it takes to fetch kit from one place to another. {@code *} stands for any place; the
 * first line that applies counts.
 *
 * @param from a rig's id, a shelf or {@code *}
 * @param to a rig's id or {@code *}
 * @param seconds hands-on walking time, 0 or more
 */
public record FetchTime(String from, String to, int seconds) {
  public FetchTime {
    Require.text("fetch.from", from);
    Require.text("fetch.to", to);
    Require.atLeast("fetch.seconds", seconds, 0);
  }

  boolean applies(String fromPlace, String toPlace) {
    return (from.equals("*") || from.equals(fromPlace)) && (to.equals("*") || to.equals(toPlace));
  }
}
