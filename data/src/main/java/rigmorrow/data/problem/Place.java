package rigmorrow.data.problem;

/**
 * Where something stands in an input file. Its text is put together only when it is asked for:
 * every cell has a place, and few have a problem.
 *
 * @param path in the file ("rigs[2].size"), or the name of a table's sheet; empty for a table
 *     without sheets
 * @param row of a table, from 1; 0 when no row is meant
 * @param column of a table, from 1; 0 when no column is meant
 */
public record Place(String path, int row, int column) {
  private static final int LETTERS = 26;

  /** A place that is no cell of a table. */
  public static Place of(String path) {
    return new Place(path, 0, 0);
  }

  /**
   * A row of a table, or a cell of it.
   *
   * @param sheet its name; empty for a table without sheets
   * @param row as the spreadsheet counts it, from 1
   * @param column from 1; 0 when the whole row is meant
   */
  public static Place cell(String sheet, int row, int column) {
    return new Place(sheet, row, column);
  }

  /** The place as the user sees it: a path, or "sheet 'Tomorrow', row 17, column C". */
  public String text() {
    if (row == 0) {
      return path;
    }
    String inSheet = path.isEmpty() ? "" : "sheet '" + path + "', ";
    String inColumn = column == 0 ? "" : ", column " + letters(column);
    return inSheet + "row " + row + inColumn;
  }

  /** A column as a spreadsheet names it: 1 is A, 27 is AA. */
  public static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest > 0; rest = (rest - 1) / LETTERS) {
      letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
    }
    return letters.toString();
  }

  @Override
  public String toString() {
    return text();
  }
}
