package rigmorrow.app.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigmorrow.data.demo.DemoHistory;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.statistic.Interval;
import rigmorrow.solver.whatif.Past;

/** The demo's past days by steps: no scenario looks better because the search had luck. */
class DemoFairnessTest {
  private static final int DAYS = 6;
  private static final int SEEDS = 2;
  private static final int STEPS = 20_000;
  private static final List<String> RIGS = List.of("R1", "R2", "R3", "R4", "R5", "R6");

  private static Compared compared;

  @BeforeAll
  static void compare() {
    List<Past> days = new ArrayList<>();
    for (int i = 0; i < DAYS; i++) {
      days.add(new Past("day" + i, DemoHistory.batch(3 * i)));
    }
    List<Scenario> scenarios = new ArrayList<>();
    scenarios.add(new Scenario("same", "The same", List.of(), null));
    for (String rig : RIGS) {
      scenarios.add(
          new Scenario("no-" + rig, "Without " + rig, List.of(new FloorChange.RigGone(rig)), null));
    }
    Study study = new Study("fair", SmallStudy.study().terms(), scenarios, Study.Prices.NONE);
    compared =
        SmallStudy.compared(
            study, days, new RunSettings(null, STEPS, SEEDS, 2, List.of(), true, false));
  }

  @Test
  void plansKeepTheRules() {
    assertThat(compared.broken()).isZero();
    assertThat(compared.cells().all()).hasSize(DAYS * SEEDS * 9);
  }

  @Test
  void aScenarioDoesNotDifferFromItself() {
    ScenarioResult same = compared.results().get(0);
    for (Figure figure : Figure.values()) {
      assertThat(same.difference(figure).same()).as(figure.name()).isTrue();
      assertThat(same.difference(figure).difference()).isEqualTo(new Interval(0, 0, 0, DAYS));
    }
    assertThat(same.payoff().orElseThrow().verdict()).isEqualTo(Payoff.Verdict.NO_DIFFERENCE);
  }

  @Test
  void otherSeedsMakeNoDifferenceThatTheseDaysCanShow() {
    ScenarioResult again = compared.again().orElseThrow();
    assertThat(again.difference(Figure.COST).same()).isFalse();
    assertThat(again.difference(Figure.COST).unsure()).isTrue();
  }

  @Test
  void aRigLessIsNeverBetterBeyondNoise() {
    for (ScenarioResult less : compared.results().subList(1, 1 + RIGS.size())) {
      String name = less.scenario().name();
      assertThat(less.payoff().orElseThrow().savedPerDay().low()).as(name).isLessThanOrEqualTo(0);
      assertThat(less.difference(Figure.LEFT_OUT).difference().high())
          .as(name)
          .isGreaterThanOrEqualTo(0);
      assertThat(less.difference(Figure.LATE_HOURS).difference().high())
          .as(name)
          .isGreaterThanOrEqualTo(0);
    }
  }

  @Test
  void withoutTheOnlyRigThatCanTakeThemJobsAreLeftOut() {
    ScenarioResult platform =
        compared.results().stream()
            .filter(result -> result.scenario().name().equals("no-R4"))
            .findFirst()
            .orElseThrow();
    assertThat(platform.difference(Figure.LEFT_OUT).difference().low()).isPositive();
    assertThat(platform.payoff().orElseThrow().verdict()).isEqualTo(Payoff.Verdict.COSTS_MORE);
  }
}
