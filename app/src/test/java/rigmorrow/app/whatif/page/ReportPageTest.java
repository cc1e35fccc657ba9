package rigmorrow.app.whatif.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.print.ReadPdf;
import rigmorrow.app.whatif.Assumptions;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.FigureText;
import rigmorrow.app.whatif.ResultSentences;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.model.comparison.Cells;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.ScenarioResult;

class ReportPageTest {
  private static Compared compared;
  private static Document page;
  private static ReadPdf pdf;

  @BeforeAll
  static void make() {
    compared =
        SmallStudy.compared(
            SmallStudy.study(),
            SmallStudy.days(4, 14),
            SmallStudy.settings(1, List.of(-20.0, 20.0), true, true));
    String html = new ReportPage(compared, AskedBy.COMMAND, Paper.A4).html();
    page = Jsoup.parse(html);
    pdf = new ReadPdf(new ReportPage(compared, AskedBy.COMMAND, Paper.A4).pdf().bytes());
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", "");
  }

  @Test
  void isWellFormedAndNeedsNothingElse() throws Exception {
    String html = new ReportPage(compared, AskedBy.COMMAND, Paper.LETTER).html();
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    assertThat(html).doesNotContain("<script", "http:", "https:", "url(");
    assertThat(html).contains("size: letter");
  }

  @Test
  void tellsEverySentenceInBoth() {
    ResultSentences sentences = new ResultSentences("EUR", true);
    String html = plain(page.text());
    String paper = plain(pdf.text());
    for (ScenarioResult result : compared.results()) {
      String sentence = plain(result.scenario().title() + sentences.money(result));
      assertThat(html).contains(sentence);
      assertThat(paper).contains(sentence);
      assertThat(html).contains(plain(sentences.besides(result)));
      assertThat(paper).contains(plain(sentences.besides(result)));
    }
    List<String> first = Assumptions.first(compared, Assumptions.OTHER_DEMANDS);
    assertThat(first)
        .hasSize(2)
        .anyMatch(one -> one.startsWith("Demand: 20 % fewer jobs, 20 % more jobs were planned too"))
        .allMatch(one -> plain(beforeTheAnswers(page.text())).contains(plain(one)))
        .allMatch(one -> paper.contains(plain(one)));
    for (String assumption : Assumptions.of(compared)) {
      assertThat(html).contains(plain(assumption));
      assertThat(paper).contains(plain(assumption));
    }
    assertThat(paper).contains(plain(sentences.luck(compared.again().orElseThrow())));
    assertThat(paper).contains(plain(sentences.best(compared.smallChanges())));
  }

  @Test
  void tellsEveryFigureOfEveryScenario() {
    FigureText figures = new FigureText("EUR");
    for (ScenarioResult result : compared.results()) {
      Element section =
          page.select("section.part").stream()
              .filter(part -> part.select("h2").text().equals(result.scenario().title()))
              .findFirst()
              .orElseThrow();
      List<String> rows = section.select("table.differences tbody tr").eachText();
      assertThat(rows).hasSize(FigureText.TOLD.size());
      for (Figure figure : FigureText.TOLD) {
        assertThat(rows.get(FigureText.TOLD.indexOf(figure)))
            .startsWith(FigureText.name(figure))
            .contains(figures.value(figure, result.difference(figure).scenario()));
      }
    }
  }

  @Test
  void drawsEveryDayAndEveryDemand() {
    for (Element section : page.select("section.part[aria-labelledby^=scenario]")) {
      Element finishing = section.selectFirst(".broad path[fill=" + Ink.SCENARIO.colour() + "]");
      assertThat(finishing.attr("d").split("M")).hasSize(4 + 1);
      assertThat(section.select(".narrow svg")).hasSize(2);
    }
    Element operator = page.selectFirst("section[aria-labelledby=scenario-2]");
    assertThat(operator.select("table.lanes th.lane").eachText())
        .containsExactly(
            "as it is", "scenario", "20 % fewer jobs", "demand as it was", "20 % more jobs");
    assertThat(operator.text()).contains("Every demand was planned");
  }

  @Test
  void saysInTablesWhatItDraws() {
    Element drawn = page.selectFirst("section[aria-labelledby=scenario-1] details.drawn");
    assertThat(drawn.select("table").get(0).select("tbody tr")).hasSize(4);
    ScenarioResult first = compared.results().get(0);
    var ends = first.difference(Figure.FINISHED).pairs().get(0);
    var cost = first.difference(Figure.COST).pairs().get(0);
    FigureText figures = new FigureText("EUR");
    assertThat(drawn.select("table").get(0).select("tbody tr").get(0).children().eachText())
        .containsExactly(
            ends.batch(),
            FigureText.clock(ends.base()),
            FigureText.clock(ends.scenario()),
            figures.value(Figure.COST, cost.base()),
            figures.value(Figure.COST, cost.scenario()));
    List<String> hours = drawn.select("table").get(1).select("tbody th").eachText();
    assertThat(hours).hasSizeGreaterThan(4).isSorted().allMatch(one -> one.matches("\\d\\d:[03]0"));
    assertThat(plain(pdf.text())).doesNotContain("Halfhourfrom");
  }

