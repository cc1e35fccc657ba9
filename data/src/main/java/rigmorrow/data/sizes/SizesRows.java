package rigmorrow.data.sizes;

import java.util.LinkedHashMap;
import java.util.Map;
import rigmorrow.data.column.CellReader;
import rigmorrow.data.column.Column;
import rigmorrow.data.column.Header;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableRow;

/** Turns rows into measured articles. */
final class SizesRows {
  private final Table table;
  private final Header header;
  private final CellReader cells;
  private final Problems problems;
  private final Map<String, MeasuredArticle> articles = new LinkedHashMap<>();

  SizesRows(Table table, Header header, CellReader cells, Problems problems) {
    this.table = table;
    this.header = header;
    this.cells = cells;
    this.problems = problems;
  }

  /** The articles by their numbers, in the order of the table. */
  Map<String, MeasuredArticle> articles() {
    header.askForUnits();
    for (TableRow row : table.rows()) {
      if (header.complete() && !table.refuses(row, problems)) {
        take(row);
      }
    }
    return articles;
  }

  /** The article comes first: columns are in the order of their fields. */
  private void take(TableRow row) {
    MeasuredArticle measured = null;
    for (Header.Known known : header.columns()) {
      TableCell cell = row.cell(known.index());
      Place where = table.place(row, known.index());
      boolean article = known.column() == Column.ARTICLE;
      if (cell.isEmpty() || header.unread(known.column())) {
        if (article) {
          problems.add(where, known.written(), "", JobField.ARTICLE.accepted());
        }
        continue;
      }
      Object value = cells.read(where, known, cell);
      if (article && value != null) {
        measured =
            articles.computeIfAbsent(
                value.toString(), name -> new MeasuredArticle(name, table.place(row)));
      } else if (value != null && measured != null) {
        take(measured, known, new MeasuredArticle.Figure(value, where));
      }
    }
  }

  /** Twice the same is fine; twice a different value has to be settled by the user. */
  private void take(MeasuredArticle measured, Header.Known known, MeasuredArticle.Figure figure) {
    MeasuredArticle.Figure earlier = measured.take(known.column().field(), figure);
    if (earlier != null) {
      problems.add(
          figure.place(),
          known.written(),
          figure.value().toString(),
          "one value for article %s; %s has %s"
              .formatted(measured.article(), earlier.place(), earlier.value()));
    }
  }
}
