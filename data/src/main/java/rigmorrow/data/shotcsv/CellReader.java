package rigmorrow.data.shotcsv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.shot.HeightSource;

/** Reads one cell as the kind of value its column has, and counts what was converted. */
final class CellReader {
  private static final int LONGEST_VALUE = 100;
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
  private static final Pattern WITH_UNIT = Pattern.compile("(.*\\d)\\s*([^\\d\\s.,]+)");
  private static final Pattern SHORTENED = Pattern.compile("\\d[.,]\\d+[eE]\\+\\d+");
  private static final Pattern FORMULA_TEXT = Pattern.compile("=\"([^\"]*)\"");

  /**
   * A number with what stands behind it.
   *
   * @param unit empty when none
   */
  record Amount(String number, String unit) {
    static Amount of(String text) {
      Matcher matcher = WITH_UNIT.matcher(text);
      return text.length() <= LONGEST_VALUE && matcher.matches()
          ? new Amount(matcher.group(1), matcher.group(2))
          : new Amount(text, "");
    }
  }

  private final Problems problems;
  private final LocalDate planDate;
  private final @Nullable Character mark;
  private final boolean markGiven;
  private final Map<String, Map<CsvUnit, Integer>> converted = new LinkedHashMap<>();

  /**
   * @param mark the decimal mark; null when it is not settled
   * @param markGiven true when the user said so, and any other is a slip
   */
  CellReader(Problems problems, LocalDate planDate, @Nullable Character mark, boolean markGiven) {
    this.problems = problems;
    this.planDate = planDate;
    this.mark = mark;
    this.markGiven = markGiven;
  }

  /**
   * The value of a cell that is not empty.
   *
   * @return null when it cannot be read; that is noted
   */
  @Nullable Object read(String where, CsvHeader.Known header, String text) {
    CsvColumn.Kind kind = header.column().kind();
    if (kind == CsvColumn.Kind.TEXT) {
      return text(where, header, text);
    }
    if (text.length() > LONGEST_VALUE) {
      return refused(where, header, text, header.column().field().accepted());
    }
    return switch (kind) {
      case TIME -> {
        CsvTimes.Reading time = CsvTimes.read(text, planDate);
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
      default -> number(where, header, text);
    };
  }

  /** One line for each column and unit that was converted. */
  List<String> conversions() {
    List<String> lines = new ArrayList<>();
    converted.forEach(
        (header, counts) ->
            counts.forEach(
                (unit, count) ->
                    lines.add(
                        "%s: %d value%s converted from %s to %s"
                            .formatted(
                                header,
                                count,
                                count == 1 ? "" : "s",
                                unit.symbol(),
                                unit.kind() == CsvColumn.Kind.MASS ? "kg" : "mm"))));
    return lines;
  }

  /** A text as it is meant: without the formula that keeps its leading zeros (="00417"). */
  static String plainText(String text) {
    Matcher formula = FORMULA_TEXT.matcher(text);
    return formula.matches() ? formula.group(1) : text;
  }

  private @Nullable Object text(String where, CsvHeader.Known header, String text) {
    boolean shortened = SHORTENED.matcher(text).matches();
    if (shortened) {
      refused(where, header, text, "the whole number; the spreadsheet has shortened it");
    }
    return shortened && header.column() == CsvColumn.GTIN ? null : plainText(text);
  }

  private @Nullable Object number(String where, CsvHeader.Known header, String text) {
    CsvColumn.Kind kind = header.column().kind();
    Amount amount = Amount.of(text);
    CsvUnit unit = amount.unit().isEmpty() ? header.unit() : CsvUnit.of(amount.unit());
    boolean foreign = unit == null ? !amount.unit().isEmpty() : unit.kind() != kind;
    Numeral numeral = Numeral.of(amount.number());
    if (numeral == null) {
      return refused(where, header, text, "a number such as 12 or 12.5, not below 0");
    }
    if (foreign || (unit == null && kind.unitNeeded())) {
      return refused(where, header, text, unitAsked(header));
    }
    if (numeral.ambiguous() && mark == null) {
      return refused(where, header, text, clearer(amount.number()));
    }
    if (markGiven && mark != null && numeral.mark() != null && !numeral.mark().equals(mark)) {
      return refused(where, header, text, "a number with a decimal " + CsvNotes.name(mark));
    }
    BigDecimal value = numeral.read(mark == null ? '.' : mark);
    Object kept = kept(header.column(), unit == null ? value : unit.toKept(value));
    if (kept == null) {
      return refused(where, header, text, bounds(header.column()));
    }
    if (unit != null && !unit.kept()) {
      converted
          .computeIfAbsent(header.written(), key -> new EnumMap<>(CsvUnit.class))
          .merge(unit, 1, Integer::sum);
    }
    return kept;
  }

  /** Sizes to the nearest millimetre, masses as they are, the rest whole; null if out of bounds. */
  private static @Nullable Object kept(CsvColumn column, BigDecimal value) {
    if (column.kind() == CsvColumn.Kind.MASS) {
      double kg = value.doubleValue();
      return column.field().range().holds(kg) ? Double.valueOf(kg) : null;
    }
    BigDecimal whole = value.setScale(0, RoundingMode.HALF_UP);
    boolean fits = column.kind() == CsvColumn.Kind.LENGTH || whole.compareTo(value) == 0;
    return fits && column.field().range().holds(whole.doubleValue())
        ? Integer.valueOf(whole.intValueExact())
        : null;
  }

  private static String bounds(CsvColumn column) {
    String unit =
        switch (column.kind()) {
          case LENGTH -> " mm";
          case MASS -> " kg";
          default -> "";
        };
    return column.field().accepted() + unit;
  }

  /** What a number without a usable unit is answered with. */
  static String unitAsked(CsvHeader.Known header) {
    CsvColumn column = header.column();
    String units = column.kind().units();
    if (!column.kind().unitNeeded()) {
      return column.field().accepted() + (units.equals("none") ? "" : ", in " + units);
    }
    String other =
        column == CsvColumn.MASS ? "; how much a job counts stands under 'Job weight'" : "";
    return "a unit (%s) behind the number or in the header, such as '%s'%s"
        .formatted(units, column.titleWithUnit(), other);
  }

  /** Shows both meanings in a form that has only one. */
  private static String clearer(String number) {
    return "%s0 or %s; or say which decimal mark the file has (--decimal)"
        .formatted(number, number.replaceAll("[.,]", ""));
  }

  private @Nullable Object refused(
      String where, CsvHeader.Known header, String value, String accepted) {
    problems.add(where, header.written(), value, accepted);
    return null;
  }
}
