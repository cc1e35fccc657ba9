package rigmorrow.app.labels;

import rigmorrow.app.print.Paper;

/**
 * How labels lie on a sheet.
 *
 * @param paper of the sheet
 * @param columns side by side, at least 1
 * @param rows below each other, at least 1
 */
public record LabelGrid(Paper paper, int columns, int rows) {
  /** Most office printers leave about 5 mm blank at every edge (common practice). */
  static final double MARGIN_MM = 8;

  /** Between the edge of a label and what is printed on it. */
  static final double PADDING_MM = 2.5;

  /** Keeps the last row on its page when a printer rounds lengths up. */
  private static final double SLACK_MM = 0.5;

  double labelWidthMm() {
    return (paper.widthMm() - 2 * MARGIN_MM - SLACK_MM) / columns;
  }

  double labelHeightMm() {
    return (paper.heightMm() - 2 * MARGIN_MM - SLACK_MM) / rows;
  }

  double contentWidthMm() {
    return labelWidthMm() - 2 * PADDING_MM;
  }

  double contentHeightMm() {
    return labelHeightMm() - 2 * PADDING_MM;
  }

  int labelsPerPage() {
    return columns * rows;
  }
}
