package rigmorrow.data.workbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Cells that are merged into one.
 *
 * @param top first row, from 1
 * @param left first column, from 0
 * @param bottom last row
 * @param right last column
 */
record CellRange(int top, int left, int bottom, int right) {
  /** Excel specifications and limits. */
  static final int MOST_ROWS = 1_048_576;

  /** Excel specifications and limits. */
  static final int MOST_COLUMNS = 16_384;

  private static final Pattern CELL = Pattern.compile("\\$?([A-Z]{1,3})\\$?(\\d{1,7})");

  /** The range written as "B2" or "B2:C3"; null when it is none that a sheet can have. */
  static @Nullable CellRange of(@Nullable String written) {
    String[] ends = String.valueOf(written).split(":", -1);
    Matcher first = CELL.matcher(ends[0]);
    Matcher last = CELL.matcher(ends[ends.length - 1]);
    if (ends.length > 2 || !first.matches() || !last.matches()) {
      return null;
    }
    CellRange range =
        new CellRange(
            Integer.parseInt(first.group(2)),
            column(first.group(1)),
            Integer.parseInt(last.group(2)),
            column(last.group(1)));
    boolean there =
        range.top >= 1
            && range.top <= range.bottom
            && range.bottom <= MOST_ROWS
            && range.left <= range.right
            && range.right < MOST_COLUMNS;
    return there ? range : null;
  }

  /** True when a cell is in both. */
  boolean overlaps(CellRange other) {
    return top <= other.bottom && other.top <= bottom && left <= other.right && other.left <= right;
  }

  private static int column(String letters) {
    int column = 0;
    for (char letter : letters.toCharArray()) {
      column = column * 26 + letter - 'A' + 1;
    }
    return column - 1;
  }
}
