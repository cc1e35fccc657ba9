package rigmorrow.solver.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.Outcome;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.statistic.Bootstrap;
import rigmorrow.model.statistic.Interval;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.fixture.RandomFloors;

/** No scenario looks better because the search had luck: random floors, stopped by steps. */
class FairComparisonTest {
  private static final int DAYS = 24;
  private static final int STEPS = 400;
  private static final String TWIN = "the same once more";
  private static final String LESS = "a rig less";
  private static final String MORE = "a rig more";

  private static List<Cell> cells;

  /** Random days on which there is something to plan and the first rig can go. */
  private static List<Past> days() {
    return LongStream.range(0, 1000)
        .mapToObj(seed -> new Past("day-" + seed, RandomFloors.withoutPins(seed)))
        .filter(past -> suits(past.batch()))
        .limit(DAYS)
        .toList();
  }

  private static boolean suits(Batch batch) {
    String first = batch.floor().rigs().get(0).id();
    boolean alone =
        batch.floor().recipes().stream()
            .anyMatch(recipe -> recipe.measuredCaptureSeconds().keySet().equals(Set.of(first)));
    return batch.floor().rigs().size() > 1 && batch.shotList().jobs().size() > 10 && !alone;
  }

  private static Arm arm(String name, ScenarioChange... changes) {
    return Arm.of(new Scenario(name, name, List.of(changes), null));
  }

  private static List<Cell> run(int cores, List<Past> days, List<Arm> arms) {
    List<Cell> all = new ArrayList<>();
    boolean whole =
        FloorSolver.whatIf(arms, days, 1, cores, SolverSettings.steps(STEPS, 0), CrewPay.SHIFT)
            .run(
                Set.of(),
                new WhatIfListener() {
                  @Override
                  public void finished(Cell cell, Progress progress) {
                    all.add(cell);
                  }

                  @Override
                  public boolean stopRequested() {
                    return false;
                  }
                });
    assertThat(whole).isTrue();
    all.sort(Comparator.comparing(cell -> cell.key().toString()));
    return all;
  }

  @BeforeAll
  static void plan() {
    List<Arm> arms =
        List.of(
            Arm.of(Scenario.base()),
            arm(TWIN),
            Arm.again(),
            arm(LESS, new FloorChange.RigGone("rig-0")),
            arm(MORE, new FloorChange.RigLike("rig-0", "twin", "twin")));
    assertThat(days()).hasSize(DAYS);
    assertThat(days().get(0).batch().floor().rigs()).extracting(Rig::id).contains("rig-0");
    cells = run(2, days(), arms);
  }

  private static Map<String, Outcome> outcomes(String scenario) {
    Map<String, Outcome> byDay = new HashMap<>();
    for (Cell cell : cells) {
      if (cell.key().scenario().equals(scenario)) {
        byDay.put(cell.key().batch(), cell.outcome());
      }
    }
    return byDay;
  }

  /** What a scenario costs more than the floor as it is, a day. */
  private static Interval dearer(String scenario) {
    Map<String, Outcome> base = outcomes(Scenario.BASE);
    return Bootstrap.mean(
        outcomes(scenario).entrySet().stream()
            .mapToDouble(
                day -> day.getValue().cost().total() - base.get(day.getKey()).cost().total())
            .toArray());
  }

  @Test
  void plansAreWorkable() {
    assertThat(cells).allMatch(cell -> cell.outcome().breaches() == 0);
  }

  @Test
  void aScenarioDoesNotDifferFromItself() {
    assertThat(outcomes(TWIN)).isEqualTo(outcomes(Scenario.BASE));
    assertThat(dearer(TWIN)).isEqualTo(new Interval(0, 0, 0, DAYS));
  }

  @Test
  void otherSeedsMakeNoDifferenceThatCanBeShown() {
    assertThat(outcomes(Scenario.AGAIN)).isNotEqualTo(outcomes(Scenario.BASE));
    assertThat(dearer(Scenario.AGAIN).holdsZero()).isTrue();
  }

  @Test
  void aRigLessIsNeverBetter() {
    assertThat(dearer(LESS).high()).isPositive();
    Map<String, Outcome> base = outcomes(Scenario.BASE);
    outcomes(LESS)
        .forEach(
            (day, less) ->
                assertThat(less.leftOut()).as(day).isGreaterThanOrEqualTo(base.get(day).leftOut()));
  }

  @Test
  void aRigMoreIsNeverWorse() {
    assertThat(dearer(MORE).low()).isNegative();
  }

  @Test
  void coresDoNotChangeWhatStepsFind() {
    List<Arm> arms =
        List.of(
            Arm.of(Scenario.base()), arm(MORE, new FloorChange.RigLike("rig-0", "twin", "twin")));
    List<Past> few = days().subList(0, 4);
    assertThat(run(2, few, arms))
        .extracting(Cell::outcome)
        .isEqualTo(run(1, few, arms).stream().map(Cell::outcome).toList());
  }

  @Test
  void aPlanThatIsStoppedIsForgotten() {
    List<Cell> all = new ArrayList<>();
    boolean whole =
        FloorSolver.whatIf(
                List.of(Arm.of(Scenario.base())),
                days(),
                1,
                1,
                SolverSettings.steps(1_000_000_000L, 0),
                CrewPay.SHIFT)
            .run(
                Set.of(),
                new WhatIfListener() {
                  private int asked;

                  @Override
                  public void finished(Cell cell, Progress progress) {
                    all.add(cell);
                  }

                  @Override
                  public boolean stopRequested() {
                    return ++asked > 2;
                  }
                });
    assertThat(whole).isFalse();
    assertThat(all).isEmpty();
  }
}
