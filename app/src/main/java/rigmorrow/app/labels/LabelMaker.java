package rigmorrow.app.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigmorrow.app.print.PrintFont;

/** Fits what a label says into the room that it has. */
final class LabelMaker {
  static final double NAME_PT = 8;
  private static final double[] ARTICLE_PT = {11, 9, 7.5};
  static final double JOBS_PT = 7;
  static final double ENCODED_PT = 7.5;

  /** Height of a line as a multiple of the size of its letters. */
  static final double LINE_HEIGHT = 1.2;

  /** Between the text and the bars. */
  static final double GAP_MM = 1;

  private static final double MM_PER_POINT = 25.4 / 72;
  private static final int MOST_LINES_OF_JOBS = 2;

  /** A browser may put another font in place of ours, which is a little wider at worst. */
  private static final double USED_WIDTH = 0.94;

  private final LabelGrid grid;
  private final Symbols symbols;
  private final double lineMm;

  LabelMaker(LabelGrid grid) {
    this.grid = grid;
    this.symbols = new Symbols(grid.contentWidthMm());
    this.lineMm = grid.contentWidthMm() * USED_WIDTH;
  }

  /** The label, or empty where its article number and a readable code do not fit. */
  Optional<Label> of(Sample sample) {
    double articlePt = articlePt(sample.article());
    if (lineMm <= PrintFont.BOLD.widthMm("MM", articlePt)) {
      return Optional.empty();
    }
    String name = oneLine(sample.name());
    List<String> names = List.of(PrintFont.BOLD.shortened(name, NAME_PT, lineMm));
    List<String> article = wrapped(sample.article(), PrintFont.BOLD, articlePt);
    List<String> jobs = jobs(sample);
    double textMm =
        height(names.size(), NAME_PT)
            + height(article.size(), articlePt)
            + height(jobs.size(), JOBS_PT)
            + GAP_MM;
    double restMm = grid.contentHeightMm() - textMm;
    String content = sample.gtin() == null ? sample.article() : sample.gtin();
    List<String> encoded = wrapped(content, PrintFont.REGULAR, ENCODED_PT);
    return symbol(sample, restMm - height(encoded.size(), ENCODED_PT))
        .map(symbol -> new Label(names, article, articlePt, jobs, symbol, encoded))
        .or(
            () ->
                // The article number stands above the code already.
                sample.gtin() == null
                    ? symbol(sample, restMm)
                        .map(
                            symbol -> new Label(names, article, articlePt, jobs, symbol, List.of()))
                    : Optional.empty());
  }

  private Optional<Symbol> symbol(Sample sample, double heightMm) {
    return symbols.of(sample.article(), sample.gtin(), heightMm);
  }

  /** The largest letters in which it fits one line; the smallest where it fits none. */
  private double articlePt(String article) {
    for (double sizePt : ARTICLE_PT) {
      if (PrintFont.BOLD.widthMm(article, sizePt) <= lineMm) {
        return sizePt;
      }
    }
    return ARTICLE_PT[ARTICLE_PT.length - 1];
  }

  private static double height(int lines, double sizePt) {
    return lines * sizePt * LINE_HEIGHT * MM_PER_POINT;
  }

  /** As many jobs as fit, and how many more there are. */
  private List<String> jobs(Sample sample) {
    String which = ", sample " + sample.id();
    for (int shown = sample.jobs().size(); shown > 0; shown--) {
      int more = sample.jobs().size() - shown;
      String text =
          (sample.jobs().size() == 1 ? "Job " : "Jobs ")
              + String.join(", ", sample.jobs().subList(0, shown))
              + (more == 0 ? "" : " and " + more + " more")
              + which;
      List<String> lines = wrapped(oneLine(text), PrintFont.REGULAR, JOBS_PT);
      if (lines.size() <= MOST_LINES_OF_JOBS) {
        return lines;
      }
    }
    return List.of(shortened("Job " + sample.jobs().get(0)), shortened("sample " + sample.id()));
  }

  private String shortened(String text) {
    return PrintFont.REGULAR.shortened(oneLine(text), JOBS_PT, lineMm);
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  /** Lines that fit; broken at a space where there is one, anywhere else where there is none. */
  private List<String> wrapped(String text, PrintFont font, double sizePt) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (font.widthMm(rest, sizePt) > lineMm) {
      int end = rest.offsetByCodePoints(0, 1);
      int space = 0;
      while (font.widthMm(rest.substring(0, rest.offsetByCodePoints(end, 1)), sizePt) <= lineMm) {
        space = rest.charAt(end) == ' ' ? end : space;
        end = rest.offsetByCodePoints(end, 1);
      }
      int cut = space > 0 ? space + 1 : end;
      lines.add(rest.substring(0, cut));
      rest = rest.substring(cut);
    }
    lines.add(rest);
    return lines;
  }
}
