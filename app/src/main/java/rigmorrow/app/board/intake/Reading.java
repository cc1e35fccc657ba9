package rigmorrow.app.board.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.report.Counted;
import rigmorrow.data.Formats;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shot.FewerPeople;
import rigmorrow.data.shot.SmallSizes;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.table.CellEdit;
import rigmorrow.data.table.OpenTable;
import rigmorrow.data.table.Table;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.ShotList;

/**
 * What a file was read as.
 *
 * @param date first day it would be planned for
 * @param days how many
 * @param notes how it was understood
 * @param problems everything that is wrong with it
 * @param table its rows; null for a file that is no table, or of which no row can be told
 * @param shotList its jobs; null while there are problems
 */
public record Reading(
    LocalDate date,
    int days,
    List<String> notes,
    List<InputProblem> problems,
    @Nullable Table table,
    @Nullable ShotList shotList) {
  /** More jobs than any floor does in a day, and as many as the page can show. */
  static final int MOST_JOBS = 5000;

  public Reading {
    notes = List.copyOf(notes);
    problems = List.copyOf(problems);
  }

  /**
   * The day that a file is read for when it says none.
   *
   * @param date first day
   * @param days how many
   */
  public record Usual(LocalDate date, int days) {}

  /** Reads a file for a floor, with some cells mended. */
  static Reading of(
      InputFile file, IntakeOptions options, List<CellEdit> edits, Floor floor, Usual usual) {
    LocalDate date = options.date() == null ? usual.date() : options.date();
    int days = options.days() == null ? usual.days() : options.days();
    OpenTable table = null;
    try {
      if (!InputFile.isTable(file.name())) {
        return ofTree(Formats.readShotList(file, floor), options, file.name());
      }
      table = Formats.openShotTable(file, options.table()).with(edits);
      refuseMany(table.table().rows().size(), file.name());
      ShotTableReading read =
          Formats.readShotTable(table, floor, new ShotTableOptions(date, days, options.table()));
      List<String> notes = read.notes().lines();
      return new Reading(date, days, notes, List.of(), table.table(), read.shotList());
    } catch (InputException e) {
      List<String> notes = new ArrayList<>();
      if (table != null) {
        notes.add(table.table().form().phrase());
        if (!table.table().above().isEmpty()) {
          notes.add(table.table().headerTaken());
        }
      }
      Table rows = table == null ? null : table.table();
      return new Reading(date, days, notes, e.problems(), rows, null);
    }
  }

  private static Reading ofTree(ShotList list, IntakeOptions options, String name)
      throws InputException {
    refuseMany(list.jobs().size(), name);
    LocalDate date = options.date() == null ? list.date() : options.date();
    int days = options.days() == null ? list.days() : options.days();
    String pins = list.pins().isEmpty() ? "" : ", " + Counted.of(list.pins().size(), "pin");
    ShotList dated = list.withDates(date, days);
    String note = Counted.of(list.jobs().size(), "job") + pins;
    List<String> notes = new ArrayList<>(List.of(note));
    notes.addAll(SmallSizes.linesOf(list));
    notes.addAll(FewerPeople.linesOf(list));
    return new Reading(date, days, notes, List.of(), null, dated);
  }

  private static void refuseMany(int jobs, String name) throws InputException {
    if (jobs > MOST_JOBS) {
      throw new InputException(
          List.of(new InputProblem(name, "file", "", jobs + " jobs", "at most " + MOST_JOBS)));
    }
  }
}
