package rigmorrow.data.column;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Place;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/**
 * Settles what a number such as {@code 1,250} means: thousands, or three decimals. A wrong guess is
 * wrong by a factor of a thousand, so it takes more than the decimal mark of other columns: it must
 * be shown that the file writes thousands so, or that the column has three decimals.
 */
final class TwoMeanings {
  private static final int DECIMALS = 3;

  private final DecimalMark mark;
  private final Map<Character, String> thousands = new HashMap<>();
  private final Map<Integer, String> threeDecimals = new HashMap<>();

  /** Gathers what the other numbers of a table show. */
  TwoMeanings(DecimalMark mark, Header header, Table table) {
    this.mark = mark;
    for (Header.Known known : header.columns()) {
      if (known.column().kind().number()) {
        for (TableRow row : table.rows()) {
          note(known, row.cell(known.index()), table.place(row, known.index()));
        }
      }
    }
  }

  /**
   * What a number was settled to be.
   *
   * @param value null when nothing settles it
   * @param why what settled it; without a value what would be accepted in its place
   */
  record Settled(@Nullable BigDecimal value, String why) {}

  /**
   * Settles a number that could be two.
   *
   * @param unit it is in; null for none
   * @param kept what the column makes of a value; null when it does not take it
   */
  Settled settle(
      Numeral numeral,
      Header.Known header,
      @Nullable Unit unit,
      Function<BigDecimal, @Nullable Object> kept) {
    Character decimal = mark.sign();
    if (decimal == null) {
      return open(numeral, numeral.sign());
    }
    if (mark.given()) {
      return new Settled(numeral.read(decimal), "the decimal mark was given");
    }
    char sign = numeral.sign();
    boolean asDecimals = kept.apply(numeral.read(sign)) != null;
    boolean asThousands = kept.apply(numeral.read(sign == ',' ? '.' : ',')) != null;
    String why = "";
    if (sign != decimal) {
      why = thousands.getOrDefault(sign, "");
      if (why.isEmpty() && asThousands && !asDecimals) {
        why = "the column does not take decimals such as these";
      }
    } else if (unit != null && unit.thousandthsMeasured()) {
      why = "the file has a decimal " + TableOptions.name(sign);
    } else if (asDecimals) {
      why = threeDecimals.getOrDefault(header.index(), "");
      if (why.isEmpty() && !asThousands) {
        why = "thousands would be more than the column takes";
      }
    }
    return why.isEmpty() ? open(numeral, decimal) : new Settled(numeral.read(decimal), why);
  }

  private Settled open(Numeral numeral, char decimal) {
    String whole = numeral.written().replaceAll("[.,]", "");
    String decimals = numeral.written().replace(numeral.sign(), decimal) + "0";
    return new Settled(
        null,
        "%s or %s; or say which decimal mark the file has (%s)"
            .formatted(decimals, whole, mark.choice()));
  }

  private void note(Header.Known known, TableCell cell, Place place) {
    Numeral numeral = cell.number() == null ? Numeral.of(Amount.of(cell).number()) : null;
    if (numeral == null || numeral.ambiguous()) {
      return;
    }
    Character shown = numeral.mark();
    if (shown == null) {
      return;
    }
    String example = place.text() + " has " + numeral.written();
    char other = shown == ',' ? '.' : ',';
    if (numeral.written().indexOf(other) >= 0) {
      thousands.putIfAbsent(other, example);
    }
    int decimals = numeral.written().length() - 1 - numeral.written().lastIndexOf(shown);
    if (numeral.written().indexOf(shown) >= 0 && decimals == DECIMALS) {
      threeDecimals.putIfAbsent(known.index(), example);
    }
  }
}
