package rigmorrow.data.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableForm;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/** Reads a table from a sheet of an XLSX workbook. */
public final class WorkbookTable {
  /** Far beyond any shot list, and far below what would fill memory. */
  static final int MOST_COLUMNS = 1_000;

  private WorkbookTable() {}

  /**
   * Reads the rows of a sheet. Cells that are merged downwards all have the value that is shown;
   * cells merged sideways have none of their own, which is a problem where one is read.
   *
   * @param bytes of the file
   * @param judge tells the right sheet by its header
   * @param problems takes what is wrong with the file
   * @throws InputException when there is no workbook, no sheet to read, or no header
   */
  public static Table read(byte[] bytes, TableOptions options, HeaderJudge judge, Problems problems)
      throws InputException {
    if (bytes.length == 0) {
      throw Table.nothing(judge, problems);
    }
    try (OpenWorkbook workbook = OpenWorkbook.open(bytes, problems)) {
      Sheet sheet = new SheetChoice(workbook, options, judge, problems).sheet();
      List<TableRow> rows = rows(workbook, sheet, problems);
      if (rows.isEmpty()) {
        throw Table.nothing(judge, problems);
      }
      List<TableRow> merged =
          new MergedCells(sheet.getName(), workbook.merges(sheet))
              .filled(SheetRows.of(rows, judge), problems);
      return Table.of(TableForm.ofSheet(sheet.getName()), merged, judge, problems);
    } catch (IOException e) {
      throw new UncheckedIOException("a workbook in memory cannot be closed", e);
    }
  }

  /** A row with its cells up to the last that is not empty. */
  static TableRow row(int number, Row row, SheetCells cells) {
    List<TableCell> read = new ArrayList<>();
    int last = 0;
    for (int column = 0; column < row.getCellCount(); column++) {
      TableCell cell = cells.cell(row.getCell(column));
      read.add(cell);
      last = cell.isEmpty() ? last : column + 1;
    }
    return new TableRow(number, read.subList(0, last), null);
  }

  /**
   * The rows that are not blank.
   *
   * @throws InputException when the sheet holds what no spreadsheet writes, or too much
   */
  static List<TableRow> rows(OpenWorkbook workbook, Sheet sheet, Problems problems)
      throws InputException {
    SheetCells cells = new SheetCells();
    List<TableRow> rows = new ArrayList<>();
    workbook.read(
        sheet,
        (number, found) -> {
          TableRow row = row(number, found, cells);
          if (row.cells().size() > MOST_COLUMNS) {
            problems.add(
                Place.cell(sheet.getName(), number, row.cells().size()),
                "",
                row.text(row.cells().size() - 1),
                "at most " + MOST_COLUMNS + " columns");
            throw new InputException(problems.found());
          }
          if (!row.blank()) {
            rows.add(row);
          }
          return true;
        });
    return rows;
  }
}
