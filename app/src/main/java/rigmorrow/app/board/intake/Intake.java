package rigmorrow.app.board.intake;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.data.Formats;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.table.CellEdit;
import rigmorrow.model.floor.Floor;

/**
 * A file that was dropped, as it stands after what was mended on the page.
 *
 * @param id names it
 * @param file as it came
 * @param options what the planner said of it
 * @param edits cells that were mended, each once
 * @param usual the day it is read for when nothing says another
 * @param reading what it was read as
 */
public record Intake(
    String id,
    InputFile file,
    IntakeOptions options,
    List<CellEdit> edits,
    Reading.Usual usual,
    Reading reading) {
  /** More than anybody mends by hand. */
  static final int MOST_EDITS = 5000;

  public Intake {
    edits = List.copyOf(edits);
  }

  /** A file as it came. */
  static Intake of(
      String id, InputFile file, IntakeOptions options, Floor floor, Reading.Usual usual) {
    Reading reading = Reading.of(file, options, List.of(), floor, usual);
    return new Intake(id, file, options, List.of(), usual, reading);
  }

  /**
   * The same file with more cells mended.
   *
   * @throws IllegalArgumentException when there is no such cell, or too many were mended
   */
  Intake mended(List<CellEdit> more, Floor floor) {
    List<CellEdit> all = new ArrayList<>(edits);
    for (CellEdit edit : more) {
      all.removeIf(old -> old.row() == edit.row() && old.column() == edit.column());
      all.add(edit);
    }
    if (all.size() > MOST_EDITS) {
      throw new IllegalArgumentException(
          all.size() + " cells are mended; accepted: " + MOST_EDITS + ", then mend the file.");
    }
    if (reading.table() == null && !all.isEmpty()) {
      throw new IllegalArgumentException("The file has no cells to mend; mend the file itself.");
    }
    return new Intake(id, file, options, all, usual, Reading.of(file, options, all, floor, usual));
  }

  /**
   * The same file read in another way; what was mended counts no more, since cells may be others.
   */
  Intake readAs(IntakeOptions others, Floor floor) {
    boolean sameCells = others.table().equals(options.table());
    List<CellEdit> kept = sameCells ? edits : List.of();
    return new Intake(id, file, others, kept, usual, Reading.of(file, others, kept, floor, usual));
  }

  /**
   * A copy of the file with what is still wrong beside its rows, and with what was mended.
   *
   * @throws InputException with the reason when no such copy can be made
   */
  public byte[] annotated() throws InputException {
    return Formats.annotatedShotTable(file, options.table(), reading.problems(), edits);
  }
}
