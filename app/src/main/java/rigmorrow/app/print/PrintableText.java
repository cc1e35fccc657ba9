package rigmorrow.app.print;

import java.util.Set;
import java.util.stream.Collectors;

/** Makes a text fit for XML and for the fonts. */
public final class PrintableText {
  private PrintableText() {}

  /**
   * The text with a space for everything that XML does not allow: control characters other than the
   * line feed, halves of pairs, and code points that are no characters. Source: XML 1.0, production
   * 2.
   */
  public static String forXml(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints().forEach(letter -> clean.appendCodePoint(allowed(letter) ? letter : ' '));
    return clean.toString();
  }

  private static boolean allowed(int codePoint) {
    return codePoint == '\n'
        || (!Character.isISOControl(codePoint)
            && (codePoint < Character.MIN_SURROGATE || codePoint > Character.MAX_SURROGATE)
            && codePoint != 0xfffe
            && codePoint != 0xffff);
  }

  /** The text with an empty box for every letter that has no shape in the fonts. */
  static String forFonts(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .filter(letter -> !ignorable(letter))
        .forEach(letter -> shown.appendCodePoint(printable(letter) ? letter : PrintFont.UNKNOWN));
    return shown.toString();
  }

  /** The letters of the text that have no shape in the fonts. */
  static Set<String> unprintable(String text) {
    return text.codePoints()
        .filter(letter -> !ignorable(letter) && !printable(letter))
        .mapToObj(Character::toString)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static boolean printable(int codePoint) {
    return Character.isWhitespace(codePoint)
        || (PrintFont.REGULAR.has(codePoint) && PrintFont.BOLD.has(codePoint));
  }

  /** Joiners, direction marks and variation selectors have no shape of their own. */
  private static boolean ignorable(int codePoint) {
    return Character.getType(codePoint) == Character.FORMAT
        || (codePoint >= 0xfe00 && codePoint <= 0xfe0f);
  }
}
