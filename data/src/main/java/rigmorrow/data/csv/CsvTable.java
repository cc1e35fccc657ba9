package rigmorrow.data.csv;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableChoice;
import rigmorrow.data.table.TableForm;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/** Reads a table from CSV. */
public final class CsvTable {
  private CsvTable() {}

  /**
   * Reads the rows of a file.
   *
   * @param bytes of the file
   * @param judge tells the right delimiter by its headers
   * @param problems takes what is wrong with the file
   * @throws InputException when there is no text, no header, or one that cannot be read
   */
  public static Table read(byte[] bytes, TableOptions options, HeaderJudge judge, Problems problems)
      throws InputException {
    if (bytes.length == 0) {
      throw Table.nothing(judge, problems);
    }
    String sheet = options.sheet();
    if (sheet != null) {
      String field = TableChoice.SHEET.name(judge, options);
      problems.add("file", field, sheet, "no sheet, since a text has none");
      problems.throwIfAny();
    }
    CsvSource source = CsvSource.open(bytes, options, judge, problems);
    List<TableRow> rows = new ArrayList<>();
    CsvScanner scanner = source.scanner();
    TableRow row = scanner.next();
    while (row != null) {
      if (!row.blank()) {
        rows.add(row);
      }
      row = scanner.next();
    }
    TableForm form = TableForm.ofText(source.text().charsetName(), source.delimiter());
    return Table.of(form, rows, judge, problems);
  }
}