  @Test
  void drawsOnlyNumbersWithinTheirBoxes() {
    Pattern point = Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)");
    for (Element svg : page.select("svg")) {
      String[] box = svg.attr("viewBox").split(" ");
      for (Element path : svg.select("path")) {
        point
            .matcher(path.attr("d"))
            .results()
            .forEach(
                match -> {
                  assertThat(Double.parseDouble(match.group(1)))
                      .isBetween(-15.0, Double.parseDouble(box[2]) + 15);
                  assertThat(Double.parseDouble(match.group(2)))
                      .isBetween(-15.0, Double.parseDouble(box[3]) + 15);
                });
        assertThat(path.attr("d")).doesNotContain("NaN", "Infinity");
      }
    }
  }

  @Test
  void saysWhenItIsAssumed() {
    Compared plain =
        SmallStudy.compared(
            SmallStudy.study(),
            SmallStudy.days(2, 10),
            SmallStudy.settings(1, List.of(), false, false));
    String text = Jsoup.parse(new ReportPage(plain, AskedBy.COMMAND, Paper.A4).html()).text();
    assertThat(text).contains("Assumed, not planned").doesNotContain("What one more of each");
    assertThat(text).containsOnlyOnce("too narrow").doesNotContain("Time stops");
    assertThat(beforeTheAnswers(text))
        .contains(
            "Weak evidence: with only 2 days the ranges (low to high) of savings, paybacks and"
                + " other figures are too narrow.")
        .contains("Demand: only that of these days was planned; to see what paybacks depend on")
        .doesNotContain("Used again");
  }

  private static String timed(int cells, int reused) {
    Compared part =
        new Compared(
            compared.study(),
            compared.days(),
            new RunSettings(Duration.ofSeconds(2), 0, 1, 1, List.of(-20.0, 20.0), true, true),
            new Cells(compared.cells().all().subList(0, cells)),
            compared.all(),
            reused,
            "x");
    return Jsoup.parse(new ReportPage(part, AskedBy.COMMAND, Paper.A4).html()).text();
  }

  /** Once, and of plans used again only where some were. */
  @Test
  void saysWhatItMeansThatTimeStopsPlans() {
    String stops = "Time stops each plan, so those made while the machine was slower or busier are";
    String then = "; time stopped them, on a machine that may have been slower or faster then.";
    String steps = "Steps in place of time make plans the same at any time.";
    int all = compared.all();
    assertThat(timed(all, 0)).contains(stops, steps).doesNotContain("sed again", then);
    assertThat(timed(all, 7))
        .contains("Used again: 7 of " + all + " plans were there already" + then, steps)
        .doesNotContain(stops);
    assertThat(timed(all, all))
        .contains("Used again: all " + all + " plans were there already.", stops, steps)
        .doesNotContain(then);
    assertThat(timed(1, 1)).contains("Used again: the only plan so far was there already" + then);
    assertThat(timed(5, 5)).contains("Used again: all 5 plans so far were there already" + then);
    assertThat(timed(5, 1)).contains("Used again: 1 of 5 plans was there already" + then);
  }

  private static String beforeTheAnswers(String text) {
    return text.substring(0, text.indexOf("In short"));
  }

  @Test
  void saysWhenItIsNotFinished() {
    Compared part =
        new Compared(
            compared.study(),
            compared.days(),
            compared.settings(),
            new Cells(compared.cells().all().subList(0, 30)),
            compared.all(),
            7,
            "x");
    String text = Jsoup.parse(new ReportPage(part, AskedBy.COMMAND, Paper.A4).html()).text();
    assertThat(text).contains("Not finished: 30 of " + compared.all() + " plans are made");
    assertThat(beforeTheAnswers(text)).contains("Used again: 7 of 30 plans were there already.");
  }

  @Test
  void givesTheSameBytesForTheSameCells() {
    PdfFile one = new ReportPage(compared, AskedBy.COMMAND, Paper.A4).pdf();
    PdfFile two = new ReportPage(compared, AskedBy.COMMAND, Paper.A4).pdf();
    assertThat(one.bytes()).isEqualTo(two.bytes());
    assertThat(one.unprintable()).isEmpty();
  }
}
