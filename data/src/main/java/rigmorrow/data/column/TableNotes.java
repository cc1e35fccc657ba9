package rigmorrow.data.column;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableForm;
import rigmorrow.data.table.TableOptions;

/**
 * How a table was understood.
 *
 * @param form what kind of file it is
 * @param decimalMark comma or point; null when no number written as text needs one or they disagree
 * @param unknownColumns headers, as written, of columns that were not read
 * @param conversions one line for each column and unit that was converted
 * @param remarks anything else the user should see, such as numbers written in two ways
 */
public record TableNotes(
    TableForm form,
    @Nullable Character decimalMark,
    List<String> unknownColumns,
    List<String> conversions,
    List<String> remarks) {
  public TableNotes {
    unknownColumns = List.copyOf(unknownColumns);
    conversions = List.copyOf(conversions);
    remarks = List.copyOf(remarks);
  }

  /** The notes on a table that was read. */
  public static TableNotes of(Table table, Header header, DecimalMark mark, CellReader cells) {
    List<String> remarks = new ArrayList<>();
    if (!table.above().isEmpty()) {
      remarks.add(table.headerTaken());
    }
    remarks.addAll(header.meant());
    remarks.addAll(cells.remarks());
    if (mark.mixed()) {
      remarks.add(
          "some numbers have a decimal comma, others a decimal point; each was read by itself");
    }
    return new TableNotes(
        table.form(), mark.sign(), header.unknown(), cells.conversions(), remarks);
  }

  /** The same with more remarks behind all others. */
  public TableNotes remarked(List<String> more) {
    List<String> all = new ArrayList<>(remarks);
    all.addAll(more);
    return new TableNotes(form, decimalMark, unknownColumns, conversions, all);
  }

  /** The same with a remark before all others. */
  public TableNotes remarkedFirst(String remark) {
    List<String> all = new ArrayList<>(List.of(remark));
    all.addAll(remarks);
    return new TableNotes(form, decimalMark, unknownColumns, conversions, all);
  }

  /** Everything as lines to show, the most general first. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    String mark = decimalMark == null ? "not settled by the file" : TableOptions.name(decimalMark);
    lines.add(form.phrase() + ", decimal mark " + mark);
    lines.addAll(conversions);
    for (String column : unknownColumns) {
      lines.add("column '" + column + "' is not known and was not read");
    }
    lines.addAll(remarks);
    return lines;
  }
}
