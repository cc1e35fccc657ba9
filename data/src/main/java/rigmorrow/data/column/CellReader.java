package rigmorrow.data.column;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableFault;
import rigmorrow.model.shot.Gtin;
import rigmorrow.model.shot.HeightSource;

/** Reads one cell as the kind of value its column has, and counts what was converted. */
public final class CellReader {
  /** What a spreadsheet keeps of a number (Excel specifications and limits). */
  private static final int KEPT_DIGITS = 15;

  static final Set<String> YES = Set.of("yes", "y", "ja", "true", "sand", "wahr", "1", "x");
  static final Set<String> NO = Set.of("no", "n", "nej", "nein", "false", "falsk", "falsch", "0");
  static final Map<String, HeightSource> HEIGHT_SOURCES =
      Map.of(
          "list", HeightSource.LIST,
          "liste", HeightSource.LIST,
          "device", HeightSource.DEVICE,
          "udstyr", HeightSource.DEVICE,
          "gerät", HeightSource.DEVICE,
          "hand", HeightSource.HAND,
          "hånd", HeightSource.HAND);
  private static final Pattern SHORTENED = Pattern.compile("\\d[.,]\\d+[eE]\\+\\d+");
  private static final String SHORTENED_ACCEPTED =
      "the whole number; the spreadsheet has shortened it";
  private static final int[] GTIN_LENGTHS = {8, 12, 13, 14};

  /** Errors of formulas as English, Danish and German spreadsheets show them. */
  private static final Pattern ERROR_VALUE = Pattern.compile("#(?:N/A|I/T|NV|(?:\\p{Lu}|/0)+[!?])");

  private static final Pattern FORMULA_TEXT = Pattern.compile("=\"([^\"]*)\"");

  private final Problems problems;
  private final LocalDate planDate;
  private final DecimalMark mark;
  private final TwoMeanings meanings;
  private final CellNotes notes = new CellNotes();

  /**
   * @param planDate the day of a time without a date
   * @param mark of the numbers that are written as text
   * @param header of the table
   * @param table whose numbers settle what one of them means
   */
  public CellReader(
      Problems problems, LocalDate planDate, DecimalMark mark, Header header, Table table) {
    this.problems = problems;
    this.planDate = planDate;
    this.mark = mark;
    this.meanings = new TwoMeanings(mark, header, table);
  }

  /**
   * The value of a cell that is not empty.
   *
   * @return null when it cannot be read; that is noted
   */
  public @Nullable Object read(Place where, Header.Known header, TableCell cell) {
    String text = cell.text();
    TableFault fault = cell.fault();
    if (fault != null) {
      return refused(where, header, fault.value(), fault.accepted());
    }
    if (text.startsWith("#") && ERROR_VALUE.matcher(text).matches()) {
      return refused(where, header, text, "a value; the formula of this cell has an error");
    }
    Column.Kind kind = header.column().kind();
    if (kind == Column.Kind.TEXT) {
      return text(where, header, cell);
    }
    if (text.length() > Amount.LONGEST) {
      return refused(where, header, text, header.column().field().accepted());
    }
    return switch (kind) {
      case TIME -> {
        Times.Reading time = Times.read(text, planDate);
        yield time.time() != null ? time.time() : refused(where, header, text, time.accepted());
      }
      case FLAG -> {
        String lower = text.toLowerCase(Locale.ROOT);
        yield YES.contains(lower) || NO.contains(lower)
            ? Boolean.valueOf(YES.contains(lower))
            : refused(where, header, text, "yes or no, ja or nej/nein, true or false, 1 or 0, x");
      }
      case HEIGHT_SOURCE -> {
        HeightSource source = HEIGHT_SOURCES.get(text.toLowerCase(Locale.ROOT));
        yield source != null ? source : refused(where, header, text, "list, device or hand");
      }
      default -> number(where, header, cell);
    };
  }

  /** One line for each column and unit that was converted. */
  public List<String> conversions() {
    return notes.conversions();
  }

  /** One line for each column in which something was put right, settled, rounded or looks odd. */
  public List<String> remarks() {
    return notes.remarks();
  }

  /** A text as it is meant: without the formula that keeps its leading zeros (="00417"). */
  static String plainText(String text) {
    if (!text.startsWith("=")) {
      return text;
    }
    Matcher formula = FORMULA_TEXT.matcher(text);
    return formula.matches() ? formula.group(1) : text;
  }

  private static boolean shortened(String text) {
    return text.indexOf('+') > 0 && SHORTENED.matcher(text).matches();
  }

  private @Nullable Object text(Place where, Header.Known header, TableCell cell) {
    String text = cell.text();
    BigDecimal number = cell.number();
    if (number != null && number.precision() - number.scale() > KEPT_DIGITS) {
      return refused(
          where,
          header,
          text,
          "the number as text; a spreadsheet keeps " + KEPT_DIGITS + " digits of a number");
    }
    if (header.column() == Column.GTIN) {
      return gtin(where, header, cell);
    }
    if (shortened(text)) {
      refused(where, header, text, SHORTENED_ACCEPTED);
    }
    return plainText(text);
  }

