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

  @Test
  void saysWhenItPaysBack() {
    assertThat(money(RIG, 60, 60, 60, 60))
        .isEqualTo("pays back in 10 months: it saves 60 EUR a day for 12,000 EUR.");
    assertThat(money(RIG, 40, 60, 80, 60))
        .isEqualTo("pays back in 7 to 14 months: it saves 60 EUR (45 to 75) a day for 12,000 EUR.");
  }

  @Test
  void saysWhenItsLifeMayBeTooShort() {
    assertThat(money(RIG, 10, 18, 10, 18))
        .startsWith("pays back in 3.")
        .endsWith("That may be longer than its life of 4 years.");
    assertThat(money(RIG, 8, 9, 8, 9))
        .startsWith("does not pay back within its life of 4 years, but in 6.");
  }

  @Test
  void saysWhenItMayNeverOrNeverPayBack() {
    assertThat(money(RIG, 1, 9, 1, 9))
        .contains("at the soonest, and may never: it saves 5.0 EUR (1.0 to 9.0) a day")
        .endsWith("keeping it costs 2.0 EUR a day.");
    assertThat(money(RIG, 1, 1.5, 1, 1.5))
        .startsWith("never pays back: it saves 1.3 EUR (1.0 to 1.5) a day, and keeping it costs");
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
            "Over its life of 4 years at 5.0 % interest it is worth 39,400 EUR today, its price"
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
