package rigmorrow.data.table;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigmorrow.data.problem.InputProblem;

/**
 * The column of an annotated copy that tells the problems of each row. It is not data: a copy that
 * was mended is read without it.
 */
public final class ProblemColumn {
  /** Its header; problems that belong to no row follow behind a colon. */
  public static final String HEADER = "problems";

  private static final String BETWEEN = " | ";
  private static final String MORE = " | and more";

  private ProblemColumn() {}

  /** True when a header is that of this column. */
  public static boolean isHeader(String header) {
    String lower = header.toLowerCase(Locale.ROOT);
    return lower.equals(HEADER) || lower.startsWith(HEADER + ":");
  }

  /** The column with this header in a row, counted from 0; -1 when there is none. */
  public static int in(TableRow header) {
    for (int column = 0; column < header.cells().size(); column++) {
      if (isHeader(header.text(column))) {
        return column;
      }
    }
    return -1;
  }

  /** The header with the problems that belong to no row. */
  public static String header(List<InputProblem> problems) {
    return problems.isEmpty()
        ? HEADER
        : joined(HEADER + ": ", problems.stream().map(InputProblem::line));
  }

  /** What is told beside a row, in the order of its columns. */
  public static String besideRow(List<InputProblem> problems) {
    return joined(
        "",
        problems.stream()
            .sorted(Comparator.comparingInt(problem -> problem.place().column()))
            .map(InputProblem::besideRow));
  }

  /** What is told in one cell, as far as a cell has room. */
  private static String joined(String start, Stream<String> lines) {
    String words = lines.collect(Collectors.joining(BETWEEN, start, ""));
    int room = TableCell.LONGEST - MORE.length();
    return words.length() > TableCell.LONGEST ? words.substring(0, room) + MORE : words;
  }
}
