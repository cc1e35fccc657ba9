package rigmorrow.benchmarks.peer.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/** What the small days are said to hold, they hold. */
class SmallDaysTest {
  private static final List<BatchFacts> DAYS = new ArrayList<>();

  static {
    for (int seed = 0; seed < 30; seed++) {
      DAYS.add(new BatchFacts(CompiledBatch.of(SmallDays.draw(seed, 8, 10))));
    }
  }

  @Test
  void eachHasEightToTenJobsOnTwoOrThreeRigsAndTwoOperatorsOfDifferentSkills() {
    for (BatchFacts day : DAYS) {
      assertThat(day.batch().jobCount()).isBetween(8, 10);
      assertThat(day.batch().rigCount()).isBetween(2, 3);
      assertThat(day.operatorCount()).isEqualTo(2);
      assertThat(day.operator(0).skills()).isNotEqualTo(day.operator(1).skills());
    }
  }

  @Test
  void eachHasBreaksAndASampleOfTwoJobs() {
    for (BatchFacts day : DAYS) {
      assertThat(day.crewHours(0).length + day.crewHours(1).length).isGreaterThan(4);
      assertThat(jobs(day).filter(job -> day.sample(job) >= 0)).hasSize(2);
    }
  }

  @Test
  void manyHaveEachOfTheOtherRulesInForce() {
    assertThat(daysWith((day, job) -> day.batch().due(job) < day.horizon())).isEqualTo(30);
    assertThat(daysWith(BatchFacts::must)).isGreaterThan(10);
    assertThat(daysWith((day, job) -> day.batch().ready(job) > 0)).isGreaterThan(10);
    assertThat(daysWith((day, job) -> day.leaves(job) < day.horizon())).isGreaterThan(10);
    assertThat(daysWith(SmallDaysTest::leavesAnAttributeOpen)).isGreaterThan(10);
    assertThat(daysWith(SmallDaysTest::sharesKit)).isGreaterThan(10);
    assertThat(daysWith(SmallDaysTest::takesTwo)).isGreaterThan(3);
  }

  private static long daysWith(BiPredicate<BatchFacts, Integer> what) {
    return DAYS.stream().filter(day -> jobs(day).anyMatch(job -> what.test(day, job))).count();
  }

  private static IntStream jobs(BatchFacts day) {
    return IntStream.range(0, day.batch().jobCount());
  }

  private static IntStream rigs(BatchFacts day, int job) {
    return IntStream.range(0, day.batch().rigCount()).filter(rig -> day.batch().fits(job, rig));
  }

  private static boolean leavesAnAttributeOpen(BatchFacts day, int job) {
    List<SetupCosts> costs = SetupCosts.ofAll(day);
    return rigs(day, job).anyMatch(rig -> !costs.get(rig).left(job).isEmpty());
  }

  private static boolean takesTwo(BatchFacts day, int job) {
    return rigs(day, job).anyMatch(rig -> day.work(job, rig).load().people() == 2);
  }

  /** True when another job asks for the same kind of kit. */
  private static boolean sharesKit(BatchFacts day, int job) {
    return day.floor().kits().stream()
        .anyMatch(
            kit ->
                wants(day, job, kit.id())
                    && jobs(day).anyMatch(other -> other != job && wants(day, other, kit.id())));
  }

  private static boolean wants(BatchFacts day, int job, String kit) {
    return rigs(day, job).anyMatch(rig -> day.work(job, rig).kits().contains(kit));
  }
}
