package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import rigmorrow.app.report.Counted;
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
   * @return nothing where it was ended before anybody knew which plans are there already, which is
   *     said
   * @throws InputException when the file is of another program or effort, or is being written to
   */
  public Optional<Compared> run(Comparison comparison, Path file)
      throws IOException, InputException {
    StatusLine line = new StatusLine(session.console());
    try {
      comparison.mend(file).ifPresent(mended -> session.note(mended.words()));
      int kept = comparison.kept(file);
      if (kept > 0) {
        // Looking through them takes a while, and whoever ends it is to hear that they stay.
        session.stop().searchBegins();
      }
      Optional<Compared> made = comparison.run(file, new CellProgress(session, line, comparison));
      if (made.isEmpty()) {
        session.note(
            "stopped early, before it was known which plans are there already: "
                + Counted.of(kept, "plan in %s is", "plans in %s are").formatted(file.getFileName())
                + " kept; the same command goes on from there");
      }
      return made;
    } catch (InputException e) {
      throw withOption(e);
    } finally {
      line.clear();
    }
  }

  /**
   * What comparing would take; nothing is planned or written.
   *
   * @param file for the cells, whether or not it is there
   * @throws InputException when the file is of another program or effort
   */
  public static Estimate estimate(Comparison comparison, Path file)
      throws IOException, InputException {
    try {
      Comparison.Known known = comparison.known(file);
      return Estimate.of(comparison, known.cells(), known.note(file));
    } catch (InputException e) {
      throw withOption(e);
    }
  }

  private static InputException withOption(InputException e) {
    return new InputException(e.problems().stream().map(Comparing::withOption).toList());
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
