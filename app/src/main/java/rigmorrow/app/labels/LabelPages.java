package rigmorrow.app.labels;

import java.util.List;
import java.util.Locale;

/**
 * Everything that the template prints.
 *
 * @param pages of rows of labels
 */
record LabelPages(String title, LabelGrid grid, List<List<List<Label>>> pages) {
  /** A length as a style sheet writes it. */
  static String mm(double length) {
    return String.format(Locale.ROOT, "%.3fmm", length);
  }
}
