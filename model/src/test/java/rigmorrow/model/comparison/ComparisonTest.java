package rigmorrow.model.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigmorrow.model.comparison.Payoff.Verdict;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.DayCost;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.outcome.Outcome;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.statistic.Interval;

class ComparisonTest {
  private static final MoneyTerms TERMS = new MoneyTerms(200, CrewPay.SHIFT);
  private static final String RIG = "rig";

  /** A day that costs so much, of which 100 are regular pay. */
  private static Cell cell(String scenario, double demand, String batch, long seed, double cost) {
    return cell(scenario, demand, batch, seed, 1, new DayCost(100, 0, 0, cost - 100, 0));
  }

  private static Cell cell(
      String scenario, double demand, String batch, long seed, int days, DayCost cost) {
    LoadCurve load = new LoadCurve(Collections.nCopies(48, 1800L));
    return new Cell(
        new Cell.Key(scenario, demand, batch, seed),
        new Outcome(
            days,
            10,
            2,
            4,
            3,
            7200,
            36_000,
            3600,
            new Outcome.CrewTime(3600, 7200, 1800),
            new Outcome.RigTime(4000, 2000, 1000),
            cost,
            0,
            load,
            load),
        5);
  }

  private static Scenario scenario(Investment purchase, ScenarioChange... changes) {
    return new Scenario(RIG, "A rig", List.of(changes), purchase);
  }

  @Test
  void pairsBatchesAndTakesMeansOverTheSeedsThatBothHave() {
    Cells cells =
        new Cells(
            List.of(
                cell(Scenario.BASE, 0, "a", 1, 200),
                cell(Scenario.BASE, 0, "a", 2, 220),
                cell(Scenario.BASE, 0, "a", 3, 900),
                cell(RIG, 0, "a", 1, 150),
                cell(RIG, 0, "a", 2, 190),
                cell(Scenario.BASE, 0, "b", 1, 300),
                cell(RIG, 0, "b", 1, 310),
                cell(RIG, 0, "c", 1, 1),
                cell(RIG, 20, "a", 1, 5)));
    Difference cost = cells.difference(RIG, 0, Figure.COST).orElseThrow();
    assertThat(cost.pairs()).containsExactly(new Pair("a", 210, 170), new Pair("b", 300, 310));
    assertThat(cost.base()).isEqualTo(255);
    assertThat(cost.scenario()).isEqualTo(240);
    assertThat(cost.difference().middle()).isEqualTo(-15);
    assertThat(cost.unsure()).isTrue();
    assertThat(cost.same()).isFalse();
    assertThat(cells.difference(RIG, 20, Figure.COST)).isEmpty();
    assertThat(cells.outcomes(RIG)).hasSize(4);
  }

  @Test
  void figuresAreThoseOfADay() {
    Outcome two = cell(RIG, 0, "a", 1, 2, new DayCost(100, 20, 30, 40, 50)).outcome();
    assertThat(Figure.COST.of(two)).isEqualTo(120);
    assertThat(Figure.REGULAR_PAY.of(two)).isEqualTo(50);
    assertThat(Figure.OTHER_COST.of(two)).isEqualTo(70);
    assertThat(Figure.LEFT_OUT.of(two)).isEqualTo(1);
    assertThat(Figure.KEPT.of(two)).isEqualTo(75);
    assertThat(Figure.LATE_HOURS.of(two)).isEqualTo(1);
    assertThat(Figure.FINISHED.of(two)).isEqualTo(10);
    assertThat(Figure.CHANGEOVER_HOURS.of(two)).isEqualTo(0.5);
    assertThat(Figure.OVERTIME_HOURS.of(two)).isEqualTo(0.25);
    assertThat(Figure.CREW_USE.of(two)).isEqualTo(40);
    assertThat(Figure.ALLOCATION.of(two)).isEqualTo(50);
    assertThat(Figure.UTILISATION.of(two)).isEqualTo(50);
  }

