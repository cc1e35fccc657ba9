package rigmorrow.app.print;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Paints the {@link Drawing}s of a page, and no other SVG, as shapes of the PDF. */
final class DrawingPainter implements SVGDrawer {
  private static final int HEXADECIMAL = 16;
  private static final Pattern COMMAND =
      Pattern.compile("([ML])(-?[0-9.]+) (-?[0-9.]+)|(Z)", Pattern.CASE_INSENSITIVE);

  @Override
  public void importFontFaceRules(
      List<com.openhtmltopdf.css.sheet.FontFaceRule> fontFaces, SharedContext shared) {
    // Drawings have no text.
  }

  @Override
  public void addFontFile(File fontFile, String family, Integer weight, FontStyle style) {
    // Drawings have no text.
  }

  @Override
  public void close() {
    // Nothing is held open.
  }

  @Override
  public SVGImage buildSVGImage(
      Element svg,
      Box box,
      CssContext context,
      double widthDots,
      double heightDots,
      double dotsPerPixel) {
    String[] view = svg.getAttribute("viewBox").trim().split("\\s+");
    List<Filled> shapes = new ArrayList<>();
    NodeList paths = svg.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      Element path = (Element) paths.item(i);
      shapes.add(new Filled(shape(path.getAttribute("d")), colour(path.getAttribute("fill"))));
    }
    AffineTransform scale =
        AffineTransform.getScaleInstance(
            widthDots / Double.parseDouble(view[2]), heightDots / Double.parseDouble(view[3]));
    return new Painted(shapes, scale, (int) widthDots, (int) heightDots);
  }

  private static Path2D shape(String path) {
    Path2D shape = new Path2D.Double();
    Matcher commands = COMMAND.matcher(path);
    while (commands.find()) {
      if (commands.group(1) == null) {
        shape.closePath();
      } else if (commands.group(1).equals("M")) {
        shape.moveTo(number(commands, 2), number(commands, 3));
      } else {
        shape.lineTo(number(commands, 2), number(commands, 3));
      }
    }
    return shape;
  }

  /** Black where nothing is said; six hexadecimal digits otherwise. */
  private static FSRGBColor colour(String fill) {
    return fill.isEmpty()
        ? FSRGBColor.BLACK
        : new FSRGBColor(Integer.parseInt(fill.substring(1), HEXADECIMAL));
  }

  private static double number(Matcher commands, int group) {
    return Double.parseDouble(commands.group(group));
  }

  private record Filled(Path2D shape, FSRGBColor colour) {}

  private record Painted(List<Filled> shapes, AffineTransform scale, int width, int height)
      implements SVGImage {
    @Override
    public int getIntrinsicWidth() {
      return width;
    }

    @Override
    public int getIntrinsicHeight() {
      return height;
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
      AffineTransform place = AffineTransform.getTranslateInstance(x, y);
      place.concatenate(scale);
      for (Filled filled : shapes) {
        device.setColor(filled.colour());
        device.fill(place.createTransformedShape(filled.shape()));
      }
    }
  }
}
