package rigmorrow.data.workbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableRow;

/** Gives the cells of a merged area the value that the area shows. */
final class MergedCells {
  /** Far beyond any shot list, and far below what would fill memory. */
  static final int MOST_CELLS = 1_000_000;

  private final String sheet;
  private final List<CellRange> merges;

  /**
   * @param sheet its name
   * @param merges areas of it, none of which overlap
   */
  MergedCells(String sheet, List<CellRange> merges) {
    this.sheet = sheet;
    this.merges = merges;
  }

  /**
   * The rows with the first column of each area filled downwards. The other columns of an area have
   * no value of their own. An area that starts in the header or above is left alone, and no row is
   * made where there was none.
   *
   * @param sheetRows that are not blank, from the top
   * @throws InputException when the areas take more cells than memory should be spent on
   */
  List<TableRow> filled(SheetRows sheetRows, Problems problems) throws InputException {
    List<TableRow> rows = sheetRows.all();
    if (merges.isEmpty()) {
      return rows;
    }
    int[] numbers = rows.stream().mapToInt(TableRow::number).toArray();
    int width = sheetRows.width();
    List<List<TableCell>> filled = new ArrayList<>(Collections.nCopies(rows.size(), List.of()));
    long taken = 0;
    for (CellRange merge : merges) {
      int first = Arrays.binarySearch(numbers, merge.top());
      int right = Math.min(merge.right(), width - 1);
      if (first <= sheetRows.at() || merge.left() > right) {
        continue;
      }
      TableCell shown = rows.get(first).cell(merge.left());
      String name = Place.letters(merge.left() + 1) + merge.top();
      for (int at = first; at < numbers.length && numbers[at] <= merge.bottom(); at++) {
        if (filled.get(at).isEmpty()) {
          filled.set(at, new ArrayList<>(rows.get(at).cells()));
        }
        List<TableCell> cells = filled.get(at);
        // A row that is too short for the area grows, which takes memory as well.
        taken += right - merge.left() + 1 + Math.max(0, right + 1 - cells.size());
        if (taken > MOST_CELLS) {
          throw tooMany(sheet, problems);
        }
        fill(cells, merge, right, shown, name);
      }
    }
    List<TableRow> all = new ArrayList<>(rows);
    for (int at = 0; at < filled.size(); at++) {
      if (!filled.get(at).isEmpty()) {
        all.set(at, new TableRow(numbers[at], filled.get(at), rows.get(at).fault()));
      }
    }
    return all;
  }

  /**
   * The areas as far as a sheet has rows and columns, but for those of which one cell is left.
   *
   * @param bottom the last row, from 1
   * @param width how many columns there are
   * @throws InputException when they take more cells than memory should be spent on
   */
  List<CellRange> within(int bottom, int width, Problems problems) throws InputException {
    List<CellRange> within = new ArrayList<>();
    long taken = 0;
    for (CellRange merge : merges) {
      int rows = Math.min(merge.bottom(), bottom) - merge.top() + 1;
      int columns = Math.min(merge.right(), width - 1) - merge.left() + 1;
      if (rows >= 1 && columns >= 1 && rows + columns > 2) {
        taken += (long) rows * columns;
        within.add(
            new CellRange(
                merge.top(), merge.left(), merge.top() + rows - 1, merge.left() + columns - 1));
      }
    }
    if (taken > MOST_CELLS) {
      throw tooMany(sheet, problems);
    }
    return within;
  }

  private static InputException tooMany(String sheet, Problems problems) {
    problems.add(
        Place.of("sheet '" + sheet + "'"),
        "",
        "more than " + MOST_CELLS + " merged cells",
        "at most that, counted as far as there are rows and columns");
    return new InputException(problems.found());
  }

  private static void fill(
      List<TableCell> cells, CellRange merge, int right, TableCell shown, String name) {
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
  }
}
