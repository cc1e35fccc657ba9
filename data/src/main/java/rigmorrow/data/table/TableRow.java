package rigmorrow.data.table;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row.
 *
 * @param number as the spreadsheet shows it, from 1
 * @param cells from the first column on; may be fewer than the header has
 * @param fault why the row could not be split into cells for sure; null when it could
 */
public record TableRow(int number, List<TableCell> cells, @Nullable TableFault fault) {
  public TableRow {
    cells = List.copyOf(cells);
  }

  /** True when no cell has anything in it. */
  public boolean blank() {
    return fault == null && cells.stream().allMatch(TableCell::isEmpty);
  }

  /** The cell of a column counted from 0; empty where the row is too short. */
  public TableCell cell(int column) {
    return column < cells.size() ? cells.get(column) : TableCell.EMPTY;
  }

  /** The text of a cell. */
  public String text(int column) {
    return cell(column).text();
  }

  /** The first column from one on, counted from 0, whose cell is not empty; -1 for none. */
  public int firstFilled(int from) {
    for (int column = from; column < cells.size(); column++) {
      if (!cells.get(column).isEmpty()) {
        return column;
      }
    }
    return -1;
  }

  /**
   * This row with other text in a cell.
   *
   * @param width of the header
   */
  TableRow with(CellEdit edit, int width) {
    if (edit.column() > Math.max(width, cells.size())) {
      throw new IllegalArgumentException(
          "Row " + number + " has no column " + edit.column() + "; accepted: 1 to " + width + ".");
    }
    List<TableCell> others = new ArrayList<>(cells);
    while (others.size() < edit.column()) {
      others.add(TableCell.EMPTY);
    }
    others.set(edit.column() - 1, TableCell.of(edit.text()));
    return new TableRow(number, others, fault);
  }

  /** This row with nothing in one column. */
  TableRow without(int column) {
    if (cell(column).isEmpty()) {
      return this;
    }
    List<TableCell> others = new ArrayList<>(cells);
    others.set(column, TableCell.EMPTY);
    return new TableRow(number, others, fault);
  }
}
