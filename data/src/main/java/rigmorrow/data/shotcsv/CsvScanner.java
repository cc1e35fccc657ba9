package rigmorrow.data.shotcsv;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Splits text into rows and cells by RFC 4180, with the liberties spreadsheets take: any line end,
 * any delimiter, and a quote inside a cell that does not start with one stands for itself (5"
 * plate). Rows are numbered as a spreadsheet shows them: a blank row counts, a line end inside
 * quotes does not.
 */
final class CsvScanner {
  /** The most characters a spreadsheet keeps in one cell (Excel specifications and limits). */
  private static final int LONGEST_CELL = 32_767;

  /**
   * One row.
   *
   * @param number as the spreadsheet shows it
   * @param cells without quotes and outer blanks
   * @param fault why the row could not be split for sure; null when it could
   */
  record Row(int number, List<String> cells, @Nullable Fault fault) {
    /** True when no cell has anything in it. */
    boolean blank() {
      return fault == null && cells.stream().allMatch(String::isEmpty);
    }

    /** The cell of a column counted from 0; empty where the row is too short. */
    String cell(int column) {
      return column < cells.size() ? cells.get(column) : "";
    }

    /** The first cell that is not empty from a column on; empty when there is none. */
    String firstBeyond(int column) {
      return cells.stream().skip(column).filter(cell -> !cell.isEmpty()).findFirst().orElse("");
    }
  }

  /**
   * What is wrong with a row.
   *
   * @param value what stands there
   * @param accepted what would be accepted
   */
  record Fault(String value, String accepted) {}

  private final String text;
  private final char delimiter;
  private int at;
  private int number;
  private @Nullable Fault fault;

  /**
   * @param start where the first row starts in the text
   */
  CsvScanner(String text, int start, char delimiter) {
    this.text = text;
    this.at = start;
    this.delimiter = delimiter;
  }

  /** The next row, blank ones too; null after the last. */
  @Nullable Row next() {
    if (at >= text.length()) {
      return null;
    }
    number++;
    fault = null;
    List<String> cells = new ArrayList<>();
    boolean more = true;
    while (more) {
      String cell = at < text.length() && text.charAt(at) == '"' ? quoted() : plain();
      if (cell.length() > LONGEST_CELL) {
        fault = new Fault(cell, "at most " + LONGEST_CELL + " characters in a cell");
        cell = "";
      }
      cells.add(stripped(cell));
      more = at < text.length() && text.charAt(at) == delimiter;
      at += more ? 1 : 0;
    }
    skipLineEnd();
    return new Row(number, cells, fault);
  }

  private String plain() {
    int start = at;
    while (at < text.length() && !endsCell(text.charAt(at))) {
      at++;
    }
    return text.substring(start, at);
  }

  private String quoted() {
    StringBuilder cell = new StringBuilder();
    at++;
    while (true) {
      int quote = text.indexOf('"', at);
      if (quote < 0) {
        fault = new Fault("\"" + text.substring(at), "a closing quote");
        at = text.length();
        return cell.toString();
      }
      cell.append(text, at, quote);
      at = quote + 1;
      if (at >= text.length() || text.charAt(at) != '"') {
        break;
      }
      cell.append('"');
      at++;
    }
    String after = plain();
    if (!after.isBlank()) {
      fault =
          new Fault(
              "\"" + cell + "\"" + after,
              "a delimiter after the closing quote; a quote inside quotes is written twice");
    }
    return cell.toString();
  }

  private boolean endsCell(char sign) {
    return sign == delimiter || sign == '\n' || sign == '\r';
  }

  private void skipLineEnd() {
    if (at < text.length() && text.charAt(at) == '\r') {
      at++;
    }
    if (at < text.length() && text.charAt(at) == '\n') {
      at++;
    }
  }

  /** Outer blanks off, the no-break space of spreadsheets too. */
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
