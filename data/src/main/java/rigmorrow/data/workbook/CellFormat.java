package rigmorrow.data.workbook;

import org.jspecify.annotations.Nullable;

/**
 * What a number format shows, as far as it changes what a cell says. Of the sections for positive
 * and other numbers the first counts (ECMA-376 part 1, 18.8.31).
 */
final class CellFormat {
  /** A digit that is shown even when it is a zero in front. */
  private static final char DIGIT = '\u0000';

  /** A digit that is not shown when it is a zero in front. */
  private static final char OPTIONAL_DIGIT = '\u0001';

  private boolean day;
  private boolean clock;
  private boolean monthOrMinute;

  /** False when there is more than whole digits to it: a point, grouping, a fraction. */
  private boolean whole = true;

  /** Digits, and the signs before and between them. */
  private String digits = "";

  private String behind = "";

  private CellFormat() {}

  /** The format with this code; null for a cell without one. */
  static CellFormat of(@Nullable String code) {
    CellFormat format = new CellFormat();
    if (code != null) {
      String general = "(?i)general";
      format.whole = !code.matches(".*" + general + ".*");
      format.read(code.replaceAll(general, "#"));
    }
    return format;
  }

  /** True when the number counts days and is shown as a day. */
  boolean date() {
    return day || (monthOrMinute && !clock);
  }

  /** True when the number counts days and is shown as a time. */
  boolean time() {
    return clock;
  }

  /** What stands behind the number, such as a unit. */
  String unit() {
    return behind.strip();
  }

  /**
   * A number as the format shows it: a whole one with its zeros in front and the signs before and
   * between its digits.
   *
   * @param plain its digits, with a decimal point where needed
   */
  String shown(String plain) {
    int first = firstDigit();
    if (!whole || first < 0 || !plain.matches("\\d+")) {
      return plain + behind;
    }
    StringBuilder shown = new StringBuilder();
    int left = plain.length();
    for (int at = digits.length() - 1; at >= 0; at--) {
      char sign = digits.charAt(at);
      if (sign != DIGIT && sign != OPTIONAL_DIGIT) {
        shown.insert(0, sign);
      } else if (left > 0) {
        int from = at == first ? 0 : left - 1;
        shown.insert(0, plain.substring(from, left));
        left = from;
      } else if (sign == DIGIT) {
        shown.insert(0, '0');
      }
    }
    return shown + behind;
  }

  private int firstDigit() {
    for (int at = 0; at < digits.length(); at++) {
      if (digits.charAt(at) == DIGIT || digits.charAt(at) == OPTIONAL_DIGIT) {
        return at;
      }
    }
    return -1;
  }

  private void read(String code) {
    StringBuilder signs = new StringBuilder();
    int at = 0;
    while (at < code.length() && code.charAt(at) != ';') {
      char sign = code.charAt(at);
      int end = end(code, at, sign);
      switch (sign) {
        case '"' -> signs.append(code, at + 1, Math.max(at + 1, end - 1));
        case '\\' -> signs.append(code, at + 1, end);
        case '[' -> clock |= code.substring(at, end).matches("(?i)\\[(?:h+|m+|s+)\\]");
        case '0' -> signs.append(DIGIT);
        case '#', '?' -> signs.append(OPTIONAL_DIGIT);
        case '_', '*' -> signs.append(""); // only widen the cell
        default -> {
          letter(Character.toLowerCase(sign));
          signs.append(sign);
        }
      }
      at = end;
    }
    String all = signs.toString();
    int last = Math.max(all.lastIndexOf(DIGIT), all.lastIndexOf(OPTIONAL_DIGIT));
    digits = all.substring(0, last + 1);
    behind = last < 0 ? "" : all.substring(last + 1).stripTrailing();
  }

  /** Where the sign at a place ends, with what belongs to it. */
  private static int end(String code, int at, char sign) {
    return switch (sign) {
      case '"' -> closing(code, '"', at);
      case '[' -> closing(code, ']', at);
      case '\\', '_', '*' -> Math.min(code.length(), at + 2);
      default -> at + 1;
    };
  }

  private static int closing(String code, char sign, int at) {
    int closing = code.indexOf(sign, at + 1);
    return closing < 0 ? code.length() : closing + 1;
  }

  private void letter(char sign) {
    switch (sign) {
      case 'y', 'd' -> day = true;
      case 'h', 's' -> clock = true;
      case 'm' -> monthOrMinute = true;
      case '.', ',', 'e', '%', '/', '@' -> whole = false;
      default -> {
        // Any other sign stands for itself.
      }
    }
  }
}
