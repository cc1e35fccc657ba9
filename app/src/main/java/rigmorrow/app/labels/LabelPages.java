package rigmorrow.app.labels;

import java.util.List;
import java.util.Locale;
import rigmorrow.app.runsheet.text.PlanStamp;

/**
 * Everything that the template prints.
 *
 * @param stamp which plan the labels are of, in the margin of every page
 * @param pages of rows of labels
 * @param forPdf true for the page that becomes a PDF file, false for one that a browser shows
 */
record LabelPages(
    String title, PlanStamp stamp, LabelGrid grid, List<List<List<Label>>> pages, boolean forPdf) {
  LabelPages asPdf() {
    return new LabelPages(title, stamp, grid, pages, true);
  }

  /** A length as a style sheet writes it. */
  static String mm(double length) {
    return String.format(Locale.ROOT, "%.3fmm", length);
  }
}
