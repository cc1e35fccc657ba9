package rigmorrow.data.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableRow;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;

/**
 * The examples of RFC 4180, section 2, read by the scanner. Its fourth rule, that blanks around a
 * cell count, is left out on purpose: spreadsheets are full of blanks that mean nothing.
 */
public final class CsvChecks {
  private CsvChecks() {}

  /** The list. */
  public static List<OutsideCheck> all() {
    return List.of(
        example(
            "1, rows end with CRLF",
            "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
            "aaa+bbb+ccc",
            "zzz+yyy+xxx"),
        example(
            "2, the last row may end without",
            "aaa,bbb,ccc\r\nzzz,yyy,xxx",
            "aaa+bbb+ccc",
            "zzz+yyy+xxx"),
        example(
            "5, cells in quotes",
            "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx",
            "aaa+bbb+ccc",
            "zzz+yyy+xxx"),
        example(
            "6, a line end in quotes",
            "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx",
            "aaa+b CRLF bb+ccc",
            "zzz+yyy+xxx"),
        example("7, a quote written twice", "\"aaa\",\"b\"\"bb\",\"ccc\"", "aaa+b\"bb+ccc"));
  }

  private static OutsideCheck example(String rule, String text, String... rows) {
    Supplier<List<Figure>> figures =
        () -> {
          List<String> read = read(text);
          List<Figure> list = new ArrayList<>();
          list.add(Figure.equal("rows", rows.length, read.size()));
          for (int row = 0; row < Math.min(rows.length, read.size()); row++) {
            list.add(Figure.equal("row " + (row + 1), rows[row], read.get(row)));
          }
          return list;
        };
    return OutsideCheck.of(
        "Rows and cells, rule " + rule, "RFC 4180, section 2", Rfc4180Test.class, figures);
  }

  /** Each row with its cells joined. */
  private static List<String> read(String text) {
    CsvScanner scanner = new CsvScanner(text, 0, ',');
    List<String> rows = new ArrayList<>();
    for (TableRow row = scanner.next(); row != null; row = scanner.next()) {
      List<String> cells = row.cells().stream().map(TableCell::text).toList();
      rows.add(String.join("+", cells).replace("\r\n", " CRLF "));
    }
    return rows;
  }
}
