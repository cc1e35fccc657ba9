package rigmorrow.app.print;

import java.util.Locale;

/**
 * A drawing of filled shapes as the path data of an SVG image, in whatever unit its view box has.
 * Only the commands M, L and Z with absolute places are used, so that {@link DrawingPainter} needs
 * to know no others.
 */
public final class Drawing {
  private final StringBuilder path = new StringBuilder();

  /** Adds a filled upright rectangle. */
  public void rectangle(double x, double y, double width, double height) {
    shape(x, y, x + width, y, x + width, y + height, x, y + height);
  }

  /** Adds the outline of a rectangle, drawn inside it. */
  public void outline(double x, double y, double width, double height, double thickness) {
    double wide = Math.min(thickness, width);
    rectangle(x, y, width, thickness);
    rectangle(x, y + height - thickness, width, thickness);
    rectangle(x, y, wide, height);
    rectangle(x + width - wide, y, wide, height);
  }

  /** Adds a filled shape with four corners, given as x and y in turn. */
  public void shape(double... corners) {
    for (int i = 0; i < corners.length; i += 2) {
      path.append(i == 0 ? 'M' : 'L').append(number(corners[i])).append(' ');
      path.append(number(corners[i + 1]));
    }
    path.append('Z');
  }

  /** The value of the attribute {@code d}. */
  public String path() {
    return path.toString();
  }

  private static String number(double value) {
    String exact = String.format(Locale.ROOT, "%.2f", value);
    return exact.replaceAll("\\.?0+$", "");
  }
}
