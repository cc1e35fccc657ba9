package rigmorrow.app.whatif.page;

import java.util.List;

/**
 * A drawing with an axis that goes across and one that goes up.
 *
 * @param title what it shows
 * @param spoken the same for those who do not see it
 * @param across numbers of the axis below
 * @param up numbers of the axis at the left
 * @param width of the view box; a millimetre on paper has ten units
 * @param layers of the drawing, from below
 * @param base what the floor as it is looks like, in words
 * @param scenario what the scenario looks like, in words
 */
public record PlaneChart(
    String title,
    String spoken,
    List<Mark> across,
    List<Mark> up,
    int width,
    List<Layer> layers,
    String base,
    String scenario) {
  /** Width of one that has a row for itself. */
  static final int WIDE = 1600;

  /** Width of one that shares a row with another. */
  static final int NARROW = 700;

  /** Height of the view box. */
  public static final int HEIGHT = 320;

  public PlaneChart {
    across = List.copyOf(across);
    up = List.copyOf(up);
    layers = List.copyOf(layers);
  }

  /** What of the drawing is seen. */
  public String viewBox() {
    return "0 0 " + width + " " + HEIGHT;
  }
}
