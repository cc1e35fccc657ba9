package rigmorrow.app.board.whatif;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.ReportView;
import rigmorrow.app.board.view.ReportView.AnswerView;
import rigmorrow.app.board.view.ReportView.AxisMarkView;
import rigmorrow.app.board.view.ReportView.FigureTableView;
import rigmorrow.app.board.view.ReportView.LaneView;
import rigmorrow.app.board.view.ReportView.LanesView;
import rigmorrow.app.board.view.ReportView.LayerView;
import rigmorrow.app.board.view.ReportView.OneMoreView;
import rigmorrow.app.board.view.ReportView.PlaneView;
import rigmorrow.app.board.view.ReportView.ScenarioPartView;
import rigmorrow.app.whatif.page.LaneChart;
import rigmorrow.app.whatif.page.Layer;
import rigmorrow.app.whatif.page.Mark;
import rigmorrow.app.whatif.page.PlaneChart;
import rigmorrow.app.whatif.page.ReportDocument;

/** Reports for the page: what was said and drawn for paper, with nothing worked out again. */
public final class ReportViews {
  private static final double PERCENT = 100;

  private ReportViews() {}

  /**
   * The view of a report.
   *
   * @param plans that it rests on
   */
  public static ReportView of(ReportDocument report, int plans) {
    ReportDocument.OneMore more = report.oneMore();
    return new ReportView(
        report.title(),
        report.subtitle(),
        report.warnings(),
        report.first(),
        report.answers().stream().map(ReportViews::answer).toList(),
        lanesOrNull(report.savings()),
        table(report.figures()),
        report.luck(),
        report.sections().stream().map(ReportViews::section).toList(),
        more == null
            ? null
            : new OneMoreView(more.best(), lanes(more.chart()), table(more.table())),
        report.assumptions(),
        plans);
  }

  private static AnswerView answer(ReportDocument.Answer answer) {
    return new AnswerView(answer.title(), answer.sentence(), answer.more());
  }

  private static FigureTableView table(ReportDocument.FigureTable table) {
    return new FigureTableView(table.heads(), table.rows());
  }

  private static ScenarioPartView section(ReportDocument.Section section) {
    return new ScenarioPartView(
        section.id(),
        answer(section.answer()),
        section.facts(),
        table(section.figures()),
        lanesOrNull(section.spread()),
        lanesOrNull(section.demand()),
        section.demandBasis(),
        plane(section.finishing()),
        section.loads().stream().map(ReportViews::plane).toList(),
        table(section.byDay()),
        table(section.byHour()));
  }

  private static @Nullable LanesView lanesOrNull(@Nullable LaneChart chart) {
    return chart == null ? null : lanes(chart);
  }

  private static LanesView lanes(LaneChart chart) {
    return new LanesView(
        chart.title(),
        chart.spoken(),
        chart.unit(),
        LaneChart.WIDTH,
        LaneChart.HEIGHT,
        marks(chart.axis()),
        chart.lanes().stream()
            .map(lane -> new LaneView(lane.label(), lane.value(), layers(lane.layers())))
            .toList());
  }

  private static PlaneView plane(PlaneChart chart) {
    return new PlaneView(
        chart.title(),
        chart.spoken(),
        chart.width(),
        PlaneChart.HEIGHT,
        marks(chart.across()),
        marks(chart.up()),
        layers(chart.layers()),
        chart.base(),
        chart.scenario());
  }

  private static List<AxisMarkView> marks(List<Mark> marks) {
    return marks.stream()
        .map(mark -> new AxisMarkView(mark.text(), mark.part() * PERCENT))
        .toList();
  }

  private static List<LayerView> layers(List<Layer> layers) {
    return layers.stream().map(layer -> new LayerView(layer.ink().word(), layer.path())).toList();
  }
}
