package rigmorrow.data.column;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.TableRow;

/** What a table is about: which columns it may have and which it needs. */
public enum TableKind implements HeaderJudge {
  /** One job in a row. */
  SHOT_LIST(
      "job",
      "--",
      EnumSet.allOf(Column.class),
      List.of(List.of(Column.ARTICLE, Column.ID), List.of(Column.RECIPE))),
  /** What a dimensioning device measured of one article in a row. */
  SIZES(
      "article",
      "--sizes-",
      EnumSet.of(Column.ARTICLE, Column.LENGTH, Column.WIDTH, Column.HEIGHT, Column.MASS),
      List.of(
          List.of(Column.ARTICLE),
          List.of(Column.LENGTH, Column.WIDTH, Column.HEIGHT, Column.MASS)));

  private final String rowWord;
  private final String optionStart;
  private final Set<Column> columns;
  private final List<List<Column>> needs;

  TableKind(String rowWord, String optionStart, Set<Column> columns, List<List<Column>> needs) {
    this.rowWord = rowWord;
    this.optionStart = optionStart;
    this.columns = columns;
    this.needs = needs;
  }

  /** The columns it may have. */
  public Set<Column> columns() {
    return Set.copyOf(columns);
  }

  @Override
  public long known(TableRow header) {
    return known(header, columns);
  }

  @Override
  public long likely(TableRow header) {
    return IntStream.range(0, header.cells().size())
        .mapToObj(header::text)
        .filter(written -> isKnown(written, columns) || MeantHeader.isNearly(written, this))
        .count();
  }

  @Override
  public boolean complete(TableRow header) {
    return needs.stream().allMatch(any -> known(header, EnumSet.copyOf(any)) > 0);
  }

  @Override
  public String needed() {
    return needs.stream().map(TableKind::names).collect(Collectors.joining(" and "));
  }

  @Override
  public String optionStart() {
    return optionStart;
  }

  @Override
  public String rowWord() {
    return rowWord;
  }

  /** Of each of these one column is needed. */
  List<List<Column>> needs() {
    return needs;
  }

  /** The columns that serve one need, as a phrase. */
  static String names(List<Column> any) {
    String last = any.get(any.size() - 1).title();
    String others =
        any.stream().limit(any.size() - 1L).map(Column::title).collect(Collectors.joining(", "));
    return others.isEmpty() ? last : others + " or " + last;
  }

  private static long known(TableRow header, Set<Column> columns) {
    return IntStream.range(0, header.cells().size())
        .filter(index -> isKnown(header.text(index), columns))
        .count();
  }

  private static boolean isKnown(String written, Set<Column> columns) {
    Header.Known known = Header.Known.of(0, written);
    return known != null && columns.contains(known.column());
  }
}
