package rigmorrow.app.whatif.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.print.PdfPages;
import rigmorrow.app.print.PrintableText;
import rigmorrow.app.report.Counted;
import rigmorrow.app.whatif.Assumptions;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.FigureText;
import rigmorrow.app.whatif.ResultSentences;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.ScenarioResult;

/**
 * Makes the report of a comparison. The same cells, as many of them there before, give the same
 * bytes.
 */
public final class ReportPage {
  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "rigmorrow.app");

  private static final int MOST_SIDE_BY_SIDE = 4;

  private final Compared compared;
  private final AskedBy asked;
  private final Paper paper;
  private final FigureText figures;
  private final ResultSentences sentences;

  /**
   * @param compared at least one scenario of which can be compared already
   * @param asked where the reader can ask for more
   * @param paper to print on
   */
  public ReportPage(Compared compared, AskedBy asked, Paper paper) {
    this.compared = compared;
    this.asked = asked;
    this.paper = paper;
    String currency = compared.costs().currency();
    this.figures = new FigureText(currency);
    this.sentences = new ResultSentences(currency, compared.hasMoney());
  }

  /** One HTML file that needs neither network nor script; encode it as UTF-8. */
  public String html() {
    return page(false);
  }

  /** One PDF file. */
  public PdfFile pdf() {
    return PdfPages.of(page(true));
  }

  private String page(boolean forPdf) {
    StringOutput output = new StringOutput();
    TEMPLATES.render("whatif/page/report.jte", document(forPdf), output);
    return PrintableText.forXml(output.toString());
  }

  /**
   * Everything that the report says and draws.
   *
   * @param forPdf true for what becomes a PDF file, false for what a browser shows
   */
  public ReportDocument document(boolean forPdf) {
    List<ScenarioResult> results = compared.results();
    boolean money = compared.hasMoney();
    boolean comparable = results.stream().anyMatch(result -> result.payoff().isPresent());
    SavingCharts charts = new SavingCharts(compared.costs().currency());
    ReportSections sections = new ReportSections(compared, asked, charts, figures, sentences);
    return new ReportDocument(
        compared.study().name(),
        subtitle(),
        warnings(),
        Assumptions.first(compared, asked.demands()),
        results.stream().map(sections::answer).toList(),
        money && comparable ? charts.savings(results) : null,
        table(results),
        compared.again().map(sentences::luck).orElse(""),
        sections.all(results),
        OneMoreTable.of(compared, charts),
        Assumptions.of(compared),
        compared.program(),
        paper,
        forPdf);
  }

  private String subtitle() {
    int days = compared.days().size();
    return Counted.of(compared.study().scenarios().size(), "scenario")
        + " against the floor as it is, on "
        + Counted.of(days, "day")
        + " from "
        + compared.days().get(0).name()
        + " to "
        + compared.days().get(days - 1).name()
        + "; "
        + compared.settings().effort()
        + " for each plan, "
        + Counted.of(compared.settings().seeds(), "seed");
  }

  private List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    if (!compared.whole()) {
      warnings.add(
          "Not finished: "
              + compared.cells().all().size()
              + " of "
              + compared.all()
              + " plans are made; figures rest on the days that are there.");
    }
    if (compared.broken() > 0) {
      warnings.add(Counted.of(compared.broken(), "plan") + " break rules that must hold.");
    }
    return warnings;
  }

  private static List<Figure> told(Compared compared) {
    return FigureText.TOLD.stream()
        .filter(figure -> figure != Figure.COST || compared.hasMoney())
        .toList();
  }

  /** All figures of all scenarios; many scenarios stand below one another. */
  private ReportDocument.FigureTable table(List<ScenarioResult> results) {
    return results.size() > MOST_SIDE_BY_SIDE ? below(results) : sideBySide(results);
  }

  private ReportDocument.FigureTable sideBySide(List<ScenarioResult> results) {
    List<String> heads = new ArrayList<>(List.of("Mean of the days", "As it is"));
    results.forEach(result -> heads.add(result.scenario().title()));
    List<List<String>> rows = new ArrayList<>();
    for (Figure figure : told(compared)) {
      List<String> row = new ArrayList<>(List.of(FigureText.name(figure)));
      results.stream()
          .limit(1)
          .forEach(first -> row.add(figures.value(figure, first.difference(figure).base())));
      for (ScenarioResult result : results) {
        row.add(figures.value(figure, result.difference(figure).scenario()));
      }
      rows.add(row);
    }
    return new ReportDocument.FigureTable(heads, results.isEmpty() ? List.of() : rows);
  }

  private ReportDocument.FigureTable below(List<ScenarioResult> results) {
    List<String> heads = new ArrayList<>(List.of("Mean of the days"));
    List<String> base = new ArrayList<>(List.of("As it is"));
    for (Figure figure : told(compared)) {
      heads.add(FigureText.shortName(figure));
      base.add(figures.value(figure, results.get(0).difference(figure).base()));
    }
    List<List<String>> rows = new ArrayList<>(List.of(base));
    for (ScenarioResult result : results) {
      List<String> row = new ArrayList<>(List.of(result.scenario().title()));
      for (Figure figure : told(compared)) {
        row.add(figures.value(figure, result.difference(figure).scenario()));
      }
      rows.add(row);
    }
    return new ReportDocument.FigureTable(heads, rows);
  }
}
