package rigmorrow.benchmarks.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import rigmorrow.benchmarks.chart.Charts;
import rigmorrow.benchmarks.compare.PeerSummary;
import rigmorrow.benchmarks.compare.Results;

/** One page with charts that needs nothing but itself. */
final class HtmlReport {
  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "rigmorrow.benchmarks");
  private static final List<String> HEADS =
      List.of(
          "peer",
          "plans",
          "mean gap, %",
          "without gap",
          "ours wins",
          "ties",
          "ours loses",
          "ratio",
          "95 % interval");

  private HtmlReport() {}

  static String of(Results results, List<PeerSummary> summaries) {
    ReportPage page =
        new ReportPage(
            Texts.run(results),
            Texts.warnings(summaries),
            HEADS,
            summaries.stream().map(HtmlReport::row).toList(),
            Charts.of(results, summaries));
    StringOutput output = new StringOutput();
    TEMPLATES.render("report/page.jte", page, output);
    return output.toString();
  }

  private static List<String> row(PeerSummary one) {
    return List.of(
        one.peer(),
        "" + one.cells(),
        Texts.percent(one.meanGapPercent()),
        "" + one.withoutGap(),
        one.ours() ? "" : "" + one.wins(),
        one.ours() ? "" : "" + one.ties(),
        one.ours() ? "" : "" + one.losses(),
        one.ours() ? "" : Texts.ratio(one.ratio()),
        one.ours() ? "" : Texts.range(one.ratio()));
  }
}
