package rigmorrow.app.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rigmorrow.model.comparison.Cells;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.comparison.SmallChange;
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

class ResultSentencesTest {
  private static final MoneyTerms TERMS = new MoneyTerms(250, CrewPay.SHIFT);
  private static final Investment RIG = new Investment(12_000, 4, 5, 500);

  private final ResultSentences sentences = new ResultSentences("EUR", true);

  private static Cell cell(String scenario, int day, double cost, int kept) {
    return cell(scenario, day, cost, kept, 4);
  }

  private static Cell cell(String scenario, int day, double cost, int kept, long openSeconds) {
    LoadCurve load = new LoadCurve(Collections.nCopies(48, 0L));
    return new Cell(
        new Cell.Key(scenario, 0, "day" + day, 1),
        new Outcome(
            1,
            10,
            0,
            10,
            kept,
            3600,
            57_600,
            7200,
            new Outcome.CrewTime(1, 2, 0),
            new Outcome.RigTime(openSeconds, 2, 1),
            new DayCost(100, 0, 0, cost - 100, 0),
            0,
            load,
            load),
        5);
  }

  private static ScenarioResult result(
      @Nullable Investment purchase, List<ScenarioChange> changes, double... savings) {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < savings.length; i++) {
      cells.add(cell(Scenario.BASE, i, 500, 8));
      cells.add(cell("s", i, 500 - savings[i], 9));
    }
    Scenario scenario = new Scenario("s", "One more rig", changes, purchase);
    return ScenarioResult.of(scenario, 0, new Cells(cells), TERMS).orElseThrow();
  }

  private String money(@Nullable Investment purchase, double... savings) {
    return sentences.money(result(purchase, List.of(), savings));
  }

  /**
   * 60 a day are 15,000 in 250 days, 14,500 when it is kept, and at 5 % worth 13,810 at the end of
   * the year: 12,000 are back after 0.869 of it. 75 a day: 0.690; 45: 10,238 and then 0.181 of
   * 9,751.
   */
  @Test
  void saysWhenItPaysBack() {
    assertThat(money(RIG, 60, 60, 60, 60))
        .isEqualTo(
            "pays back in 10 months with 5 % interest: it saves 60 EUR a day for 12,000 EUR.");
    assertThat(money(RIG, 40, 60, 80, 60))
        .isEqualTo(
            "pays back in 8 to 15 months with 5 % interest: it saves 60 EUR (45 to 75) a day for"
                + " 12,000 EUR.");
    assertThat(money(new Investment(12_000, 4, 0, 500), 60, 60, 60, 60))
        .isEqualTo("pays back in 10 months: it saves 60 EUR a day for 12,000 EUR.");
  }

  /** 18 a day pay back in the fourth year; 10 a day are worth 7,092 in all. */
  @Test
  void saysWhenItsWorthMayBeBelowItsPrice() {
    ScenarioResult result = result(RIG, List.of(), 10, 18, 10, 18);
    assertThat(sentences.money(result))
        .isEqualTo(
            "pays back in 3.3 years with 5 % interest at the soonest, and may never pay back"
                + " within its life of 4 years: it saves 14 EUR (10 to 18) a day for 12,000 EUR,"
                + " and keeping it costs 2.0 EUR a day.");
    assertThat(sentences.presentValue(result))
        .isEqualTo(
            "Over its life of 4 years at 5 % interest it is worth -1,360 EUR (-4,910 to 2,180)"
                + " today, its price paid, so it may never pay back.");
  }

  @Test
  void saysWhenItNeverPaysBack() {
    ScenarioResult result = result(RIG, List.of(), 8, 9, 8, 9);
    assertThat(sentences.money(result))
        .isEqualTo(
            "never pays back: it saves 8.5 EUR (8.0 to 9.0) a day for 12,000 EUR in its life of 4"
                + " years, and keeping it costs 2.0 EUR a day.");
    // 1,500 to 1,750 a year are worth 5,319 to 6,205.
    assertThat(sentences.presentValue(result))
        .isEqualTo(
            "Over its life of 4 years at 5 % interest it is worth -6,240 EUR (-6,680 to -5,790)"
                + " today, its price paid, so it never pays back at this worth.");
    assertThat(money(RIG, -20, -30, -20, -30))
        .isEqualTo("never pays back: a day costs 25 EUR (20 to 30) more.");
  }

  @Test
  void saysWhatTheDaysCannotShow() {
    assertThat(money(null, -40, 50, -60, 40))
        .matches(
            "makes no difference in money that 4 days can show: a day saves -\\d+ to \\d+"
                + " EUR[.]");
    assertThat(money(RIG, -40, 50, -60, 40)).endsWith("EUR, so it may never pay back.");
    assertThat(money(RIG, -4, 5, -6, 4)).endsWith("EUR, so it never pays back.");
    assertThat(money(null, 0, 0, 0)).isEqualTo("makes no difference: all 3 days cost the same.");
    assertThat(money(null, 7))
        .isEqualTo(
            "was compared on one day, which shows nothing of others: that day costs 7.0 EUR"
                + " less.");
  }

  @Test
  void saysWhatItSavesOrCostsWhereNothingIsBought() {
    assertThat(money(null, 20, 30, 20, 30)).isEqualTo("saves 25 EUR (20 to 30) a day.");
    assertThat(money(null, -20, -30, -20, -30)).isEqualTo("costs 25 EUR (20 to 30) a day more.");
  }

  @Test
  void saysWhereMoneyDoesNotCompare() {
    ScenarioResult busier = result(null, List.of(new DemandChange.MoreJobs(9, 1)), 5, 6);
    assertThat(sentences.money(busier)).startsWith("plans another demand");
    assertThat(new ResultSentences("EUR", false).money(result(null, List.of(), 5, 6)))
        .isEqualTo("cannot be judged by money: the floor file gives no costs.");
  }

  @Test
  void saysWhatItIsWorthToday() {
    assertThat(sentences.presentValue(result(RIG, List.of(), 60, 60)))
        .isEqualTo(
            "Over its life of 4 years at 5 % interest it is worth 39,400 EUR today, its price"
                + " paid.");
    assertThat(sentences.presentValue(result(null, List.of(), 60, 60))).isEmpty();
  }

  @Test
  void saysWhatElseTheDaysShow() {
    assertThat(sentences.besides(result(null, List.of(), 5, 6)))
        .isEqualTo("The days also show: promises kept 80.0 % → 90.0 %.");
  }

  private String besides(int kept, long openSeconds) {
    List<Cell> cells = new ArrayList<>();
    for (int day = 0; day < 3; day++) {
      cells.add(cell(Scenario.BASE, day, 500, 8));
      cells.add(cell("s", day, 500, kept, openSeconds));
    }
    Scenario scenario = new Scenario("s", "One more rig", List.of(), null);
    return sentences.besides(ScenarioResult.of(scenario, 0, new Cells(cells), TERMS).orElseThrow());
  }

  @Test
  void leavesOutNoFigureThatDiffers() {
    assertThat(besides(8, 4)).isEqualTo("Nothing else differs by more than these days can show.");
    assertThat(besides(8, 5))
        .isEqualTo(
            "Nothing else differs by more than these days can show, but for the use of rigs and"
                + " crew: rigs' allocation efficiency 50.0 % → 40.0 %.");
    assertThat(besides(9, 5))
        .isEqualTo(
            "The days also show: promises kept 80.0 % → 90.0 %; rigs' allocation efficiency"
                + " 50.0 % → 40.0 %.");
  }

  @Test
  void saysWhatMayBeLuck() {
    assertThat(sentences.luck(result(null, List.of(), -3, 4)))
        .contains(
            "differs from itself by -4.0 to 3.0 EUR a day: what lies within that may be luck");
    assertThat(sentences.luck(result(null, List.of(), 4, 4))).contains("this one does not");
  }

  @Test
  void saysWhichSmallChangeBuysMost() {
    List<ScenarioChange> kit = List.of(new FloorChange.MoreUnits("kit", 1, null));
    SmallChange sure = SmallChange.of(result(RIG, kit, 60, 70), TERMS);
    SmallChange luck = SmallChange.of(result(RIG, kit, -60, 70), TERMS);
    assertThat(sentences.best(List.of(sure, luck)))
        .isEqualTo("Rig buys most for its money: 4.18 for each 1 that it costs.");
    assertThat(sentences.best(List.of(luck))).startsWith("None of them");
    SmallChange poor = SmallChange.of(result(RIG, kit, 6, 7), TERMS);
    assertThat(sentences.best(List.of(poor))).endsWith(", so even that does not earn its cost.");
  }
}
