package rigmorrow.app.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The two fonts that everything is printed in. They are read once; reading them shares nothing that
 * changes, so any thread may ask.
 */
public enum PrintFont {
  /** For running text. */
  REGULAR("DejaVuSansCondensed.ttf", 400),
  /** For names and whatever must be found at a glance. */
  BOLD("DejaVuSansCondensed-Bold.ttf", 700);

  /** What style sheets call the family. */
  public static final String FAMILY = "DejaVu Sans Condensed";

  /** Stands where a letter has no shape in the fonts: an empty box. */
  static final int UNKNOWN = '\u25a1';

  private static final double MM_PER_POINT = 25.4 / 72;

  private final String file;
  private final int weight;
  private final TrueTypeFont font;
  private final CmapLookup glyphs;

  PrintFont(String file, int weight) {
    this.file = file;
    this.weight = weight;
    try (InputStream stream = stream()) {
      this.font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      // Substitution of letter pairs is looked up for each text anew and doubles the time.
      font.setEnableGsub(false);
      this.glyphs = font.getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException("font " + file, e);
    }
  }

  /** The font file. */
  InputStream stream() {
    return Objects.requireNonNull(PrintFont.class.getResourceAsStream(file), file);
  }

  /** Weight as style sheets count it. */
  int weight() {
    return weight;
  }

  /** The font as it was read. */
  TrueTypeFont font() {
    return font;
  }

  /** Whether the letter has a shape. */
  boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /** How wide a text is in one line, in millimetres. */
  public double widthMm(String text, double sizePt) {
    long units = 0;
    try {
      for (int codePoint : text.codePoints().toArray()) {
        int shown = has(codePoint) ? codePoint : UNKNOWN;
        units += font.getAdvanceWidth(glyphs.getGlyphId(shown));
      }
      return units * sizePt * MM_PER_POINT / font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException("font " + file, e);
    }
  }

  /** The text, or as much of it as fits with an ellipsis behind it. */
  public String shortened(String text, double sizePt, double mostMm) {
    if (widthMm(text, sizePt) <= mostMm) {
      return text;
    }
    int[] letters = text.codePoints().toArray();
    for (int count = letters.length - 1; count > 0; count--) {
      String shorter = new String(letters, 0, count).stripTrailing() + "…";
      if (widthMm(shorter, sizePt) <= mostMm) {
        return shorter;
      }
    }
    return "…";
  }
}
