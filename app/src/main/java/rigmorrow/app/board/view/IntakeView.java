package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A shot list that was dropped on the page and is being looked at; it is not planned yet.
 *
 * @param id names it in later requests
 * @param fileName as the browser gave it, to be shown only
 * @param date first day it would be planned for, YYYY-MM-DD
 * @param notes how the file was understood: sheet, delimiter, decimal mark, units
 * @param problems everything that is wrong; empty when it can be planned
 * @param table rows as they are read; null for a file that is no table
 * @param jobs number of jobs that were read; 0 while there are problems
 * @param fit the fit check; null while there are problems
 */
public record IntakeView(
    String id,
    String fileName,
    String date,
    int days,
    List<String> notes,
    List<IntakeProblemView> problems,
    @Nullable TableView table,
    int jobs,
    @Nullable FitView fit) {

  /**
   * One thing that is wrong.
   *
   * @param row as the spreadsheet counts it, 0 when it is in no row
   * @param column 1 for the first, 0 when it is in none
   * @param where in words
   */
  public record IntakeProblemView(
      int row, int column, String where, String field, String value, String accepted) {}

  /**
   * Cells as text.
   *
   * @param headerRow as the spreadsheet counts it
   * @param rows those with problems first to last, then others up to a limit
   * @param rowCount of the whole table
   */
  public record TableView(
      int headerRow, List<String> header, List<TableRowView> rows, int rowCount) {}

  /** A row with its number as the spreadsheet counts it. */
  public record TableRowView(int row, List<String> cells) {}
}
