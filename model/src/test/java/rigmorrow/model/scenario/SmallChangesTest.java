package rigmorrow.model.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.change.ScenarioBatch;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

class SmallChangesTest {
  private static final Investment PRICE = new Investment(900, 5, 4, 10);
  private final Floor floor = FloorFixtures.floor().build();

  @Test
  void areOneMoreOfEachThing() {
    Study.Prices prices = new Study.Prices(Map.of("table", PRICE), Map.of("head", PRICE));
    List<Scenario> all = SmallChanges.of(floor, prices);
    assertThat(all)
        .extracting(Scenario::name)
        .containsExactly(
            "one-more:table", "one-more:platform", "one-more:ann", "one-more:bo", "one-more:head");
    assertThat(all).extracting(Scenario::purchase).containsExactly(PRICE, null, null, null, PRICE);
    assertThat(all.get(4).title()).isEqualTo("One more head (Overhead head)");
  }

  @Test
  void canAllBeMade() {
    Batch batch =
        new Batch(floor, new ShotList(LocalDate.parse("2026-03-02"), 1, List.of(), List.of()));
    for (Scenario scenario : SmallChanges.of(floor, Study.Prices.NONE)) {
      ScenarioBatch made = ScenarioMaker.of(batch, scenario.changes());
      assertThat(made.problems()).isEmpty();
      assertThat(made.batch().floor()).isNotEqualTo(floor);
    }
  }

  /** A rig's id may be an operator's too; the two are compared side by side. */
  @Test
  void haveNamesThatDiffer() {
    Floor same =
        floor.withCrew(
            floor.crew().stream()
                .map(
                    one ->
                        new Operator(
                            one.id().equals("ann") ? "table" : one.id(),
                            one.name(),
                            one.skills(),
                            one.shifts(),
                            one.breaks(),
                            one.closed()))
                .toList());
    assertThat(SmallChanges.of(same, Study.Prices.NONE))
        .extracting(Scenario::name)
        .startsWith("one-more:table", "one-more:platform", "one-more:table.2")
        .doesNotHaveDuplicates()
        .allMatch(Scenario::reserved);
  }

  @Test
  void nobodyElseIsTheFloorAsItIs() {
    assertThatThrownBy(() -> study(Scenario.base())).hasMessageContaining("as-it-is");
    Scenario one = new Scenario("one", "One", List.of(), null);
    assertThatThrownBy(() -> study(one, one)).hasMessageContaining("'one' twice");
    assertThat(study(one).scenarios()).containsExactly(one);
  }

  @Test
  void knowsWhichScenariosChangeTheDemand() {
    List<ScenarioChange> more = List.of(new DemandChange.MoreJobs(5, 1));
    assertThat(new Scenario("a", "A", more, null).changesDemand()).isTrue();
    assertThat(Scenario.base().changesDemand()).isFalse();
  }

  private static Study study(Scenario... scenarios) {
    return new Study("x", MoneyTerms.USUAL, List.of(scenarios), Study.Prices.NONE);
  }
}
