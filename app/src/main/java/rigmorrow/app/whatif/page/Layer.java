package rigmorrow.app.whatif.page;

import rigmorrow.app.print.Drawing;

/**
 * A part of a drawing in one colour.
 *
 * @param path data of an SVG path
 * @param ink what it stands for
 */
public record Layer(String path, Ink ink) {
  static Layer of(Drawing drawing, Ink ink) {
    return new Layer(drawing.path(), ink);
  }
}
