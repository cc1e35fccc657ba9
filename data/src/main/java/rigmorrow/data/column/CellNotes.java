package rigmorrow.data.column;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.data.problem.Examples;
import rigmorrow.data.problem.Place;
import rigmorrow.data.shot.SmallSizes;

/** Counts what was made of the cells of each column, to be told to the user. */
final class CellNotes {
  private final Map<String, Map<Unit, Integer>> converted = new LinkedHashMap<>();
  private final Map<String, Integer> filledWithZeros = new LinkedHashMap<>();
  private final Map<Group, Examples> settled = new LinkedHashMap<>();
  private final SmallSizes small = new SmallSizes();
  private final Map<String, Examples> rounded = new LinkedHashMap<>();

  private record Group(String header, String why) {}

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
    settled.merge(new Group(header.written(), why), Examples.of(text), Examples::and);
  }

  /** A length was kept to the millimetre. */
  void kept(Header.Known header, Place where, BigDecimal exactMm, int keptMm) {
    small.take(header.column().field(), header.written(), keptMm, where.text());
    if (exactMm.compareTo(BigDecimal.valueOf(keptMm)) != 0) {
      String exact = exactMm.stripTrailingZeros().toPlainString();
      String text = "%s to %d mm (%s)".formatted(exact, keptMm, where);
      rounded.merge(header.written(), Examples.of(text), Examples::and);
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
    lines.addAll(small.lines());
    return lines;
  }
}
