package rigmorrow.app.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table for a terminal. Columns are as wide as their widest cell; when the whole is wider than
 * allowed, the column named as elastic gives way and its cells are cut.
 */
public final class TextTable {
  private static final String GAP = "  ";
  private static final int LEAST_ELASTIC = 6;

  private final List<String> heads;
  private final List<Boolean> rightAligned;
  private final int elastic;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param elastic index of the column that gives way
   * @param heads of the columns; one that starts with {@code >} is aligned right
   */
  public TextTable(int elastic, List<String> heads) {
    this.elastic = elastic;
    this.rightAligned = heads.stream().map(head -> head.startsWith(">")).toList();
    this.heads =
        heads.stream().map(head -> head.startsWith(">") ? head.substring(1) : head).toList();
  }

  /** Adds a row with as many cells as there are columns. */
  public void row(String... cells) {
    if (cells.length != heads.size()) {
      throw new IllegalArgumentException(cells.length + " cells for " + heads.size() + " columns");
    }
    rows.add(List.of(cells).stream().map(Text::clean).toList());
  }

  /** True when no row was added. */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The lines, each at most so many columns wide; the first has the heads unless all are empty. */
  public List<String> lines(String indent, int columns) {
    int[] widths = widths(columns - indent.length());
    List<String> lines = new ArrayList<>();
    if (heads.stream().anyMatch(head -> !head.isEmpty())) {
      lines.add(line(indent, heads, widths));
    }
    rows.forEach(row -> lines.add(line(indent, row, widths)));
    return lines.stream().map(line -> Text.cut(line, columns)).toList();
  }

  private int[] widths(int columns) {
    int[] widths =
        IntStream.range(0, heads.size())
            .map(
                column ->
                    Math.max(
                        Text.columns(heads.get(column)),
                        rows.stream()
                            .mapToInt(row -> Text.columns(row.get(column)))
                            .max()
                            .orElse(0)))
            .toArray();
    int whole = IntStream.of(widths).sum() + GAP.length() * (widths.length - 1);
    if (whole > columns) {
      widths[elastic] = Math.max(LEAST_ELASTIC, widths[elastic] - (whole - columns));
    }
    return widths;
  }

  private String line(String indent, List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder(indent);
    for (int column = 0; column < widths.length; column++) {
      line.append(column == 0 ? "" : GAP);
      String cell = cells.get(column);
      line.append(
          rightAligned.get(column)
              ? Text.right(cell, widths[column])
              : Text.left(cell, widths[column]));
    }
    return line.toString().stripTrailing();
  }
}
