package rigmorrow.model.verify;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;

/**
 * A plan that breaks one rule.
 *
 * @param name what is wrong
 * @param rule that must be reported, and no other
 * @param where it must be reported
 * @param amount that must be reported
 * @param change what makes the day's good plan a broken one
 */
record Broken(String name, FloorRule rule, String where, long amount, Consumer<Day> change) {
  private static final Set<FloorRule> WEIGHED =
      Set.of(
          FloorRule.RIG_TAKES_JOB,
          FloorRule.RIG_HOURS,
          FloorRule.SAMPLE_LEAVES,
          FloorRule.MUST_PROMISE,
          FloorRule.PIN_KEPT,
          FloorRule.WITHIN_PLAN);

  /** Every broken plan. */
  static List<Broken> all() {
    return Stream.of(BrokenJobs.all(), BrokenTogether.all(), BrokenPromises.all())
        .flatMap(List::stream)
        .toList();
  }

  /** What the checker says; the plan states the figures of its broken times. */
  List<Breach> breaches() {
    Day day = new Day();
    change.accept(day);
    return day.breaches(WEIGHED.contains(rule) ? amount : 0);
  }

  @Override
  public String toString() {
    return rule + ": " + name;
  }
}
