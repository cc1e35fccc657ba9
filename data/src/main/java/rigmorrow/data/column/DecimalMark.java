package rigmorrow.data.column;

import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableChoice;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/**
 * The decimal mark of the numbers that a table has as text.
 *
 * @param sign comma or point; null when it is not settled
 * @param given true when the user said so, and any other is a slip
 * @param mixed true when the numbers themselves show both
 * @param choice what the user calls the choice that settles it
 */
public record DecimalMark(@Nullable Character sign, boolean given, boolean mixed, String choice) {

  /** The mark that the options give, else the only one that the numbers of the table show. */
  public static DecimalMark settle(TableOptions options, Header header, Table table) {
    Character given = options.decimalMark();
    Set<Character> shown = new TreeSet<>();
    for (Header.Known known : header.columns()) {
      if (known.column().kind().number()) {
        for (TableRow row : table.rows()) {
          TableCell cell = row.cell(known.index());
          Numeral numeral = Numeral.of(Amount.of(cell).number());
          if (cell.number() == null && numeral != null && numeral.mark() != null) {
            shown.add(numeral.mark());
          }
        }
      }
    }
    Character only = shown.size() == 1 ? shown.iterator().next() : null;
    return new DecimalMark(
        given != null ? given : only,
        given != null,
        shown.size() > 1,
        TableChoice.DECIMAL.name(header.kind(), options));
  }

  /** The mark by its name; empty when it is not settled. */
  String name() {
    return sign == null ? "" : TableOptions.name(sign);
  }
}
