package rigmorrow.data.column;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.column.Column.Kind;

/**
 * Units a header or a cell may name. The inch is 25.4 mm and the pound 0.45359237 kg exactly (NIST
 * Special Publication 811, appendix B.8).
 */
enum Unit {
  MM(Kind.LENGTH, "1", "mm"),
  CM(Kind.LENGTH, "10", "cm"),
  M(Kind.LENGTH, "1000", "m"),
  IN(Kind.LENGTH, "25.4", "in", "inch", "inches", "\"", "″", "tomme", "tommer", "zoll"),
  KG(Kind.MASS, "1", "kg"),
  G(Kind.MASS, "0.001", "g"),
  LB(Kind.MASS, "0.45359237", "lb", "lbs"),
  V(Kind.VOLTS, "1", "V"),
  W(Kind.WATTS, "1", "W");

  private final Kind kind;
  private final BigDecimal factor;
  private final List<String> spellings;

  Unit(Kind kind, String factor, String... spellings) {
    this.kind = kind;
    this.factor = new BigDecimal(factor);
    this.spellings = List.of(spellings);
  }

  /** What it measures. */
  Kind kind() {
    return kind;
  }

  /** Every way to write it, the usual one first. */
  List<String> spellings() {
    return spellings;
  }

  /** How it is usually written. */
  String symbol() {
    return spellings.get(0);
  }

  /** An amount of this unit in the unit the shot list keeps: mm, kg, V or W. */
  BigDecimal toKept(BigDecimal amount) {
    return amount.multiply(factor);
  }

  /** True when a third decimal is a gram or a millimetre, which people do write. */
  boolean thousandthsMeasured() {
    return this == KG || this == M;
  }

  /** True when an amount is kept as it is. */
  boolean kept() {
    return factor.compareTo(BigDecimal.ONE) == 0;
  }

  /** The unit written so, upper and lower case alike; null when there is none. */
  static @Nullable Unit of(String written) {
    String lower = written.toLowerCase(Locale.ROOT);
    for (Unit unit : values()) {
      for (String spelling : unit.spellings) {
        if (spelling.toLowerCase(Locale.ROOT).equals(lower)) {
          return unit;
        }
      }
    }
    return null;
  }
}
