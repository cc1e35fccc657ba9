package rigmorrow.app.board.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.solver.whatif.Past;
import rigmorrow.solver.whatif.WhatIfListener;

/** What is said of a comparison while it goes on. */
class ComparisonRunTest {
  private static final List<Past> DAYS = SmallStudy.days(2, 6);
  private static Cell some;

  @TempDir Path folder;
  private ComparisonRun run;

  @BeforeAll
  static void plan() {
    RunSettings settings = SmallStudy.settings(1, List.of(), false, false);
    some =
        SmallStudy.compared(SmallStudy.study(), DAYS.subList(0, 1), settings).cells().all().get(0);
  }

  @BeforeEach
  void prepare() {
    run = run(1);
  }

  private ComparisonRun run(int seeds) {
    RunSettings settings =
        new RunSettings(Duration.ofSeconds(3), 0, seeds, 1, List.of(-20.0), true, true);
    Comparison comparison = new Comparison(SmallStudy.study(), DAYS, settings, "rigmorrow test");
    return new ComparisonRun(comparison, List.of(), folder.resolve("cells.csv"), () -> {});
  }

  private String after(String scenario, double demand) {
    Cell.Key key = new Cell.Key(scenario, demand, DAYS.get(1).name(), 1);
    run.finished(some.as(key), new WhatIfListener.Progress(1, 9, Duration.ofSeconds(50)));
    return run.progress().sentence();
  }

  @Test
  void callsPlansAsReportsDo() {
    run.begun(List.of());
    String usual = after("turntable", 0);
    assertThat(usual)
        .startsWith("1 of ")
        .endsWith("left. The last one: Another glass table, on 2026-03-03.");
    assertThat(after("less", -20))
        .endsWith("The last one: Without the small table, 20 % fewer jobs, on 2026-03-03.");
    assertThat(after(Scenario.BASE, 0))
        .endsWith("The last one: The floor as it is, on 2026-03-03.");
    assertThat(after(Scenario.AGAIN, 0))
        .endsWith("The last one: The floor as it is, other seeds, on 2026-03-03.");
    assertThat(after("one-more:R1", 0))
        .endsWith("The last one: One more rig like R1 (Small glass table), on 2026-03-03.");
  }

  @Test
  void tellsSeedsWhereThereAreSeveral() {
    run = run(2);
    run.begun(List.of());
    assertThat(after("turntable", 0)).endsWith("Another glass table, on 2026-03-03, seed 1.");
  }

  @Test
  void saysWhatIsDoneBeforeTheFirstPlan() {
    assertThat(run.progress().sentence()).startsWith("Plans from before are looked for, about ");
    run.begun(List.of());
    assertThat(run.progress().sentence()).startsWith("The first plans are being made, about ");
    run.warmingUp();
    assertThat(run.progress().sentence())
        .startsWith("The machine is being warmed up with plans that do not count, about ");
  }

  @Test
  void takesNoPlanFromBeforeForTheLastOne() {
    run.begun(List.of(some));
    assertThat(run.progress().sentence())
        .startsWith("1 of ")
        .endsWith("left. The others are being made.");
  }
}
