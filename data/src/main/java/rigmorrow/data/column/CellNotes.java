package rigmorrow.data.column;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.data.problem.Place;

/** Counts what was made of the cells of each column, to be told to the user. */
final class CellNotes {
  /** Below this a size in millimetres is more often a slip of unit or decimal mark than true. */
  private static final int SMALL_MM = 10;

  /** What an item measures; an offset, a drop or a centre of mass may well be small. */
  private static final Set<Column> SIZES =
      EnumSet.of(
          Column.LENGTH,
          Column.WIDTH,
          Column.HEIGHT,
          Column.BASE_LENGTH,
          Column.BASE_WIDTH,
          Column.ROTATION_DIAMETER);

  private final Map<String, Map<Unit, Integer>> converted = new LinkedHashMap<>();
  private final Map<String, Integer> filledWithZeros = new LinkedHashMap<>();
  private final Map<Group, Count> settled = new LinkedHashMap<>();
  private final Map<String, Count> small = new LinkedHashMap<>();
  private final Map<String, Count> rounded = new LinkedHashMap<>();

  private record Group(String header, String why) {}

  /** A number of cells and the first of them. */
  private record Count(int number, String first) {
    static Count of(String first) {
      return new Count(1, first);
    }

    Count and(Count more) {
      return new Count(number + more.number, first);
    }

    String phrase(String one, String several) {
      return number == 1
          ? "1 " + one + ", " + first
          : number + " " + several + ", such as " + first;
    }
  }

  void converted(Header.Known header, Unit unit) {
    converted
        .computeIfAbsent(header.written(), key -> new EnumMap<>(Unit.class))
        .merge(unit, 1, Integer::sum);
  }

  void filledWithZeros(Header.Known header) {
    filledWithZeros.merge(header.written(), 1, Integer::sum);
  }

  /** A number that could be two was taken for one of them. */
  void settled(Header.Known header, Place where, Numeral numeral, BigDecimal value, String why) {
    String text = "%s as %s (%s)".formatted(numeral.written(), value.toPlainString(), where);
    settled.merge(new Group(header.written(), why), Count.of(text), Count::and);
  }

  /** A length was kept to the millimetre. */
  void kept(Header.Known header, Place where, BigDecimal exactMm, int keptMm) {
    if (SIZES.contains(header.column()) && keptMm < SMALL_MM) {
      small.merge(header.written(), Count.of(keptMm + " mm (" + where + ")"), Count::and);
    }
    if (exactMm.compareTo(BigDecimal.valueOf(keptMm)) != 0) {
      String exact = exactMm.stripTrailingZeros().toPlainString();
      String text = "%s to %d mm (%s)".formatted(exact, keptMm, where);
      rounded.merge(header.written(), Count.of(text), Count::and);
    }
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
                                unit.kind() == Column.Kind.MASS ? "kg" : "mm"))));
    return lines;
  }

  /** One line for each column in which something was put right, settled, rounded or looks odd. */
  List<String> remarks() {
    List<String> lines = new ArrayList<>();
    filledWithZeros.forEach(
        (header, count) ->
            lines.add(
                "%s: zeros in front put back in %d number%s"
                    .formatted(header, count, count == 1 ? "" : "s")));
    settled.forEach(
        (group, count) ->
            lines.add(
                "%s: %s, since %s"
                    .formatted(
                        group.header,
                        count.phrase(
                            "number with two meanings was read",
                            "numbers with two meanings were read"),
                        group.why)));
    rounded.forEach(
        (header, count) ->
            lines.add(header + ": " + count.phrase("size was rounded", "sizes were rounded")));
    small.forEach(
        (header, count) ->
            lines.add(
                "%s: %s; check unit and decimal mark"
                    .formatted(
                        header,
                        count.phrase(
                            "size is under " + SMALL_MM + " mm",
                            "sizes are under " + SMALL_MM + " mm"))));
    return lines;
  }
}
