package rigmorrow.data.table;

import org.jspecify.annotations.Nullable;

/**
 * What kind of file a table was read from.
 *
 * @param charset character set of a text; empty for a workbook
 * @param delimiter between the cells of a text; null for a workbook
 * @param sheet of a workbook; empty for a text
 */
public record TableForm(String charset, @Nullable Character delimiter, String sheet) {
  /** A text. */
  public static TableForm ofText(String charset, char delimiter) {
    return new TableForm(charset, delimiter, "");
  }

  /** A sheet of a workbook. */
  public static TableForm ofSheet(String name) {
    return new TableForm("", null, name);
  }

  /** The form as a phrase for the user. */
  public String phrase() {
    return delimiter == null
        ? "sheet '" + sheet + "'"
        : "text " + charset + ", delimiter " + TableOptions.name(delimiter);
  }
}
