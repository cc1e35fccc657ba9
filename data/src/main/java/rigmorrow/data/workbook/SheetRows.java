package rigmorrow.data.workbook;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.HeaderRow;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableRow;

/**
 * The rows of a sheet that are not blank.
 *
 * @param all at least one, from the top
 * @param at place of the header among them; as wide as the widest row
 */
record SheetRows(List<TableRow> all, int at) {
  SheetRows {
    all = List.copyOf(all);
  }

  /** Rows of which one is widened: what stands to the right has a column without a header. */
  static SheetRows of(List<TableRow> rows, HeaderJudge judge) {
    int at = HeaderRow.in(rows, judge);
    List<TableRow> all = new ArrayList<>(rows);
    all.set(at, widened(rows.get(at), rows));
    return new SheetRows(all, at);
  }

  TableRow header() {
    return all.get(at);
  }

  /** How many columns there are. */
  int width() {
    return header().cells().size();
  }

  /** The rows that hold data. */
  List<TableRow> belowHeader() {
    return all.subList(at + 1, all.size());
  }

  private static TableRow widened(TableRow header, List<TableRow> rows) {
    int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    List<TableCell> cells = new ArrayList<>(header.cells());
    while (cells.size() < width) {
      cells.add(TableCell.EMPTY);
    }
    return new TableRow(header.number(), cells, header.fault());
  }
}
