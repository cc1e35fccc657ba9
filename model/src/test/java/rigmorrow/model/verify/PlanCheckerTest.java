package rigmorrow.model.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

class PlanCheckerTest {
  @Test
  void findsNothingInAPlanThatKeepsEveryRule() {
    Day day = new Day();

    assertThat(PlanChecker.check(day.batch(), day.plan(Day.FIGURES))).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("brokenPlans")
  void reportsExactlyTheRuleThatIsBroken(Broken broken) {
    assertThat(broken.breaches())
        .extracting(Breach::rule, Breach::where, Breach::amount)
        .containsExactly(tuple(broken.rule(), broken.where(), broken.amount()));
    assertThat(broken.breaches()).extracting(Breach::sentence).noneMatch(String::isBlank);
  }

  @Test
  void everyHardRuleHasABrokenPlan() {
    Set<FloorRule> hard =
        Arrays.stream(FloorRule.values())
            .filter(rule -> rule.level() == FloorRule.Level.HARD)
            .collect(Collectors.toSet());
    Set<FloorRule> broken = Broken.all().stream().map(Broken::rule).collect(Collectors.toSet());

    assertThat(broken).isEqualTo(hard);
  }

  @Test
  void namesFloorTimesInItsSentences() {
    Day day = new Day();
    day.job("bag").leavesAt(Day.at("08:39"));

    assertThat(day.breaches(30))
        .singleElement()
        .extracting(Breach::sentence)
        .asString()
        .contains("2026-03-02 08:39:30", "2026-03-02 08:39:00");
  }

  @Test
  void refusesAPlanOfAnotherDay() {
    Day day = new Day();
    Plan plan = day.plan(Day.FIGURES);
    Batch other =
        new Batch(
            day.batch().floor(),
            new ShotList(
                FloorFixtures.MONDAY.plusDays(1), 1, day.batch().shotList().jobs(), day.pins()));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> PlanChecker.check(other, plan))
        .withMessageContaining("2026-03-02")
        .withMessageContaining("2026-03-03");
  }

  static Stream<Broken> brokenPlans() {
    return Broken.all().stream();
  }
}
