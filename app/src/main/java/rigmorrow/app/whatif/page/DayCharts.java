package rigmorrow.app.whatif.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigmorrow.app.print.Drawing;
import rigmorrow.app.whatif.FigureText;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Pair;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.outcome.LoadCurve;

/** Days as planes: when the last job ends on each, how busy the floor is in the course of one. */
final class DayCharts {
  private static final int MOST_LABELS = 6;
  private static final double LINE = 3;
  private static final double HALF = 0.5;

  private DayCharts() {}

  /** When the last job ends, day by day. */
  static PlaneChart finishing(ScenarioResult result) {
    List<Pair> pairs = result.difference(Figure.FINISHED).pairs();
    double least =
        pairs.stream().mapToDouble(p -> Math.min(p.base(), p.scenario())).min().orElse(0);
    double most = pairs.stream().mapToDouble(p -> Math.max(p.base(), p.scenario())).max().orElse(1);
    Scale up = new Scale(Math.floor(least), Math.max(Math.floor(least) + 1, Math.ceil(most)));
    double step = Math.max(1, Math.ceil((up.high() - up.low()) / MOST_LABELS));
    Drawing grid = new Drawing();
    for (double hour = up.low(); hour <= up.high(); hour += step) {
      grid.rectangle(0, y(up, hour) - HALF, PlaneChart.WIDE, 1);
    }
    Drawing links = new Drawing();
    Drawing base = new Drawing();
    Drawing scenario = new Drawing();
    List<Mark> across = new ArrayList<>();
    int every = Math.max(1, (pairs.size() + MOST_LABELS - 1) / MOST_LABELS);
    for (int i = 0; i < pairs.size(); i++) {
      double part = (i + HALF) / pairs.size();
      double x = part * PlaneChart.WIDE;
      double from = y(up, pairs.get(i).base());
      double to = y(up, pairs.get(i).scenario());
      links.rectangle(x - 1, Math.min(from, to), 2, Math.abs(to - from));
      base.outline(x - 9, from - 9, 18, 18, LINE);
      scenario.shape(x - 10, to, x, to - 12, x + 10, to, x, to + 12);
      if (i % every == 0) {
        across.add(new Mark(pairs.get(i).batch(), Mark.Side.LEFT, part));
      }
    }
    return new PlaneChart(
        "When the last job ends, day by day",
        "When the last job ends on each day: a square for the floor as it is, a diamond for the"
            + " scenario",
        across,
        up.ticksUp(FigureText::clock, step),
        PlaneChart.WIDE,
        List.of(
            Layer.of(grid, Ink.FAINT),
            Layer.of(links, Ink.BASE),
            Layer.of(base, Ink.MARK),
            Layer.of(scenario, Ink.SCENARIO)),
        "square: as it is",
        "diamond: scenario");
  }

  /**
   * How many are busy in the course of a day.
   *
   * @param what such as "Rigs taken"
   * @param before for each half hour
   * @param after for each half hour
   */
  static PlaneChart load(String what, List<Double> before, List<Double> after) {
    int first = 0;
    int end = LoadCurve.PARTS;
    while (first < end - 2 && idle(before, after, first)) {
      first++;
    }
    while (end > first + 2 && idle(before, after, end - 1)) {
      end--;
    }
    first -= first % 2;
    end += end % 2;
    double most = 0;
    for (int part = first; part < end; part++) {
      most = Math.max(most, Math.max(before.get(part), after.get(part)));
    }
    Scale up = new Scale(0, Math.max(1, Math.ceil(most + 1e-9)));
    double step = Math.max(1, Math.ceil(up.high() / MOST_LABELS));
    Scale hours = new Scale(first / 2.0, end / 2.0);
    Drawing grid = new Drawing();
    for (double count = 0; count <= up.high(); count += step) {
      grid.rectangle(0, y(up, count) - HALF, PlaneChart.NARROW, 1);
    }
    double width = PlaneChart.NARROW / (double) (end - first);
    Drawing area = new Drawing();
    Drawing line = new Drawing();
    for (int part = first; part < end; part++) {
      double x = (part - first) * width;
      double top = y(up, before.get(part));
      area.rectangle(x, top, width, PlaneChart.HEIGHT - top);
      double now = y(up, after.get(part));
      double last = part == first ? now : y(up, after.get(part - 1));
      line.rectangle(x, now - LINE / 2, width, LINE);
      line.rectangle(
          x - LINE / 2, Math.min(now, last) - LINE / 2, LINE, Math.abs(now - last) + LINE);
    }
    double hourStep = Math.max(1, Math.ceil((hours.high() - hours.low()) / MOST_LABELS));
    return new PlaneChart(
        what,
        what + ", mean of all days: an area for the floor as it is, a line" + " for the scenario",
        hours.ticks(FigureText::clock, hourStep),
        up.ticksUp(count -> String.format(Locale.ROOT, "%.0f", count), step),
        PlaneChart.NARROW,
        List.of(Layer.of(area, Ink.FAINT), Layer.of(grid, Ink.BASE), Layer.of(line, Ink.SCENARIO)),
        "area: as it is",
        "line: scenario");
  }

  private static boolean idle(List<Double> before, List<Double> after, int part) {
    return before.get(part) == 0 && after.get(part) == 0;
  }

  private static double y(Scale up, double value) {
    return (1 - up.part(value)) * PlaneChart.HEIGHT;
  }
}
