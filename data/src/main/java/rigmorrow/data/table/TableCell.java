package rigmorrow.data.table;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One cell.
 *
 * @param text as the spreadsheet shows it, without outer blanks; a number in plain digits with a
 *     decimal point, a date as 2026-11-26T16:00:00
 * @param number the value of a cell that holds a number and not digits as text; null for any other
 * @param unit that the number's format shows behind it; empty for none
 * @param fault why the cell has no value, such as a formula in error; null when it has
 */
public record TableCell(
    String text, @Nullable BigDecimal number, String unit, @Nullable TableFault fault) {
  /** The most characters a spreadsheet keeps in one cell (Excel specifications and limits). */
  public static final int LONGEST = 32_767;

  /** A cell with nothing in it. */
  public static final TableCell EMPTY = new TableCell("", null, "", null);

  /** A cell of text; outer blanks are taken off, the no-break space of spreadsheets too. */
  public static TableCell of(String written) {
    String text = stripped(written);
    return text.isEmpty() ? EMPTY : new TableCell(text, null, "", null);
  }

  /** A cell that cannot be read. */
  public static TableCell ofFault(String text, String accepted) {
    return new TableCell(text, null, "", new TableFault(text, accepted));
  }

  /** True when nothing stands in it. */
  public boolean isEmpty() {
    return text.isEmpty() && fault == null;
  }

  private static String stripped(String cell) {
    int from = 0;
    int to = cell.length();
    while (from < to && blank(cell.charAt(from))) {
      from++;
    }
    while (from < to && blank(cell.charAt(to - 1))) {
      to--;
    }
    return cell.substring(from, to);
  }

  private static boolean blank(char sign) {
    return Character.isWhitespace(sign) || Character.isSpaceChar(sign);
  }
}
