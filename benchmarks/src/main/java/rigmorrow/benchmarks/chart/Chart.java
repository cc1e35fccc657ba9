package rigmorrow.benchmarks.chart;

import java.util.List;

/**
 * A drawing with what it shows as a table beside it.
 *
 * @param id unique on its page
 * @param title what it is
 * @param description what is to be seen, for those who cannot
 * @param height of the drawing; every one is {@link Canvas#WIDTH} wide
 * @param shapes in drawing order
 * @param heads of the table
 * @param rows of the table
 */
public record Chart(
    String id,
    String title,
    String description,
    int height,
    List<Shape> shapes,
    List<String> heads,
    List<List<String>> rows) {
  public Chart {
    shapes = List.copyOf(shapes);
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** What of the drawing is seen. */
  public String viewBox() {
    return "0 0 " + Canvas.WIDTH + " " + height;
  }
}
