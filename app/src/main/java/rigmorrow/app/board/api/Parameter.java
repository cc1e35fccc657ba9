package rigmorrow.app.board.api;

import java.util.Locale;

/**
 * A part of a request besides its body. All are texts.
 *
 * @param name in the path, query or header
 * @param in where it stands
 * @param needed false when it may be left out
 * @param meaning what it says
 */
public record Parameter(String name, In in, boolean needed, String meaning) {
  /** Where a parameter stands. */
  public enum In {
    /** A segment of the path, percent-encoded. */
    PATH,
    /** Behind the question mark. */
    QUERY,
    /** A header of the request. */
    HEADER;

    /** As OpenAPI writes it. */
    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A segment of the path. */
  public static Parameter path(String name, String meaning) {
    return new Parameter(name, In.PATH, true, meaning);
  }

  /** Something behind the question mark that may be left out. */
  public static Parameter query(String name, String meaning) {
    return new Parameter(name, In.QUERY, false, meaning);
  }

  /** Something behind the question mark that must be there. */
  public static Parameter neededQuery(String name, String meaning) {
    return new Parameter(name, In.QUERY, true, meaning);
  }

  /** A header that must be there. */
  public static Parameter header(String name, String meaning) {
    return new Parameter(name, In.HEADER, true, meaning);
  }
}
