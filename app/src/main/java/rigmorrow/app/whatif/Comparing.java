package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Path;
import rigmorrow.app.terminal.Session;
import rigmorrow.app.terminal.StatusLine;
import rigmorrow.data.problem.InputException;

/** Runs a comparison on a terminal. */
public final class Comparing {
  private final Session session;

  /**
   * @param session tells when to stop
   */
  public Comparing(Session session) {
    this.session = session;
  }

  /**
   * Compares; Ctrl-C ends it early and keeps every finished cell.
   *
   * @param file for the cells, in a folder that is there
   * @throws InputException when the file is of another program or effort, or is being written to
   */
  public Compared run(Comparison comparison, Path file) throws IOException, InputException {
    StatusLine line = new StatusLine(session.console());
    try {
      return comparison.run(file, new CellProgress(session, line, comparison));
    } finally {
      line.clear();
    }
  }
}
