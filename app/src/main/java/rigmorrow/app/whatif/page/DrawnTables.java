package rigmorrow.app.whatif.page;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.FigureText;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Pair;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.scenario.Scenario;

/** What the drawings show, as tables for those who do not see them or want the figures. */
final class DrawnTables {
  private static final double HOURS_PER_PART = 0.5;

  private final Compared compared;
  private final FigureText figures;

  DrawnTables(Compared compared, FigureText figures) {
    this.compared = compared;
    this.figures = figures;
  }

  /** When the last job ends on each day, and what the day costs where there is money. */
  ReportDocument.FigureTable byDay(ScenarioResult result) {
    List<String> heads = new ArrayList<>(List.of("Day"));
    List<Figure> shown = new ArrayList<>(List.of(Figure.FINISHED));
    if (compared.hasMoney()) {
      shown.add(Figure.COST);
    }
    for (Figure figure : shown) {
      heads.add(FigureText.name(figure) + ", as it is");
      heads.add(FigureText.name(figure) + ", scenario");
    }
    List<Pair> days = result.difference(Figure.FINISHED).pairs();
    List<List<String>> rows = new ArrayList<>();
    for (int day = 0; day < days.size(); day++) {
      List<String> row = new ArrayList<>(List.of(days.get(day).batch()));
      for (Figure figure : shown) {
        Pair pair = result.difference(figure).pairs().get(day);
        row.add(figures.value(figure, pair.base()));
        row.add(figures.value(figure, pair.scenario()));
      }
      rows.add(row);
    }
    return new ReportDocument.FigureTable(heads, rows);
  }

  /** How many rigs are taken and operators at work in each half hour in which any is. */
  ReportDocument.FigureTable byHour(ScenarioResult result) {
    String name = result.scenario().name();
    List<List<Double>> curves =
        List.of(
            compared.cells().rigLoad(Scenario.BASE),
            compared.cells().rigLoad(name),
            compared.cells().crewLoad(Scenario.BASE),
            compared.cells().crewLoad(name));
    List<List<String>> rows = new ArrayList<>();
    for (int part = 0; part < LoadCurve.PARTS; part++) {
      int at = part;
      if (curves.stream().anyMatch(curve -> curve.get(at) > 0)) {
        List<String> row = new ArrayList<>(List.of(FigureText.clock(part * HOURS_PER_PART)));
        curves.forEach(curve -> row.add(FigureText.decimal(curve.get(at))));
        rows.add(row);
      }
    }
    return new ReportDocument.FigureTable(
        List.of(
            "Half hour from",
            "Rigs taken, as it is",
            "Rigs taken, scenario",
            "Operators at work, as it is",
            "Operators at work, scenario"),
        rows);
  }
}
