package rigmorrow.app.labels;

/**
 * A bar code as a drawing with its quiet zones.
 *
 * @param kind what it is, such as EAN-13
 * @param path outline of the dark modules as SVG path data, a module being one unit wide
 * @param columns modules across, quiet zones included
 * @param rows modules down, quiet zones included; 1 for bars, which may be of any height
 * @param widthMm how wide it is printed
 * @param heightMm how tall it is printed
 */
record Symbol(String kind, String path, int columns, int rows, double widthMm, double heightMm) {
  /** The view box of the drawing. */
  String viewBox() {
    return "0 0 " + columns + " " + rows;
  }
}