  /** Zeros in front do not count in a GTIN (GS1), so those a number has lost can be put back. */
  private @Nullable Object gtin(Place where, Header.Known header, TableCell cell) {
    String text = cell.text();
    if (shortened(text)) {
      return refused(where, header, text, SHORTENED_ACCEPTED);
    }
    if (cell.number() == null || Gtin.rightLength(text)) {
      return plainText(text);
    }
    for (int length : GTIN_LENGTHS) {
      String filled = "0".repeat(Math.max(0, length - text.length())) + text;
      if (Gtin.valid(filled)) {
        notes.filledWithZeros(header);
        return filled;
      }
    }
    return text;
  }

  private @Nullable Object number(Place where, Header.Known header, TableCell cell) {
    String text = cell.text();
    Column.Kind kind = header.column().kind();
    Amount amount = Amount.of(cell);
    Numeral numeral = cell.number() == null ? Numeral.of(amount.number()) : null;
    BigDecimal number = cell.number() == null ? valueOf(numeral) : cell.number();
    if (number == null || number.signum() < 0) {
      return refused(where, header, text, "a number such as 12 or 12.5, not below 0");
    }
    Unit unit = amount.unit().isEmpty() ? header.unit() : Unit.of(amount.unit());
    boolean foreign = unit == null ? !amount.unit().isEmpty() : unit.kind() != kind;
    if (foreign || (unit == null && kind.unitNeeded())) {
      return refused(where, header, text, unitAsked(header));
    }
    if (numeral != null && numeral.ambiguous()) {
      TwoMeanings.Settled settled =
          meanings.settle(
              numeral, header, unit, value -> kept(header.column(), inKeptUnit(value, unit)));
      if (settled.value() == null) {
        return refused(where, header, text, settled.why());
      }
      number = settled.value();
      if (kept(header.column(), inKeptUnit(number, unit)) != null) {
        notes.settled(header, where, numeral, number, settled.why());
      }
    } else if (numeral != null && !obeysMark(numeral)) {
      return refused(where, header, text, "a number with a decimal " + mark.name());
    }
    BigDecimal exact = inKeptUnit(number, unit);
    Object kept = kept(header.column(), exact);
    if (kept == null) {
      return refused(where, header, text, bounds(header.column()));
    }
    if (unit != null && !unit.kept()) {
      notes.converted(header, unit);
    }
    if (kept instanceof Integer mm && kind == Column.Kind.LENGTH) {
      notes.kept(header, where, exact, mm);
    }
    return kept;
  }

  private static BigDecimal inKeptUnit(BigDecimal number, @Nullable Unit unit) {
    return unit == null ? number : unit.toKept(number);
  }

  private @Nullable BigDecimal valueOf(@Nullable Numeral numeral) {
    Character sign = mark.sign();
    return numeral == null ? null : numeral.read(sign == null ? '.' : sign);
  }

  /** False when the user said which decimal mark the file has, and the number shows the other. */
  private boolean obeysMark(Numeral numeral) {
    return !mark.given() || numeral.mark() == null || numeral.mark().equals(mark.sign());
  }

  /** Sizes to the nearest millimetre, masses as they are, the rest whole; null if out of bounds. */
  private static @Nullable Object kept(Column column, BigDecimal value) {
    if (column.kind() == Column.Kind.MASS) {
      double kg = value.doubleValue();
      return column.field().range().holds(kg) ? Double.valueOf(kg) : null;
    }
    BigDecimal whole = value.setScale(0, RoundingMode.HALF_UP);
    boolean fits = column.kind() == Column.Kind.LENGTH || whole.compareTo(value) == 0;
    return fits && column.field().range().holds(whole.doubleValue())
        ? Integer.valueOf(whole.intValueExact())
        : null;
  }

  private static String bounds(Column column) {
    String unit =
        switch (column.kind()) {
          case LENGTH -> " mm";
          case MASS -> " kg";
          default -> "";
        };
    return column.field().accepted() + unit;
  }

  /** What a number without a usable unit is answered with. */
  static String unitAsked(Header.Known header) {
    Column column = header.column();
    String units = column.kind().units();
    if (!column.kind().unitNeeded()) {
      return column.field().accepted() + (units.equals("none") ? "" : ", in " + units);
    }
    String other = column == Column.MASS ? "; how much a job counts stands under 'Job weight'" : "";
    return "a unit (%s) behind the number or in the header, such as '%s'%s"
        .formatted(units, column.titleWithUnit(), other);
  }

  private @Nullable Object refused(
      Place where, Header.Known header, String value, String accepted) {
    problems.add(where, header.written(), value, accepted);
    return null;
  }
}
