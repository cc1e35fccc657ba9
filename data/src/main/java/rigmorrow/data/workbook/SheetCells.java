package rigmorrow.data.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.table.TableCell;

/** Turns the cells of a workbook into those of any table. */
final class SheetCells {
  /** What a spreadsheet keeps of a number (Excel specifications and limits). */
  private static final MathContext KEPT_DIGITS = new MathContext(15, RoundingMode.HALF_UP);

  /** Beyond every number a spreadsheet knows (Excel specifications and limits). */
  private static final int MOST_DIGITS = 310;

  private static final BigDecimal NO_DAY_YET = BigDecimal.ONE;

  /** How signs are written that XML cannot hold (ECMA-376 part 1, 22.9.2.19). */
  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private static final Pattern ISO_MOMENT =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})T(\\d{2}:\\d{2}(?::\\d{2}(?:\\.\\d{1,9})?)?)");

  /** The days from which spreadsheets count: the date of what is a time alone. */
  private static final Set<String> DAYS_ZERO = Set.of("1899-12-30", "1899-12-31", "1904-01-01");

  private final Map<String, CellFormat> formats = new HashMap<>();

  /** The cell as a table has it; null stands for none. */
  TableCell cell(@Nullable Cell cell) {
    Object value = cell == null ? null : cell.getValue();
    if (cell == null || cell.getType() == CellType.EMPTY) {
      return TableCell.EMPTY;
    }
    if (value instanceof BigDecimal number) {
      return number(cell, number);
    }
    if (value instanceof Boolean yes) {
      return TableCell.of(yes ? "TRUE" : "FALSE");
    }
    String raw = cell.getRawValue();
    if (value == null && cell.getType() == CellType.FORMULA && raw == null) {
      return TableCell.ofFault(
          "=" + cell.getFormula(),
          "a formula with its value; open the workbook in a spreadsheet and save it");
    }
    boolean unreadable = value == null && raw != null && !raw.isEmpty();
    if (unreadable || cell.getType() == CellType.ERROR) {
      return TableCell.ofFault("" + raw, "a value; this cell has an error");
    }
    String text = value == null ? "" : asShown(cell, unescaped(value.toString()));
    return text.length() > TableCell.LONGEST
        ? TableCell.ofFault(text, "at most " + TableCell.LONGEST + " characters in a cell")
        : TableCell.of(text);
  }

  /** The number format of a cell. */
  CellFormat format(Cell cell) {
    return formats.computeIfAbsent(String.valueOf(cell.getDataFormatString()), CellFormat::of);
  }

  /** A text with the signs that XML cannot hold. */
  static String unescaped(String text) {
    Matcher matcher = ESCAPED.matcher(text);
    return matcher.replaceAll(
        sign -> Matcher.quoteReplacement("" + (char) Integer.parseInt(sign.group(1), 16)));
  }

  /**
   * A date in ISO 8601 without what only its way of writing adds: the midnight of a day, or the day
   * zero of a time. Any other day is kept, even where the format hides it.
   */
  private String asShown(Cell cell, String text) {
    Matcher moment = ISO_MOMENT.matcher(text);
    if (!moment.matches()) {
      return text;
    }
    CellFormat format = format(cell);
    if (format.time() && !format.date() && DAYS_ZERO.contains(moment.group(1))) {
      return moment.group(2);
    }
    boolean dayOnly = format.date() && !format.time() && moment.group(2).matches("00:00[:0.]*");
    return dayOnly ? moment.group(1) : text;
  }

  private TableCell number(Cell cell, BigDecimal exact) {
    int digitsInFront = exact.precision() - exact.scale();
    if (digitsInFront > MOST_DIGITS || exact.scale() > MOST_DIGITS + KEPT_DIGITS.getPrecision()) {
      return TableCell.ofFault("" + cell.getRawValue(), "a number that a spreadsheet can hold");
    }
    CellFormat format = format(cell);
    if ((format.date() || format.time()) && exact.signum() >= 0) {
      return TableCell.of(moment(cell, exact, format));
    }
    boolean kept = digitsInFront <= KEPT_DIGITS.getPrecision();
    BigDecimal number = kept ? exact.round(KEPT_DIGITS) : exact;
    String plain = number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    return new TableCell(format.shown(plain), number, format.unit(), null);
  }

  /** A day, a time, or both, as the standards write them. */
  private static String moment(Cell cell, BigDecimal days, CellFormat format) {
    LocalDateTime moment = cell.asDate();
    if (format.time() && days.compareTo(NO_DAY_YET) < 0) {
      return moment.toLocalTime().toString();
    }
    boolean dayOnly = !format.time() && moment.toLocalTime().equals(LocalTime.MIDNIGHT);
    return dayOnly ? moment.toLocalDate().toString() : moment.toString();
  }
}
