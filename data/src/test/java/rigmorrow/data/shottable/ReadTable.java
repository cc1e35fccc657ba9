package rigmorrow.data.shottable;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.csv.CsvTable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.workbook.WorkbookTable;

/** Reads shot lists for the small floor from the bytes of a file, for two days from a Thursday. */
public final class ReadTable {
  /** The plan's first day in these tests. */
  public static final LocalDate DATE = LocalDate.of(2026, 11, 26);

  private ReadTable() {}

  /** Reads CSV with everything to be found in the file. */
  public static ShotTableReading csv(String text) throws InputException {
    return csv(text.getBytes(StandardCharsets.UTF_8), "list.csv", TableOptions.FIND);
  }

  /** Reads CSV. */
  public static ShotTableReading csv(byte[] bytes, String name, TableOptions options)
      throws InputException {
    Problems problems = new Problems(name);
    return read(CsvTable.read(bytes, options, TableKind.SHOT_LIST, problems), options, problems);
  }

  /** Reads a workbook with everything to be found in the file. */
  public static ShotTableReading workbook(byte[] bytes) throws InputException {
    return workbook(bytes, TableOptions.FIND);
  }

  /** Reads a workbook. */
  public static ShotTableReading workbook(byte[] bytes, TableOptions options)
      throws InputException {
    Problems problems = new Problems("list.xlsx");
    return read(
        WorkbookTable.read(bytes, options, TableKind.SHOT_LIST, problems), options, problems);
  }

  private static ShotTableReading read(Table table, TableOptions options, Problems problems)
      throws InputException {
    ShotTableOptions all = new ShotTableOptions(DATE, 2, options);
    return ShotTable.read(table, SmallFloor.FLOOR, all, problems);
  }
}
