package rigmorrow.data.table;

import rigmorrow.model.check.Require;

/**
 * What shall stand in a cell of a table in place of what does.
 *
 * @param row as the spreadsheet counts it, from 1
 * @param column from 1
 * @param text what shall stand there; empty for nothing
 */
public record CellEdit(int row, int column, String text) {
  public CellEdit {
    Require.atLeast("cell.row", row, 1);
    Require.atLeast("cell.column", column, 1);
    Require.that(
        text.length() <= TableCell.LONGEST,
        "cell.text",
        text.length() + " characters",
        "at most " + TableCell.LONGEST);
  }
}
