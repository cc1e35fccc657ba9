package rigmorrow.benchmarks.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects the shapes of a drawing. Peers differ by form and dashes, not by colour alone. */
final class Canvas {
  /** Of every drawing, in the units of its view box. */
  static final int WIDTH = 720;

  private static final double MARK = 4.5;

  /** Corners of the marks as x and y in turn, in parts of {@link #MARK}; the first is a disc. */
  private static final double[][] MARKS = {
    {},
    {-1, -1, 1, -1, 1, 1, -1, 1},
    {0, -1.2, 1.1, 0.9, -1.1, 0.9},
    {0, -1.3, 1.3, 0, 0, 1.3, -1.3, 0},
    {-1.1, -0.9, 1.1, -0.9, 0, 1.2},
    {
      -1.3, -0.35, -0.35, -0.35, -0.35, -1.3, 0.35, -1.3, 0.35, -0.35, 1.3, -0.35, 1.3, 0.35, 0.35,
      0.35, 0.35, 1.3, -0.35, 1.3, -0.35, 0.35, -1.3, 0.35
    }
  };

  private final List<Shape> shapes = new ArrayList<>();

  void line(String look, double... points) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < points.length; i += 2) {
      path.append(i == 0 ? "M" : "L").append(number(points[i])).append(' ');
      path.append(number(points[i + 1]));
    }
    shapes.add(new Shape.Path(look, path.toString()));
  }

  void bar(String look, double x, double y, double width, double height) {
    String path =
        "M"
            + number(x)
            + " "
            + number(y)
            + "h"
            + number(width)
            + "v"
            + number(height)
            + "h"
            + number(-width)
            + "Z";
    shapes.add(new Shape.Path(look, path));
  }

  /** The mark of a peer, by its number in the order of tables. */
  void mark(int peer, double x, double y) {
    double[] corners = MARKS[peer % MARKS.length];
    StringBuilder path = new StringBuilder();
    if (corners.length == 0) {
      String arc = "a" + MARK + " " + MARK + " 0 1 0 ";
      path.append("M").append(number(x - MARK)).append(' ').append(number(y));
      path.append(arc).append(2 * MARK).append(" 0").append(arc).append(-2 * MARK).append(" 0Z");
    }
    for (int i = 0; i < corners.length; i += 2) {
      path.append(i == 0 ? "M" : "L").append(number(x + MARK * corners[i])).append(' ');
      path.append(number(y + MARK * corners[i + 1]));
    }
    if (corners.length > 0) {
      path.append("Z");
    }
    shapes.add(new Shape.Path("mark p" + look(peer), path.toString()));
  }

  /** The line of a peer with its dashes. */
  void curve(int peer, double... points) {
    line("curve l" + look(peer), points);
  }

  void text(String look, double x, double y, String anchor, String text) {
    shapes.add(new Shape.Text(look, number(x), number(y), anchor, text));
  }

  /** Names of the peers with their marks, from a place on; gives the height that it takes. */
  void legend(List<String> peers, List<Integer> shown, boolean lines, double x, double y) {
    double at = x;
    for (int peer : shown) {
      if (lines) {
        curve(peer, at, y - 4, at + 26, y - 4);
      }
      mark(peer, at + (lines ? 13 : 6), y - 4);
      double begin = at + (lines ? 32 : 16);
      text("word", begin, y, "start", peers.get(peer));
      at = begin + 7.2 * peers.get(peer).length() + 18;
    }
  }

  List<Shape> shapes() {
    return List.copyOf(shapes);
  }

  private static int look(int peer) {
    return peer % MARKS.length;
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
  }
}
