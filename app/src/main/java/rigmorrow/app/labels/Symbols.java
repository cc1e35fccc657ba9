package rigmorrow.app.labels;

import com.google.zxing.EncodeHintType;
import com.google.zxing.MultiFormatWriter;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.print.Drawing;

/**
 * Draws the bar code of a label: the trade item number where there is one; else the article number
 * as Code 128 where that fits, and as QR code where it does not.
 */
final class Symbols {
  private static final double TALLEST_BARS_MM = 15;
  private static final double SHORTEST_BARS_MM = 6;
  private static final int LONGEST_CODE_128 = 80;

  private final double widthMm;

  /**
   * @param widthMm that a code may take
   */
  Symbols(double widthMm) {
    this.widthMm = widthMm;
  }

  /** The code, or empty where there is no room for one that can be read. */
  Optional<Symbol> of(String article, @Nullable String gtin, double heightMm) {
    if (gtin != null) {
      return drawn(Symbology.ofGtin(gtin), gtin, heightMm);
    }
    boolean plain = article.matches("[ -~]{1," + LONGEST_CODE_128 + "}");
    return (plain ? drawn(Symbology.CODE_128, article, heightMm) : Optional.<Symbol>empty())
        .or(() -> drawn(Symbology.QR, article, heightMm));
  }

  private Optional<Symbol> drawn(Symbology symbology, String content, double heightMm) {
    BitMatrix modules;
    try {
      modules = modules(symbology, content);
    } catch (WriterException e) {
      return Optional.empty(); // more than the code can hold
    }
    int columns = symbology.quietLeft() + modules.getWidth() + symbology.quietRight();
    boolean square = symbology.square();
    double across = square ? Math.min(widthMm, heightMm) : widthMm;
    double moduleMm = Math.min(symbology.usualModuleMm(), across / columns);
    double tall = square ? columns * moduleMm : Math.min(TALLEST_BARS_MM, heightMm);
    if (moduleMm < symbology.leastModuleMm() || tall < SHORTEST_BARS_MM) {
      return Optional.empty();
    }
    int quietAbove = square ? symbology.quietLeft() : 0;
    return Optional.of(
        new Symbol(
            symbology.label(),
            path(modules, symbology.quietLeft(), quietAbove),
            columns,
            modules.getHeight() + 2 * quietAbove,
            columns * moduleMm,
            tall));
  }

  private static BitMatrix modules(Symbology symbology, String content) throws WriterException {
    Map<EncodeHintType, Object> hints =
        symbology.square()
            ? Map.of(
                EncodeHintType.MARGIN,
                0,
                EncodeHintType.CHARACTER_SET,
                StandardCharsets.UTF_8,
                EncodeHintType.ERROR_CORRECTION,
                ErrorCorrectionLevel.M)
            : Map.of(EncodeHintType.MARGIN, 0);
    return new MultiFormatWriter().encode(content, symbology.format(), 0, 0, hints);
  }

  /** Dark modules that follow each other in a row become one rectangle. */
  private static String path(BitMatrix modules, int left, int top) {
    Drawing drawing = new Drawing();
    for (int row = 0; row < modules.getHeight(); row++) {
      int from = 0;
      for (int column = 0; column <= modules.getWidth(); column++) {
        if (column == modules.getWidth() || !modules.get(column, row)) {
          if (column > from) {
            drawing.rectangle(left + from, top + row, column - from, 1);
          }
          from = column + 1;
        }
      }
    }
    return drawing.path();
  }
}
