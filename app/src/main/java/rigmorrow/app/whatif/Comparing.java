package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Path;
import rigmorrow.app.terminal.Session;
import rigmorrow.app.terminal.StatusLine;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

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
   * Compares; Ctrl-C ends it early and keeps every finished cell. Where the file of cells is
   * damaged in part, the cells that can be read are used.
   *
   * @param file for the cells, in a folder that is there
   * @throws InputException when the file is of another program or effort, or is being written to
   */
  public Compared run(Comparison comparison, Path file) throws IOException, InputException {
    StatusLine line = new StatusLine(session.console());
    try {
      comparison.mend(file).ifPresent(mended -> session.note(mended.words()));
      return comparison.run(file, new CellProgress(session, line, comparison));
    } catch (InputException e) {
      throw new InputException(e.problems().stream().map(Comparing::withOption).toList());
    } finally {
      line.clear();
    }
  }

  /** What the command can do besides where its file of cells cannot be used. */
  private static InputProblem withOption(InputProblem problem) {
    return new InputProblem(
        problem.file(),
        problem.where(),
        problem.field(),
        problem.value(),
        problem.accepted() + "; or another --out");
  }
}
