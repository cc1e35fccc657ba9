package rigmorrow.app.print;

/** Sheets of paper that pages are laid out for. */
public enum Paper {
  /** ISO 216. */
  A4("A4", 210, 297),
  /** 8.5 x 11 inches. */
  LETTER("letter", 215.9, 279.4);

  private final String cssName;
  private final double widthMm;
  private final double heightMm;

  Paper(String cssName, double widthMm, double heightMm) {
    this.cssName = cssName;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** What a style sheet calls it. */
  public String cssName() {
    return cssName;
  }

  /** Width upright. */
  public double widthMm() {
    return widthMm;
  }

  /** Height upright. */
  public double heightMm() {
    return heightMm;
  }
}
