package rigmorrow.app.whatif.page;

import rigmorrow.app.print.Drawing;

/**
 * A part of a drawing in one colour. What is to be told apart differs in lightness and in form too,
 * never by colour alone.
 *
 * @param path data of an SVG path
 * @param fill colour as a style sheet has it
 */
public record Layer(String path, String fill) {
  /** Lines behind everything. */
  static final String FAINT = "#d9d9d9";

  /** The floor as it is. */
  static final String BASE = "#9a9a9a";

  /** The scenario. */
  static final String SCENARIO = "#123f6b";

  /** Marks that must be seen. */
  static final String BLACK = "#000000";

  static Layer of(Drawing drawing, String fill) {
    return new Layer(drawing.path(), fill);
  }
}
