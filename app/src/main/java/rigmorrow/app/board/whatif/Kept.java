package rigmorrow.app.board.whatif;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.app.files.FileFailures;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.outcome.Cell;

/**
 * The plans that a comparison has from before, or why nobody can read them. A file that cannot be
 * read is no fault of the scenarios, so they are taken all the same.
 *
 * @param cells the plans; empty where there are none or they cannot be read
 * @param fault why they cannot be read, as a sentence that names the file; empty where they can
 * @param damaged true where what stands in the file is at fault, so that no later try would succeed
 */
record Kept(List<Cell> cells, String fault, boolean damaged) {
  /** No plans from before. */
  static final Kept NONE = new Kept(List.of(), "", false);

  Kept {
    cells = List.copyOf(cells);
  }

  /**
   * Reads the plans.
   *
   * @param file of the cells, or where they will be; nobody may write to it meanwhile
   */
  static Kept read(Comparison comparison, Path file) {
    try {
      return new Kept(comparison.known(file), "", false);
    } catch (InputException e) {
      String first = e.problems().get(0).line();
      return new Kept(List.of(), file.getFileName() + " is damaged, " + first + ".", true);
    } catch (IOException e) {
      return new Kept(List.of(), FileFailures.sentence(e), false);
    }
  }

  /** What there is to say of it before a comparison begins; empty where all can be read. */
  String note() {
    if (fault.isEmpty()) {
      return "";
    }
    String next =
        damaged
            ? " A comparison puts the file aside and makes all plans anew."
            : " Nothing can be compared in this way until it can be used.";
    return "The plans from before cannot be read. " + fault + next;
  }
}
