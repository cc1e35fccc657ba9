package rigmorrow.data.shottable;

import rigmorrow.data.column.TableKind;
import rigmorrow.data.csv.CsvTable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.Table;
import rigmorrow.model.floor.Floor;

/** Reads a shot list from the bytes of a CSV file. */
final class ReadCsv {
  private ReadCsv() {}

  static ShotTableReading read(byte[] bytes, String name, Floor floor, ShotTableOptions options)
      throws InputException {
    Problems problems = new Problems(name);
    Table table = CsvTable.read(bytes, options.table(), TableKind.SHOT_LIST, problems);
    return ShotTable.read(table, floor, options, problems);
  }
}
