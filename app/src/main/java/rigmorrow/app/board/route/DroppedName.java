package rigmorrow.app.board.route;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import rigmorrow.app.board.api.Parameter;
import rigmorrow.app.board.api.Refusal;

/** The name of a file that was dropped on the page: it is shown, and tells the kind by its end. */
final class DroppedName {
  private static final String HEADER = "X-File-Name";
  private static final int LONGEST = 120;

  /** Where it stands in a request. */
  static final Parameter PARAMETER =
      Parameter.header(HEADER, "name of the file, percent-encoded; its ending tells the kind");

  private DroppedName() {}

  /**
   * What a browser calls the file: its last part, without anything that could not be shown.
   *
   * @throws Refusal when there is none, or it is too long
   */
  static String of(Context context) {
    String header = context.header(HEADER);
    if (header == null || header.isBlank()) {
      throw Refusal.malformed("The header X-File-Name is missing; accepted: the file's name.");
    }
    String name = decoded(header);
    String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    String shown = last.replaceAll("[\\p{Cntrl}\\p{Cf}\\uFFFD]", " ").strip();
    if (shown.isEmpty() || shown.length() > LONGEST) {
      throw Refusal.malformed(
          "The file's name is empty or too long; accepted: at most " + LONGEST + " letters.");
    }
    return shown;
  }

  private static String decoded(String header) {
    try {
      return URLDecoder.decode(header.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      throw Refusal.malformed("" + e.getMessage());
    }
  }
}
