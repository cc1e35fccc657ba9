package rigmorrow.data.csv;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableFault;
import rigmorrow.data.table.TableRow;

/**
 * Splits text into rows and cells by RFC 4180, with the liberties spreadsheets take: any line end,
 * any delimiter, and a quote inside a cell that does not start with one stands for itself (5"
 * plate). Rows are numbered as a spreadsheet shows them: a blank row counts, a line end inside
 * quotes does not.
 */
final class CsvScanner {
  /**
   * Where a cell stands in the text, quotes and blanks included.
   *
   * @param end exclusive
   */
  record Span(int start, int end) {}

  private final String text;
  private final char delimiter;
  private int at;
  private int number;
  private @Nullable TableFault fault;
  private boolean openQuote;
  private final List<Span> spans = new ArrayList<>();

  /**
   * @param start where the first row starts in the text
   */
  CsvScanner(String text, int start, char delimiter) {
    this.text = text;
    this.at = start;
    this.delimiter = delimiter;
  }

  /** The next row, blank ones too; null after the last. */
  @Nullable TableRow next() {
    if (at >= text.length()) {
      return null;
    }
    number++;
    fault = null;
    spans.clear();
    List<TableCell> cells = new ArrayList<>();
    boolean more = true;
    while (more) {
      int start = at;
      String cell = at < text.length() && text.charAt(at) == '"' ? quoted() : plain();
      if (cell.length() > TableCell.LONGEST) {
        fault = new TableFault(cell, "at most " + TableCell.LONGEST + " characters in a cell");
        cell = "";
      }
      spans.add(new Span(start, at));
      cells.add(TableCell.of(cell));
      more = at < text.length() && text.charAt(at) == delimiter;
      at += more ? 1 : 0;
    }
    skipLineEnd();
    return new TableRow(number, cells, fault);
  }

  /** Where the cells of the last row stand. */
  List<Span> spans() {
    return List.copyOf(spans);
  }

  /** True when the last row has a quote that is never closed, so that it holds all that follows. */
  boolean openQuote() {
    return openQuote;
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
        fault = new TableFault("\"" + text.substring(at), "a closing quote");
        openQuote = true;
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
          new TableFault(
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
}
