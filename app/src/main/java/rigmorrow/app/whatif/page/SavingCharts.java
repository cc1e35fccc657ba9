package rigmorrow.app.whatif.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import rigmorrow.app.print.Drawing;
import rigmorrow.app.whatif.FigureText;
import rigmorrow.app.whatif.MoneyText;
import rigmorrow.model.comparison.Difference;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Pair;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.money.Investment;
import rigmorrow.model.statistic.Interval;
import rigmorrow.model.statistic.Percentiles;

/** Money as lanes: what a day saves, how days are spread, how payback depends on demand. */
final class SavingCharts {
  private static final double MIDDLE = LaneChart.HEIGHT / 2.0;
  private static final double LINE = 3;

  private final MoneyText money;
  private final String currency;

  SavingCharts(String currency) {
    this.money = new MoneyText(currency);
    this.currency = currency;
  }

  /** What a day saves under each scenario that is held against the floor as it is. */
  LaneChart savings(List<ScenarioResult> results) {
    List<Named> lanes = new ArrayList<>();
    for (ScenarioResult result : results) {
      result
          .payoff()
          .ifPresent(
              payoff -> lanes.add(new Named(result.scenario().title(), payoff.savedPerDay())));
    }
    return intervals("What a day saves", lanes);
  }

  /** A lane for each interval, with a line at 0. */
  LaneChart intervals(String title, List<Named> named) {
    Scale scale =
        Scale.around(
            Math.min(0, named.stream().mapToDouble(one -> one.interval.low()).min().orElse(0)),
            Math.max(0, named.stream().mapToDouble(one -> one.interval.high()).max().orElse(1)));
    List<LaneChart.Lane> lanes = new ArrayList<>();
    for (Named one : named) {
      List<Layer> layers = new ArrayList<>(List.of(grid(scale), line(scale, 0)));
      layers.addAll(whisker(scale, one.interval));
      lanes.add(new LaneChart.Lane(one.name, money.interval(one.interval), layers));
    }
    return chart(
        title,
        ": the mean with its 95 % interval; right of 0 a day costs less than with the floor as it"
            + " is",
        currency + " a day, with 95 % intervals over days; right of 0 is saved",
        scale,
        MoneyText::tick,
        lanes);
  }

  /**
   * An interval with its name.
   *
   * @param name of the lane
   */
  record Named(String name, Interval interval) {}

  /** The cost of each day, before and after: a mark for each day, a box for the middle half. */
  LaneChart spread(ScenarioResult result) {
    Difference cost = result.difference(Figure.COST);
    double[] before = cost.pairs().stream().mapToDouble(Pair::base).toArray();
    double[] after = cost.pairs().stream().mapToDouble(Pair::scenario).toArray();
    Scale scale =
        Scale.around(
            DoubleStream.concat(DoubleStream.of(before), DoubleStream.of(after)).min().orElse(0),
            DoubleStream.concat(DoubleStream.of(before), DoubleStream.of(after)).max().orElse(1));
    List<LaneChart.Lane> lanes =
        List.of(
            lane("as it is", before, scale, Ink.BASE),
            lane("scenario", after, scale, Ink.SCENARIO));
    return chart(
        "Cost of a day, before and after",
        ": a mark for each day, a box for the middle half of them, a line at their median",
        currency + " a day: a mark for each day, a box for the middle half, a line at the median",
        scale,
        MoneyText::tick,
        lanes);
  }

  private LaneChart.Lane lane(String label, double[] days, Scale scale, Ink ink) {
    Percentiles spread = new Percentiles(days);
    Drawing marks = new Drawing();
    for (double day : days) {
      marks.rectangle(x(scale, day) - 1.5, 3, 3, 14);
    }
    Drawing box = new Drawing();
    double from = x(scale, spread.at(25));
    box.rectangle(from, 24, Math.max(2, x(scale, spread.at(75)) - from), 20);
    Drawing median = new Drawing();
    median.rectangle(x(scale, spread.at(50)) - 2, 20, 4, 28);
    return new LaneChart.Lane(
        label,
        "median " + money.amount(spread.at(50)),
        List.of(grid(scale), Layer.of(marks, ink), Layer.of(box, ink), Layer.of(median, Ink.MARK)));
  }

