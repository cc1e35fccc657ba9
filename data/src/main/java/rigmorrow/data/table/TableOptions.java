package rigmorrow.data.table;

import java.nio.charset.Charset;
import org.jspecify.annotations.Nullable;

/**
 * What the user says about a table in place of having it found.
 *
 * @param delimiter of a text: comma, semicolon or tab; null to find it in the header
 * @param decimalMark of numbers written as text: comma or point; null to find it in the numbers
 * @param charset of a text; null to find it (UTF-8, UTF-16 by its mark, else Windows-1252)
 * @param charsetIfNotUtf8 true when the character set was named for another file: a text with
 *     letters beyond ASCII that is UTF-8 is read as that
 * @param sheet of a workbook; null to find it by its header
 * @param onPage true when the user says it in the fields of a page, false for the command line;
 *     what is asked for is named after that
 */
public record TableOptions(
    @Nullable Character delimiter,
    @Nullable Character decimalMark,
    @Nullable Charset charset,
    boolean charsetIfNotUtf8,
    @Nullable String sheet,
    boolean onPage) {
  /** Leaves everything to be found in the file. */
  public static final TableOptions FIND = new TableOptions(null, null, null, false, null, false);

  /** The signs that may divide cells. */
  public static final String DELIMITERS = ",;\t";

  /** The signs that may be a decimal mark. */
  public static final String DECIMAL_MARKS = ",.";

  public TableOptions {
    if (delimiter != null && DELIMITERS.indexOf(delimiter) < 0) {
      throw new IllegalArgumentException(
          "delimiter is '" + delimiter + "'; accepted: comma, semicolon or tab");
    }
    if (decimalMark != null && DECIMAL_MARKS.indexOf(decimalMark) < 0) {
      throw new IllegalArgumentException(
          "decimalMark is '" + decimalMark + "'; accepted: comma or point");
    }
  }

  /** These options with a given delimiter. */
  public TableOptions withDelimiter(@Nullable Character given) {
    return new TableOptions(given, decimalMark, charset, charsetIfNotUtf8, sheet, onPage);
  }

  /** These options with a given decimal mark. */
  public TableOptions withDecimalMark(@Nullable Character given) {
    return new TableOptions(delimiter, given, charset, charsetIfNotUtf8, sheet, onPage);
  }

  /** These options with a given character set. */
  public TableOptions withCharset(@Nullable Charset given) {
    return new TableOptions(delimiter, decimalMark, given, false, sheet, onPage);
  }

  /**
   * These options with a character set that was named for another file: it holds where the text has
   * no letters beyond ASCII or is no UTF-8.
   */
  public TableOptions withCharsetIfNotUtf8(@Nullable Charset given) {
    return new TableOptions(delimiter, decimalMark, given, given != null, sheet, onPage);
  }

  /** These options with a given sheet. */
  public TableOptions withSheet(@Nullable String given) {
    return new TableOptions(delimiter, decimalMark, charset, charsetIfNotUtf8, given, onPage);
  }

  /** These options as the user gives them in the fields of a page. */
  public TableOptions givenOnPage() {
    return new TableOptions(delimiter, decimalMark, charset, charsetIfNotUtf8, sheet, true);
  }

  /**
   * A delimiter as users write it.
   *
   * @param word the sign or its name
   * @throws IllegalArgumentException when it is none
   */
  public static char delimiter(String word) {
    return switch (word) {
      case ",", "comma" -> ',';
      case ";", "semicolon" -> ';';
      case "\t", "\\t", "tab" -> '\t';
      default ->
          throw new IllegalArgumentException("'" + word + "' is no sign; accepted: , or ; or tab");
    };
  }

  /**
   * A decimal mark as users write it.
   *
   * @param word the sign or its name
   * @throws IllegalArgumentException when it is none
   */
  public static char decimalMark(String word) {
    return switch (word) {
      case ",", "comma" -> ',';
      case ".", "point" -> '.';
      default -> throw new IllegalArgumentException("'" + word + "' is no mark; accepted: , or .");
    };
  }

  /** A delimiter or decimal mark by its name. */
  public static String name(char sign) {
    return switch (sign) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      case '\t' -> "tab";
      case '.' -> "point";
      default -> "'" + sign + "'";
    };
  }
}
