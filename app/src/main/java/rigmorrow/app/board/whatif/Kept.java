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
 * @param state of their file
 * @param fault what there is to say of the file, as a sentence that names it; empty where all of it
 *     can be used
 */
record Kept(List<Cell> cells, State state, String fault) {
  /** How a file of plans is. */
  enum State {
    /** All of it can be used, or there is none. */
    USABLE,
    /** There is none, but plans that another build of the program has made in the same way. */
    OF_ANOTHER_BUILD,
    /** Some lines of it are no plans; the others can be used. */
    PARTLY_DAMAGED,
    /** What stands in it is at fault, so that no later try would succeed. */
    DAMAGED,
    /** It may be as it should, but the file system does not give it. */
    UNREADABLE
  }

  /** No plans from before. */
  static final Kept NONE = new Kept(List.of(), State.USABLE, "");

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
      Comparison.Known known = comparison.known(file);
      State state = known.damaged() == 0 ? State.USABLE : State.PARTLY_DAMAGED;
      return new Kept(known.cells(), state, known.note(file));
    } catch (InputException e) {
      String first = e.problems().get(0).line();
      String fault = file.getFileName() + " is damaged, " + first + ".";
      return new Kept(List.of(), State.DAMAGED, fault);
    } catch (IOException e) {
      return new Kept(List.of(), State.UNREADABLE, FileFailures.sentence(e));
    }
  }

  /**
   * No plans, where others are.
   *
   * @param file that another build of the program has left
   */
  static Kept ofAnotherBuild(Path file) {
    String fault =
        "Plans in "
            + file.getFileName()
            + " are not used again: another build of the program has made them, and may have"
            + " searched in another way.";
    return new Kept(List.of(), State.OF_ANOTHER_BUILD, fault);
  }

  /** What there is to say of it before a comparison begins; empty where all can be used. */
  String note() {
    return switch (state) {
      case USABLE -> "";
      case OF_ANOTHER_BUILD, PARTLY_DAMAGED -> fault;
      case DAMAGED ->
          "The plans from before cannot be read. "
              + fault
              + " A comparison puts the file aside and makes all plans anew.";
      case UNREADABLE ->
          "The plans from before cannot be read. "
              + fault
              + " Nothing can be compared in this way until it can be used.";
    };
  }
}
