package rigmorrow.data.column;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.table.TableOptions;

/**
 * A number as written, before it is known which sign is the decimal mark.
 *
 * @param written as it stands in the file
 * @param mark the decimal mark that the number itself shows; null when it shows none
 * @param value what it is; null when that depends on the decimal mark
 */
public record Numeral(String written, @Nullable Character mark, @Nullable BigDecimal value) {
  private static final int LONGEST = 40;
  private static final Pattern WHOLE = Pattern.compile("\\d+");
  private static final Pattern ONE_SIGN = Pattern.compile("(\\d*)([.,])(\\d+)");
  private static final Pattern ONE_GROUP = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
  private static final Pattern GROUPS =
      Pattern.compile(
          "[1-9]\\d{0,2}(?:([.,' ’\\u00a0\\u202f])\\d{3})(?:\\1\\d{3})*(?:([.,])\\d+)?");

  /** The number in a text, or null when there is none that can be told for sure. */
  public static @Nullable Numeral of(String written) {
    if (written.length() > LONGEST) {
      return null;
    }
    if (WHOLE.matcher(written).matches()) {
      return new Numeral(written, null, new BigDecimal(written));
    }
    if (ONE_GROUP.matcher(written).matches()) {
      return new Numeral(written, null, null);
    }
    Matcher oneSign = ONE_SIGN.matcher(written);
    if (oneSign.matches()) {
      char mark = oneSign.group(2).charAt(0);
      return new Numeral(written, mark, plain(written, mark));
    }
    Matcher groups = GROUPS.matcher(written);
    if (!groups.matches()) {
      return null;
    }
    char grouping = groups.group(1).charAt(0);
    Character mark = groups.group(2) == null ? null : Character.valueOf(groups.group(2).charAt(0));
    if (mark != null && mark == grouping) {
      return null;
    }
    if (mark == null && TableOptions.DECIMAL_MARKS.indexOf(grouping) >= 0) {
      mark = grouping == ',' ? '.' : ',';
    }
    return new Numeral(written, mark, plain(written, mark));
  }

  /** True when it could be a number of thousands or one with three decimals. */
  public boolean ambiguous() {
    return value == null;
  }

  /**
   * The comma or point of a number that could be two.
   *
   * @throws IllegalStateException when it has one meaning
   */
  char sign() {
    if (!ambiguous()) {
      throw new IllegalStateException(written + " has one meaning");
    }
    return written.indexOf(',') >= 0 ? ',' : '.';
  }

  /** What it is when the decimal mark is this one. */
  public BigDecimal read(char decimalMark) {
    return value != null ? value : plain(written, decimalMark);
  }

  private static BigDecimal plain(String written, @Nullable Character mark) {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < written.length(); i++) {
      char sign = written.charAt(i);
      if (mark != null && sign == mark) {
        digits.append('.');
      } else if (sign >= '0' && sign <= '9') {
        digits.append(sign);
      }
    }
    return new BigDecimal(digits.toString());
  }
}
