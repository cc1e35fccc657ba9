package rigmorrow.app.whatif.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.app.print.Paper;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.model.comparison.Cells;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.DayCost;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.outcome.Outcome;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.whatif.Past;

/** Sentence, figure and drawing of a payback follow one rule. */
class PaybackRuleTest {
  private static final List<Past> DAYS = SmallStudy.days(4, 3);

  private static Cell cell(String scenario, double demand, String day, double cost) {
    LoadCurve load = new LoadCurve(Collections.nCopies(48, 0L));
    return new Cell(
        new Cell.Key(scenario, demand, day, 1),
        new Outcome(
            1,
            10,
            0,
            10,
            8,
            3600,
            57_600,
            7200,
            new Outcome.CrewTime(1, 2, 0),
            new Outcome.RigTime(3, 2, 1),
            new DayCost(100, 0, 0, cost - 100, 0),
            0,
            load,
            load),
        5);
  }

  private static ReportDocument.Section section(double interestPercent, double... savings) {
    Investment price = new Investment(12_000, 4, interestPercent, 500);
    Scenario scenario = new Scenario("s", "One more rig", List.of(), price);
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < savings.length; i++) {
      cells.add(cell(Scenario.BASE, 0, DAYS.get(i).name(), 500));
      cells.add(cell("s", 0, DAYS.get(i).name(), 500 - savings[i]));
    }
    Study study =
        new Study("x", new MoneyTerms(250, CrewPay.SHIFT), List.of(scenario), Study.Prices.NONE);
    Compared compared =
        new Compared(
            study,
            DAYS,
            SmallStudy.settings(1, List.of(), false, false),
            new Cells(cells),
            cells.size(),
            0,
            "rigmorrow test");
    return new ReportPage(compared, AskedBy.COMMAND, Paper.A4).document(false).sections().get(0);
  }

  private static String fact(ReportDocument.Section section, String name) {
    return section.facts().stream()
        .filter(fact -> fact.get(0).equals(name))
        .map(fact -> fact.get(1))
        .findFirst()
        .orElse("no " + name);
  }

  private static String asItWas(LaneChart chart) {
    return chart.lanes().stream()
        .filter(lane -> lane.label().equals("demand as it was"))
        .map(LaneChart.Lane::value)
        .findFirst()
        .orElse("no lane");
  }

  /** One scenario saves under any demand, the other costs more where there are more jobs. */
  @Test
  void tellsBeforeTheAnswersForWhichOfThemDemandMatters() {
    List<Scenario> two =
        List.of(
            new Scenario("s", "One more rig", List.of(), null),
            new Scenario("t", "Longer hours", List.of(), null));
    List<Cell> cells = new ArrayList<>();
    for (Past day : DAYS) {
      for (double demand : List.of(0.0, 20.0)) {
        cells.add(cell(Scenario.BASE, demand, day.name(), 500));
        cells.add(cell("s", demand, day.name(), 450 - demand));
        cells.add(cell("t", demand, day.name(), demand == 0 ? 450 : 550));
      }
    }
    assertThat(first(two, cells))
        .contains(
            "Demand: 20 % more jobs were planned too; the answer changes with demand for 1 of 2"
                + " scenarios: Longer hours.");
    assertThat(first(two.subList(0, 1), cells))
        .contains(
            "Demand: 20 % more jobs were planned too; the answer stays the same for each"
                + " scenario, though its figures may not.");
  }

  /** Where a run was stopped early, or is still going on. */
  @Test
  void saysNothingOfScenariosWhoseDemandsAreNotAllPlannedOnTheSameDays() {
    List<Scenario> two =
        List.of(
            new Scenario("s", "One more rig", List.of(), null),
            new Scenario("t", "Longer hours", List.of(), null));
    List<Cell> cells = new ArrayList<>();
    for (Past day : DAYS) {
      cells.add(cell(Scenario.BASE, 0, day.name(), 500));
      cells.add(cell("s", 0, day.name(), 450));
      cells.add(cell("t", 0, day.name(), 450));
    }
    int all = DAYS.size() * 6;
    assertThat(first(two, cells, all)).contains("Demand: 20 % more jobs are planned too.");
    for (Past day : DAYS) {
      cells.add(cell(Scenario.BASE, 20, day.name(), 500));
      cells.add(cell("s", 20, day.name(), 430));
    }
    String forOne =
        "Demand: 20 % more jobs are planned too; the answer stays the same for One more rig,"
            + " though its figures may not.";
    assertThat(first(two, cells, all)).contains(forOne);
    cells.add(cell("t", 20, DAYS.get(0).name(), 550));
    assertThat(first(two, cells, all)).contains(forOne);
    List<Cell> changing = new ArrayList<>(cells.subList(0, cells.size() - 1));
    changing.replaceAll(
        one ->
            one.key().scenario().equals("s") && one.key().demandPercent() == 20
                ? cell("s", 20, one.key().batch(), 550)
                : one);
    assertThat(first(two, changing, all))
        .contains(
            "Demand: 20 % more jobs are planned too; the answer changes with demand for One more"
                + " rig.");
  }

  private static List<String> first(List<Scenario> scenarios, List<Cell> cells) {
    return first(scenarios, cells, cells.size());
  }

  private static List<String> first(List<Scenario> scenarios, List<Cell> cells, int all) {
    Study study = new Study("x", new MoneyTerms(250, CrewPay.SHIFT), scenarios, Study.Prices.NONE);
    RunSettings settings = SmallStudy.settings(1, List.of(20.0), false, false);
    Compared compared =
        new Compared(study, DAYS, settings, new Cells(cells), all, 0, "rigmorrow test");
    return new ReportPage(compared, AskedBy.COMMAND, Paper.A4).document(false).first();
  }

  /** As worked out by hand in the test of the sentences: 0.690 and 1.181 years. */
  @Test
  void countsInterestEverywhere() {
    ReportDocument.Section section = section(5, 40, 60, 80, 60);
    assertThat(section.answer().sentence()).startsWith("pays back in 8 to 15 months with 5 %");
    assertThat(fact(section, "Payback with interest")).isEqualTo("8 to 15 months");
    LaneChart chart = section.demand();
    assertThat(asItWas(chart)).isEqualTo("8 to 15 months");
    assertThat(chart.unit())
        .isEqualTo(
            "years until the price and its 5 % interest are saved, with intervals; the line is"
                + " the end of its life");
  }

  /** 12,000 of 75 x 250 - 500 = 18,250 are 7.9 months, of 45 x 250 - 500 = 10,750 13.4. */
  @Test
  void countsNoneWhereNoneIsGivenAndSaysSo() {
    ReportDocument.Section section = section(0, 40, 60, 80, 60);
    assertThat(section.answer().sentence()).startsWith("pays back in 7 to 14 months: it saves");
    assertThat(fact(section, "Payback, no interest")).isEqualTo("7 to 14 months");
    assertThat(asItWas(section.demand())).isEqualTo("7 to 14 months");
    assertThat(section.demand().unit()).startsWith("years until the price is saved, without");
  }

  @Test
  void saysEverywhereThatItMayNeverPayBack() {
    ReportDocument.Section section = section(5, 10, 18, 10, 18);
    assertThat(section.answer().sentence()).contains("may never pay back");
    assertThat(section.answer().more().get(0)).endsWith("so it may never pay back.");
    assertThat(fact(section, "Payback with interest")).isEqualTo("from 3.3 years to never");
    assertThat(asItWas(section.demand())).isEqualTo("from 3.3 years to never");
  }

  @Test
  void saysEverywhereThatItNeverPaysBack() {
    ReportDocument.Section section = section(5, 1, 2, 1, 2);
    assertThat(section.answer().sentence()).startsWith("never pays back");
    assertThat(section.answer().more().get(0)).endsWith("never pays back at this worth.");
    assertThat(fact(section, "Payback with interest")).isEqualTo("never");
    assertThat(section.demand()).isNull();
    assertThat(section.demandBasis()).startsWith("It does not pay back under any of the demands");
  }
}
