package rigmorrow.app.whatif.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.report.Counted;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.FigureText;
import rigmorrow.app.whatif.MoneyText;
import rigmorrow.app.whatif.ResultSentences;
import rigmorrow.model.comparison.Difference;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.money.Investment;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.statistic.Interval;

/** The part of the report that each scenario has of its own. */
final class ReportSections {
  /** Demands that are assumed where none was planned. */
  private static final List<Double> ASSUMED = List.of(-20.0, -10.0, 0.0, 10.0, 20.0);

  private final Compared compared;
  private final AskedBy asked;
  private final SavingCharts charts;
  private final FigureText figures;
  private final ResultSentences sentences;
  private final MoneyText money;
  private final DrawnTables drawn;

  ReportSections(
      Compared compared,
      AskedBy asked,
      SavingCharts charts,
      FigureText figures,
      ResultSentences sentences) {
    this.compared = compared;
    this.asked = asked;
    this.charts = charts;
    this.figures = figures;
    this.sentences = sentences;
    this.money = new MoneyText(compared.costs().currency());
    this.drawn = new DrawnTables(compared, figures);
  }

  /** What is to be said of a scenario. */
  ReportDocument.Answer answer(ScenarioResult result) {
    List<String> more = new ArrayList<>();
    String value = sentences.presentValue(result);
    if (!value.isEmpty()) {
      more.add(value);
    }
    more.add(sentences.besides(result));
    return new ReportDocument.Answer(result.scenario().title(), sentences.money(result), more);
  }

  /** A section for each scenario. */
  List<ReportDocument.Section> all(List<ScenarioResult> results) {
    List<ReportDocument.Section> sections = new ArrayList<>();
    for (ScenarioResult result : results) {
      sections.add(section(result, "scenario-" + (sections.size() + 1)));
    }
    return sections;
  }

  private ReportDocument.Section section(ScenarioResult result, String id) {
    boolean planned = !compared.settings().demandPercents().isEmpty();
    String basis =
        planned
            ? "Every demand was planned: jobs were drawn from those of each day, for the floor as"
                + " it is and for the scenario alike."
            : "Assumed, not planned: lateness, jobs left out, overtime and rig hours are taken to"
                + " cost so many per cent more or less, regular pay the same. To know, "
                + asked.demands()
                + ".";
    LaneChart demand = compared.hasMoney() ? demand(result, planned) : null;
    return new ReportDocument.Section(
        id,
        answer(result),
        facts(result),
        table(result),
        compared.hasMoney() ? charts.spread(result) : null,
        demand,
        basis(result, demand == null, basis),
        DayCharts.finishing(result),
        loads(result),
        drawn.byDay(result),
        drawn.byHour(result));
  }

  private String basis(ScenarioResult result, boolean noChart, String basis) {
    if (!noChart) {
      return basis;
    }
    boolean bought = result.scenario().purchase() != null && result.payoff().isPresent();
    return compared.hasMoney() && bought
        ? "It does not pay back under any of the demands looked at, from fewest to most jobs. "
            + basis
        : "";
  }

  private List<PlaneChart> loads(ScenarioResult result) {
    String name = result.scenario().name();
    return List.of(
        DayCharts.load(
            "Rigs taken in the course of a day",
            compared.cells().rigLoad(Scenario.BASE),
            compared.cells().rigLoad(name)),
        DayCharts.load(
            "Operators at work in the course of a day",
            compared.cells().crewLoad(Scenario.BASE),
            compared.cells().crewLoad(name)));
  }

  private List<List<String>> facts(ScenarioResult result) {
    List<List<String>> facts = new ArrayList<>();
    Investment purchase = result.scenario().purchase();
    if (purchase != null) {
      facts.add(List.of("Price", money.amount(purchase.price())));
      facts.add(List.of("Life", Counted.of(purchase.lifeYears(), "year")));
      facts.add(List.of("To keep", money.amount(purchase.runningPerYear()) + " a year"));
      facts.add(List.of("Interest", FigureText.percent(purchase.interestPercent())));
      facts.add(
          List.of("Price, interest and keeping", money.amount(purchase.costPerYear()) + " a year"));
      result
          .payoff()
          .filter(payoff -> compared.hasMoney())
          .map(Payoff::payback)
          .ifPresent(years -> facts.add(List.of(payback(purchase), MoneyText.payback(years))));
    }
    facts.add(List.of("Days compared", "" + result.batches()));
    return facts;
  }

  private static String payback(Investment purchase) {
    return purchase.interestPercent() == 0 ? "Payback, no interest" : "Payback with interest";
  }

  private ReportDocument.FigureTable table(ScenarioResult result) {
    List<List<String>> rows = new ArrayList<>();
    for (Figure figure : FigureText.TOLD) {
      if (figure != Figure.COST || compared.hasMoney()) {
        Difference difference = result.difference(figure);
        rows.add(
            List.of(
                FigureText.name(figure),
                figures.value(figure, difference.base()),
                figures.value(figure, difference.scenario()),
                difference.same()
                    ? "the same every day"
                    : figures.difference(figure, difference.difference())));
      }
    }
    return new ReportDocument.FigureTable(
        List.of("Mean of the days", "As it is", "Scenario", "Difference, 95 % interval"), rows);
  }

  /** How payback depends on demand, or what is saved where nothing is bought. */
  private @Nullable LaneChart demand(ScenarioResult result, boolean planned) {
    if (result.payoff().isEmpty()) {
      return null;
    }
    List<SavingCharts.Named> savings = new ArrayList<>();
    if (planned) {
      for (Map.Entry<Double, ScenarioResult> one :
          compared.byDemand(result.scenario()).entrySet()) {
        one.getValue()
            .payoff()
            .ifPresent(
                payoff ->
                    savings.add(
                        new SavingCharts.Named(
                            FigureText.demand(one.getKey()), payoff.savedPerDay())));
      }
    } else {
      for (double percent : ASSUMED) {
        savings.add(
            new SavingCharts.Named(FigureText.demand(percent), result.assumedSaving(percent)));
      }
    }
    Investment purchase = result.scenario().purchase();
    if (purchase == null) {
      return charts.intervals("What a day saves by demand", savings);
    }
    List<SavingCharts.Demand> demands =
        savings.stream()
            .map(one -> new SavingCharts.Demand(one.name(), years(one.interval(), purchase)))
            .toList();
    return demands.stream().allMatch(demand -> demand.years().soonest().isEmpty())
        ? null
        : charts.payback(demands, purchase);
  }

  private Payoff.Years years(Interval saved, Investment purchase) {
    Payoff payoff = new Payoff(saved, compared.study().terms().workingDaysPerYear(), purchase);
    Payoff.Years years = payoff.payback();
    if (years == null) {
      throw new IllegalStateException("something is bought");
    }
    return years;
  }
}
