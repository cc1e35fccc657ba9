package rigmorrow.benchmarks.chart;

/** A part of a drawing; how it looks is the style sheet's matter. */
public sealed interface Shape {
  /** Class of the style sheet. */
  String look();

  /**
   * A line or a filled form.
   *
   * @param path data of an SVG path
   */
  record Path(String look, String path) implements Shape {}

  /**
   * A text.
   *
   * @param anchor start, middle or end: which part of it stands at x
   */
  record Text(String look, String x, String y, String anchor, String text) implements Shape {}
}
