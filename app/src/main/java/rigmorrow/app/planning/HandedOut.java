package rigmorrow.app.planning;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.model.plan.Breach;

/** Says what was written for the crew, and whether they may work from it. */
public final class HandedOut {
  private final Session session;
  private final boolean json;

  /**
   * @param session where to write
   * @param json whether to print a document
   */
  public HandedOut(Session session, boolean json) {
    this.session = session;
    this.json = json;
  }

  /**
   * Tells of files made from a plan.
   *
   * @param breaches of the plan
   * @return the exit code
   */
  public int tell(List<Path> written, List<Breach> breaches) {
    print(document(written).put("keepsTheRules", breaches.isEmpty()), written);
    return exitCode(breaches, session);
  }

  /** The exit code of what was told of a plan; says so when it breaks rules. */
  public static int exitCode(List<Breach> breaches, Session session) {
    if (breaches.isEmpty()) {
      return ExitCodes.DONE;
    }
    session.note("The plan breaks rules that must hold; the verify command lists them.");
    return ExitCodes.NO_PLAN;
  }

  /** Tells of a file that no plan was needed for. */
  public void tell(Path written) {
    print(document(List.of(written)), List.of(written));
  }

  private static ObjectNode document(List<Path> written) {
    ObjectNode document = Json.document();
    if (written.size() == 1) {
      document.put("written", written.get(0).toString());
    }
    ArrayNode files = document.putArray("files");
    written.forEach(file -> files.add(file.toString()));
    return document;
  }

  private void print(ObjectNode document, List<Path> written) {
    if (json) {
      session.print(List.of(Json.text(document)));
    } else {
      written.forEach(file -> session.note("written: " + file));
    }
  }
}
