package rigmorrow.app.terminal;

import java.util.ArrayList;
import java.util.List;

/** Text measured, cut and broken by the columns it takes on a terminal. */
public final class Text {
  private static final String CUT = "…";

  private Text() {}

  /**
   * The text on one line: control characters, which a terminal could take for commands, become
   * spaces.
   */
  public static String clean(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u0080-\\u009f\\u2028\\u2029]+", " ");
  }

  /** Columns the text takes: two for wide East Asian characters and pictures, none for marks. */
  public static int columns(String text) {
    return text.codePoints().map(Text::columns).sum();
  }

  /** The text cut to at most so many columns, with "…" where something was cut. */
  public static String cut(String text, int columns) {
    String line = clean(text);
    if (columns(line) <= columns) {
      return line;
    }
    StringBuilder kept = new StringBuilder();
    int used = 0;
    for (int codePoint : line.codePoints().toArray()) {
      used += columns(codePoint);
      if (used > columns - 1) {
        break;
      }
      kept.appendCodePoint(codePoint);
    }
    return columns < 1 ? "" : kept.toString().stripTrailing() + CUT;
  }

  /** The text cut or filled with spaces on the right to just so many columns. */
  public static String left(String text, int columns) {
    String line = cut(text, columns);
    return line + " ".repeat(Math.max(0, columns - columns(line)));
  }

  /** The text cut or filled with spaces on the left to just so many columns. */
  public static String right(String text, int columns) {
    String line = cut(text, columns);
    return " ".repeat(Math.max(0, columns - columns(line))) + line;
  }

  /**
   * The text broken at spaces into lines of at most so many columns; a longer word is broken
   * inside.
   *
   * @param first put before the first line
   * @param other put before the others
   */
  public static List<String> wrap(String first, String other, String text, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : clean(text).strip().split(" +")) {
      String rest = word;
      while (!rest.isEmpty()) {
        int room = columns - columns(line.toString()) - (empty ? 0 : 1);
        if (columns(rest) <= room) {
          line.append(empty ? "" : " ").append(rest);
          empty = false;
          break;
        }
        if (empty) {
          String head = head(rest, Math.max(2, room));
          line.append(head);
          rest = rest.substring(head.length());
        }
        lines.add(line.toString());
        line = new StringBuilder(other);
        empty = true;
      }
    }
    if (!empty || lines.isEmpty()) {
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private static String head(String word, int columns) {
    int end = 0;
    int used = 0;
    while (end < word.length()) {
      int codePoint = word.codePointAt(end);
      used += columns(codePoint);
      if (used > columns) {
        break;
      }
      end += Character.charCount(codePoint);
    }
    return word.substring(0, Math.max(end, Character.charCount(word.codePointAt(0))));
  }

  private static int columns(int codePoint) {
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    boolean wide =
        codePoint >= 0x1100
            && (codePoint <= 0x115f
                || (codePoint >= 0x2e80 && codePoint <= 0xa4cf)
                || (codePoint >= 0xac00 && codePoint <= 0xd7a3)
                || (codePoint >= 0xf900 && codePoint <= 0xfaff)
                || (codePoint >= 0xfe30 && codePoint <= 0xfe6f)
                || (codePoint >= 0xff00 && codePoint <= 0xff60)
                || (codePoint >= 0xffe0 && codePoint <= 0xffe6)
                || (codePoint >= 0x1f000 && codePoint <= 0x1faff)
                || (codePoint >= 0x20000 && codePoint <= 0x3fffd));
    return wide ? 2 : 1;
  }
}
