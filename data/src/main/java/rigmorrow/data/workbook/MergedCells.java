package rigmorrow.data.workbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rigmorrow.data.problem.Place;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableRow;

/** Gives the cells of a merged area the value that the area shows. */
final class MergedCells {
  private final List<CellRange> merges;

  /**
   * @param merges areas of a sheet
   */
  MergedCells(List<CellRange> merges) {
    this.merges = merges;
  }

  /**
   * The rows with the first column of each area filled downwards. The other columns of an area have
   * no value of their own. An area that starts in the header or above is left alone, and no row is
   * made where there was none.
   *
   * @param rows that are not blank, from the top
   */
  List<TableRow> filled(List<TableRow> rows) {
    if (merges.isEmpty() || rows.isEmpty()) {
      return rows;
    }
    int[] numbers = rows.stream().mapToInt(TableRow::number).toArray();
    int width = rows.get(0).cells().size();
    List<TableRow> filled = new ArrayList<>(rows);
    for (CellRange merge : merges) {
      int first = Arrays.binarySearch(numbers, merge.top());
      if (first <= 0) {
        continue;
      }
      TableCell shown = rows.get(first).cell(merge.left());
      String name = Place.letters(merge.left() + 1) + merge.top();
      for (int at = first; at < numbers.length && numbers[at] <= merge.bottom(); at++) {
        filled.set(at, filled(filled.get(at), merge, shown, name, width));
      }
    }
    return filled;
  }

  private static TableRow filled(
      TableRow row, CellRange merge, TableCell shown, String name, int width) {
    List<TableCell> cells = new ArrayList<>(row.cells());
    int right = Math.min(merge.right(), width - 1);
    while (cells.size() <= right) {
      cells.add(TableCell.EMPTY);
    }
    for (int column = merge.left(); column <= right; column++) {
      if (cells.get(column).isEmpty()) {
        cells.set(
            column,
            column == merge.left()
                ? shown
                : TableCell.ofFault("", "a value of its own; the cell is merged with " + name));
      }
    }
    return new TableRow(row.number(), cells, row.fault());
  }
}
