package rigmorrow.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;

class DecodeBenchmarkTest {
  @ParameterizedTest
  @EnumSource(RuleSet.class)
  void decodesADayUnderEachRuleSet(RuleSet rules) {
    DecodeBenchmark benchmark = new DecodeBenchmark();
    benchmark.jobs = 30;
    benchmark.rules = rules;
    benchmark.compile();
    assertThat(benchmark.decode()).isPositive();
  }

  @ParameterizedTest
  @EnumSource(RuleSet.class)
  void keepsEveryRuleOfItsFloor(RuleSet rules) {
    Plan plan = FloorSolver.dispatch(rules.batch(30));
    assertThat(PlanChecker.check(rules.batch(30), plan)).isEmpty();
  }
}