  /** How payback depends on demand; some demand pays back. */
  LaneChart payback(List<Demand> demands, Investment purchase) {
    int lifeYears = purchase.lifeYears();
    String saved =
        purchase.interestPercent() == 0
            ? "the price is saved, without interest"
            : "the price and its "
                + FigureText.percent(purchase.interestPercent())
                + " interest are saved";
    Scale scale = new Scale(0, Scale.around(0, lifeYears).high());
    List<LaneChart.Lane> lanes = new ArrayList<>();
    for (Demand demand : demands) {
      Drawing life = new Drawing();
      life.rectangle(x(scale, lifeYears) - 1, 0, 2, LaneChart.HEIGHT);
      List<Layer> layers = new ArrayList<>(List.of(grid(scale), Layer.of(life, Ink.MARK)));
      Payoff.Years years = demand.years();
      if (years.soonest().isPresent()) {
        boolean never = years.latest().isEmpty();
        double latest = years.latest().orElse(scale.high());
        double middle = years.middle().orElse(latest);
        layers.addAll(
            whisker(scale, new Interval(middle, years.soonest().getAsDouble(), latest, 2)));
        if (never) {
          layers.add(arrow());
        }
      }
      lanes.add(new LaneChart.Lane(demand.label(), MoneyText.payback(years), layers));
    }
    return chart(
        "Payback by demand",
        ": years until " + saved + ", with its interval; a line at the end of its life",
        "years until " + saved + ", with intervals; the line is the end of its life",
        scale,
        MoneyText::tick,
        lanes);
  }

  /**
   * Payback under a demand.
   *
   * @param label such as "20 % more jobs"
   */
  record Demand(String label, Payoff.Years years) {}

  private static LaneChart chart(
      String title,
      String spoken,
      String unit,
      Scale scale,
      DoubleFunction<String> numbers,
      List<LaneChart.Lane> lanes) {
    return new LaneChart(title, title + spoken, unit, scale.ticks(numbers), lanes);
  }

  private static List<Layer> whisker(Scale scale, Interval interval) {
    double low = x(scale, interval.low());
    double high = x(scale, interval.high());
    Drawing line = new Drawing();
    line.rectangle(low, MIDDLE - LINE / 2, Math.max(LINE, high - low), LINE);
    line.rectangle(low - LINE / 2, MIDDLE - 10, LINE, 20);
    line.rectangle(high - LINE / 2, MIDDLE - 10, LINE, 20);
    Drawing mean = new Drawing();
    double x = x(scale, interval.middle());
    mean.shape(x - 10, MIDDLE, x, MIDDLE - 14, x + 10, MIDDLE, x, MIDDLE + 14);
    return List.of(Layer.of(line, Ink.SCENARIO), Layer.of(mean, Ink.SCENARIO));
  }

  private static Layer arrow() {
    Drawing head = new Drawing();
    double end = LaneChart.WIDTH;
    head.shape(end - 24, MIDDLE - 14, end, MIDDLE, end - 24, MIDDLE + 14);
    return Layer.of(head, Ink.SCENARIO);
  }

  private static Layer grid(Scale scale) {
    Drawing grid = new Drawing();
    scale.values().forEach(value -> grid.rectangle(x(scale, value) - 0.5, 0, 1, LaneChart.HEIGHT));
    return Layer.of(grid, Ink.FAINT);
  }

  private static Layer line(Scale scale, double value) {
    Drawing line = new Drawing();
    line.rectangle(x(scale, value) - 1, 0, 2, LaneChart.HEIGHT);
    return Layer.of(line, Ink.MARK);
  }

  private static double x(Scale scale, double value) {
    return scale.part(value) * LaneChart.WIDTH;
  }
}
