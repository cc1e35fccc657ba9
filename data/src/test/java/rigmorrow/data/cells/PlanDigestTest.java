package rigmorrow.data.cells;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees.Notation;
import rigmorrow.data.samples.Samples;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.data.shotjson.ShotJsonWriter;
import rigmorrow.model.change.ScenarioBatch;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.Batch;

class PlanDigestTest {
  private static final Batch BATCH = Samples.tinyBatch();

  private static String planned(ScenarioChange... changes) {
    return planned(CrewPay.SHIFT, changes);
  }

  private static String planned(CrewPay pay, ScenarioChange... changes) {
    ScenarioBatch made = ScenarioMaker.of(BATCH, List.of(changes));
    Floor floor = made.batch().floor();
    return PlanDigest.planned(
        PlanDigest.floor(floor),
        PlanDigest.floor(floor.withCrew(made.regularCrew())),
        PlanDigest.list(made.batch().shotList()),
        pay);
  }

  /** A digest of a text that left something out would take two plans for one. */
  @Test
  void whatIsPlannedIsWrittenWhole() throws Exception {
    List<Scenario> scenarios = new ArrayList<>(List.of(Scenario.base()));
    scenarios.addAll(Samples.tinyScenarios().scenarios());
    for (Scenario scenario : scenarios) {
      Batch made = ScenarioMaker.of(BATCH, scenario.changes()).batch();
      String floor = FloorWriter.write(made.floor(), Notation.JSON);
      assertThat(FloorReader.read("floor", floor, Notation.JSON))
          .as(scenario.name())
          .isEqualTo(made.floor());
      String list = ShotJsonWriter.write(made.shotList(), Notation.JSON);
      assertThat(ShotJsonReader.read("list", list, Notation.JSON, made.floor()))
          .as(scenario.name())
          .isEqualTo(made.shotList());
    }
  }

  @Test
  void everyChangeThatMakesADifferenceHasAnotherName() {
    List<Scenario> scenarios = Samples.tinyScenarios().scenarios();
    Set<String> names = new HashSet<>(List.of(planned()));
    scenarios.forEach(
        scenario -> names.add(planned(scenario.changes().toArray(ScenarioChange[]::new))));
    assertThat(names).hasSize(1 + scenarios.size());
  }

  @Test
  void whatComesToTheSameHasOneName() {
    assertThat(planned()).matches("[0-9a-f]{32}").isEqualTo(planned());
    assertThat(planned(new DemandChange.MoreJobs(0, 1))).isEqualTo(planned());
  }

  @Test
  void whatIsPaidForIsPartOfIt() {
    assertThat(planned(CrewPay.HANDS_ON)).isNotEqualTo(planned());
    String operator = BATCH.floor().crew().get(0).id();
    List<String> one = Collections.singletonList(operator);
    assertThat(planned(new FloorChange.LongerHours(List.of(), one, 0, 30, true)))
        .isNotEqualTo(planned(new FloorChange.LongerHours(List.of(), one, 0, 30, false)));
  }

  @Test
  void theSeedIsPartOfAPlan() {
    assertThat(PlanDigest.plan("aa", 1)).isNotEqualTo(PlanDigest.plan("aa", 1_000_001));
  }
}