  private static Cells days(double... savings) {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < savings.length; i++) {
      cells.add(cell(Scenario.BASE, 0, "day" + i, 1, 500));
      cells.add(cell(RIG, 0, "day" + i, 1, 500 - savings[i]));
    }
    return new Cells(cells);
  }

  private static Payoff payoff(Investment purchase, double... savings) {
    return ScenarioResult.of(scenario(purchase), 0, days(savings), TERMS)
        .orElseThrow()
        .payoff()
        .orElseThrow();
  }

  @Test
  void worksOutPaybacksFromTheEndsOfTheInterval() {
    Investment rig = new Investment(12_000, 4, 10, 1000);
    Payoff payoff = payoff(rig, 40, 50, 60, 50, 30, 70);
    Interval saved = payoff.savedPerDay();
    assertThat(saved.middle()).isCloseTo(50, within(1e-9));
    assertThat(payoff.verdict()).isEqualTo(Verdict.PAYS_BACK);
    assertThat(payoff.simplePayback().middle().orElseThrow())
        .isCloseTo(12_000 / 9000.0, within(1e-9));
    assertThat(payoff.simplePayback().soonest().orElseThrow())
        .isCloseTo(12_000 / (200 * saved.high() - 1000), within(1e-9));
    assertThat(payoff.simplePayback().latest().orElseThrow())
        .isCloseTo(12_000 / (200 * saved.low() - 1000), within(1e-9));
    assertThat(payoff.netPresentValue().middle())
        .isCloseTo(9000 * 3.169865446 - 12_000, within(1e-3));
    assertThat(payoff.netPresentValue().low()).isLessThan(payoff.netPresentValue().high());
    // 9,000 in a year are worth 8,181.82 at its end and 7,438.02 a year later.
    assertThat(payoff.payback().middle().orElseThrow())
        .isCloseTo(1 + (12_000 - 8181.8182) / 7438.0165, within(1e-6));
  }

  @Test
  void countsNoInterestWhereThereIsNone() {
    Payoff payoff = payoff(new Investment(12_000, 4, 0, 1000), 50, 50);
    assertThat(payoff.payback()).isEqualTo(payoff.simplePayback());
    assertThat(payoff.payback().middle().orElseThrow()).isCloseTo(12_000 / 9000.0, within(1e-9));
  }

  /** 200 days a year, 1,000 to keep it, 4 years at 10 %: 1 a year is worth 3.16987 today. */
  @Test
  void judgesByWhatItIsWorthWithItsInterest() {
    Investment rig = new Investment(12_000, 4, 10, 1000);
    // (200 x 24 - 1,000) x 3.16987 = 12,045: above the price by little; 23 a day are below it.
    assertThat(payoff(rig, 24, 24).verdict()).isEqualTo(Verdict.PAYS_BACK);
    assertThat(payoff(rig, 24, 24).netPresentValue().low()).isCloseTo(45.49, within(0.01));
    assertThat(payoff(rig, 23, 23).verdict()).isEqualTo(Verdict.NEVER_PAYS_BACK);
    assertThat(payoff(rig, 23, 23).netPresentValue().high()).isCloseTo(-588.48, within(0.01));
    // Without interest it would be back in 3.3 of its 4 years.
    assertThat(payoff(rig, 23, 23).simplePayback().middle().orElseThrow()).isLessThan(4);
    Payoff may = payoff(rig, 20, 28, 20, 28);
    assertThat(may.verdict()).isEqualTo(Verdict.MAY_PAY_BACK);
    assertThat(may.netPresentValue().low()).isNegative();
    assertThat(may.netPresentValue().high()).isPositive();
    // A worth of its own: what keeping it saves pays it back though no day is cheaper.
    Investment frugal = new Investment(3000, 4, 10, -2000);
    assertThat(payoff(frugal, -2, -2).verdict()).isEqualTo(Verdict.PAYS_BACK);
  }

  @Test
  void isHonestWhereNothingIsSaved() {
    Investment rig = new Investment(12_000, 4, 10, 1000);
    assertThat(payoff(rig, -40, -50, -60).verdict()).isEqualTo(Verdict.NEVER_PAYS_BACK);
    assertThat(payoff(rig, -40, -50, -60).payback().soonest()).isEqualTo(OptionalDouble.empty());
    assertThat(payoff(null, -40, -50, -60).verdict()).isEqualTo(Verdict.COSTS_MORE);
    assertThat(payoff(rig, -40, 50, -60, 40).verdict()).isEqualTo(Verdict.NO_DIFFERENCE);
    assertThat(payoff(rig, 0, 0, 0).verdict()).isEqualTo(Verdict.NO_DIFFERENCE);
    assertThat(payoff(null, 4, 5, 6).verdict()).isEqualTo(Verdict.SAVES);
    assertThat(payoff(rig, 1, 2, 3).verdict()).isEqualTo(Verdict.NEVER_PAYS_BACK);
    assertThat(payoff(rig, 3, 5, 8, 4).verdict()).isEqualTo(Verdict.NEVER_PAYS_BACK);
    assertThat(payoff(rig, 500).verdict()).isEqualTo(Verdict.TOO_FEW_DAYS);
  }

  @Test
  void aDemandOfItsOwnIsNotHeldAgainstTheBaseInMoney() {
    Scenario busier = scenario(null, new DemandChange.MoreJobs(10, 1));
    ScenarioResult result = ScenarioResult.of(busier, 0, days(5, 6), TERMS).orElseThrow();
    assertThat(result.payoff()).isEmpty();
    assertThat(result.batches()).isEqualTo(2);
    assertThat(ScenarioResult.of(busier, 30, days(5, 6), TERMS)).isEmpty();
  }

  @Test
  void anAssumedDemandLeavesRegularPayAsItIs() {
    Cells cells =
        new Cells(
            List.of(
                cell(Scenario.BASE, 0, "a", 1, 1, new DayCost(100, 0, 0, 300, 0)),
                cell(RIG, 0, "a", 1, 1, new DayCost(150, 0, 0, 100, 0)),
                cell(Scenario.BASE, 0, "b", 1, 1, new DayCost(100, 0, 0, 300, 0)),
                cell(RIG, 0, "b", 1, 1, new DayCost(150, 0, 0, 100, 0))));
    ScenarioResult result = ScenarioResult.of(scenario(null), 0, cells, TERMS).orElseThrow();
    assertThat(result.assumedSaving(0).middle()).isEqualTo(150);
    assertThat(result.assumedSaving(20).middle()).isEqualTo(190);
    assertThat(result.assumedSaving(-50).middle()).isEqualTo(50);
  }

  @Test
  void smallChangesAreSortedByWhatTheyBuyForTheirMoney() {
    List<SmallChange> sorted =
        SmallChange.sorted(
            List.of(
                small("dear", new Investment(8000, 1, 0, 0), 100),
                small("cheap", new Investment(800, 1, 0, 0), 20),
                small("unknown", null, 500)));
    assertThat(sorted)
        .extracting(change -> change.result().scenario().title())
        .containsExactly("cheap", "dear", "unknown");
    assertThat(sorted.get(0).spentPerDay()).isEqualTo(4);
    assertThat(sorted.get(0).perMoney()).hasValue(5);
    assertThat(sorted.get(1).perMoney()).hasValue(2.5);
    assertThat(sorted.get(2).perMoney()).isEmpty();
  }

  @Test
  void whatMayBeLuckStandsBelow() {
    SmallChange sure = small("sure", new Investment(8000, 1, 0, 0), 1);
    SmallChange luck = small("luck", new Investment(8, 1, 0, 0), 50, -49, 40);
    assertThat(luck.perMoney().orElseThrow()).isGreaterThan(sure.perMoney().orElseThrow());
    assertThat(SmallChange.sorted(List.of(luck, sure))).containsExactly(sure, luck);
    assertThat(sure.sure()).isTrue();
    assertThat(luck.sure()).isFalse();
  }

  private static SmallChange small(String title, Investment price, double... savings) {
    Scenario scenario =
        new Scenario(RIG, title, List.of(new FloorChange.MoreUnits("kit", 1, null)), price);
    return SmallChange.of(
        ScenarioResult.of(
                scenario, 0, days(savings.length == 1 ? twice(savings[0]) : savings), TERMS)
            .orElseThrow(),
        TERMS);
  }

  private static double[] twice(double saving) {
    return new double[] {saving, saving};
  }

  @Test
  void anOperatorCostsPayAndNeedsNoPrice() {
    Scenario more =
        new Scenario(RIG, "x", List.of(new FloorChange.OperatorLike("a", "b", "B")), null);
    Cells cells =
        new Cells(
            List.of(
                cell(Scenario.BASE, 0, "a", 1, 1, new DayCost(100, 10, 0, 300, 0)),
                cell(RIG, 0, "a", 1, 1, new DayCost(150, 0, 0, 210, 0))));
    SmallChange change =
        SmallChange.of(ScenarioResult.of(more, 0, cells, TERMS).orElseThrow(), TERMS);
    assertThat(change.spentPerDay()).isEqualTo(50);
    assertThat(change.boughtPerDay().middle()).isEqualTo(100);
    assertThat(change.perMoney()).hasValue(2);
  }

  @Test
  void loadCurvesAreMeans() {
    Cells cells = days(1, 2, 3);
    assertThat(cells.rigLoad(RIG)).hasSize(48).containsOnly(1.0);
    assertThat(cells.crewLoad("nobody")).containsOnly(0.0);
  }
}
