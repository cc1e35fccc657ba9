package rigmorrow.data.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.HeaderRow;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/**
 * A CSV file of which it is settled how it is to be split.
 *
 * @param text of the file
 * @param start where the first row starts in the text
 * @param delimiter between cells
 */
record CsvSource(CsvText text, int start, char delimiter) {
  private static final Pattern DELIMITER_LINE = Pattern.compile("(?i)sep=(.)(?:\\r\\n|\\n|\\r)");

  /**
   * Opens a file.
   *
   * @param judge tells the right delimiter by its headers
   * @throws InputException when the bytes are no text, or the delimiter they name is none
   */
  static CsvSource open(byte[] bytes, TableOptions options, HeaderJudge judge, Problems problems)
      throws InputException {
    CsvText text = CsvText.decode(bytes, options, problems);
    int start = 0;
    Character delimiter = options.delimiter();
    Matcher line = DELIMITER_LINE.matcher(text.text());
    if (line.lookingAt()) {
      start = line.end();
      delimiter = delimiter == null ? given(line.group(1), problems) : delimiter;
      problems.throwIfAny();
    }
    if (delimiter == null) {
      delimiter = found(text.text(), start, judge);
    }
    return new CsvSource(text, start, delimiter);
  }

  CsvScanner scanner() {
    return new CsvScanner(text.text(), start, delimiter);
  }

  private static @Nullable Character given(String delimiter, Problems problems) {
    if (TableOptions.DELIMITERS.contains(delimiter)) {
      return delimiter.charAt(0);
    }
    problems.add("file", "sep=", delimiter, "comma, semicolon or tab");
    return null;
  }

  /**
   * The delimiter by which most headers are known in one of the first rows, or nearly known where
   * none is; among equals, the one that gives the first row most cells.
   */
  private static char found(String text, int start, HeaderJudge judge) {
    boolean known =
        TableOptions.DELIMITERS
            .chars()
            .mapToObj(candidate -> first(new CsvScanner(text, start, (char) candidate)))
            .flatMap(List::stream)
            .anyMatch(row -> judge.known(row) > 0);
    return found(text, start, known ? judge::known : judge::likely);
  }

  private static char found(String text, int start, ToLongFunction<TableRow> headers) {
    char best = TableOptions.DELIMITERS.charAt(0);
    long bestScore = -1;
    for (char candidate : TableOptions.DELIMITERS.toCharArray()) {
      CsvScanner scanner = new CsvScanner(text, start, candidate);
      List<TableRow> first = first(scanner);
      if (!first.isEmpty()) {
        long most = first.stream().mapToLong(headers).max().orElse(0);
        long score = most * text.length() + first.get(0).cells().size();
        if (score > bestScore) {
          best = candidate;
          bestScore = score;
        }
      }
    }
    return best;
  }

  /** The row number of the header; 0 where nothing stands in the file. */
  int headerNumber(HeaderJudge judge) {
    List<TableRow> first = first(scanner());
    return first.isEmpty() ? 0 : first.get(HeaderRow.in(first, judge)).number();
  }

  private static List<TableRow> first(CsvScanner scanner) {
    List<TableRow> first = new ArrayList<>();
    TableRow row = scanner.next();
    while (row != null && first.size() < HeaderRow.MOST_LOOKED_AT) {
      if (!row.blank()) {
        first.add(row);
      }
      row = scanner.next();
    }
    return first;
  }
}
