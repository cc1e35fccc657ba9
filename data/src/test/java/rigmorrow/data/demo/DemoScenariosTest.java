package rigmorrow.data.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.json.Trees;
import rigmorrow.data.scenario.ScenarioReader;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.SmallChanges;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;

class DemoScenariosTest {
  @Test
  void canBeMadeOnEveryPastDay() throws Exception {
    Study study = DemoScenarios.study();
    String text = ScenarioWriter.write(study, DemoScenarios.INTEREST_PERCENT, Trees.Notation.YAML);
    List<Batch> days = DemoHistory.days(30);
    assertThat(ScenarioReader.read("demo", text, Trees.Notation.YAML, days)).isEqualTo(study);
    assertThat(study.scenarios()).hasSize(4);
  }

  @Test
  void everySmallChangeThatIsBoughtHasAPrice() {
    assertThat(SmallChanges.of(DemoStudio.floor(), DemoScenarios.study().prices()))
        .hasSize(16)
        .noneMatch(Scenario::lacksPrice);
  }
}
