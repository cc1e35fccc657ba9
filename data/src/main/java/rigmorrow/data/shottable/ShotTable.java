package rigmorrow.data.shottable;

import java.util.List;
import rigmorrow.data.column.CellReader;
import rigmorrow.data.column.Column;
import rigmorrow.data.column.DecimalMark;
import rigmorrow.data.column.Header;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.Table;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** Reads the shot list that a table holds; the format is described in FORMAT.md. */
public final class ShotTable {
  private static final String NO_PROMISES =
      "no column was read as Due: no job of this list has a promise, so that none can be late";

  private ShotTable() {}

  /**
   * Reads a shot list.
   *
   * @param table of whatever kind of file
   * @param floor what its recipes and setups are looked up in
   * @param problems may hold some about the table already
   * @throws InputException with every problem of the file
   */
  public static ShotTableReading read(
      Table table, Floor floor, ShotTableOptions options, Problems problems) throws InputException {
    Header header = new Header(table, TableKind.SHOT_LIST, floor.attributes(), problems);
    DecimalMark mark = DecimalMark.settle(options.table(), header, table);
    CellReader cells = new CellReader(problems, options.date(), mark, header, table);
    JobRows rows = new JobRows(header, floor, problems, cells);
    List<ShotJob> jobs = rows.jobs(table);
    problems.throwIfAny();
    TableNotes notes = TableNotes.of(table, header, mark, cells).remarked(rows.remarks());
    return new ShotTableReading(
        new ShotList(options.date(), options.days(), jobs, List.of()),
        passesOverPromises(header) ? notes.remarkedFirst(NO_PROMISES) : notes);
  }

  /** Where some column was not read and none was read as promises, they may be in that one. */
  private static boolean passesOverPromises(Header header) {
    return !header.unknown().isEmpty()
        && header.columns().stream().noneMatch(known -> known.column() == Column.DUE);
  }
}
