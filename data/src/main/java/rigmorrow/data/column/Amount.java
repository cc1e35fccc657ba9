package rigmorrow.data.column;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigmorrow.data.table.TableCell;

/**
 * A number with what stands behind it.
 *
 * @param number as written
 * @param unit as written; empty when none
 */
record Amount(String number, String unit) {
  /** The most characters of a value that is no text. */
  static final int LONGEST = 100;

  private static final Pattern WITH_UNIT = Pattern.compile("(.*\\d)\\s*([^\\d\\s.,]+)");

  static Amount of(TableCell cell) {
    String text = cell.text();
    if (cell.number() != null) {
      return new Amount(text, cell.unit());
    }
    Matcher matcher = WITH_UNIT.matcher(text);
    return text.length() <= LONGEST && matcher.matches()
        ? new Amount(matcher.group(1), matcher.group(2))
        : new Amount(text, "");
  }
}
