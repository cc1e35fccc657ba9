package rigmorrow.app.whatif;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigmorrow.data.BatchFolder;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.demo.DemoScenarios;
import rigmorrow.data.json.Trees;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.model.comparison.Cells;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.whatif.Past;
import rigmorrow.solver.whatif.WhatIf;
import rigmorrow.solver.whatif.WhatIfListener;

/** Few small days of the demo studio and its scenarios, and what comes of comparing them. */
public final class SmallStudy {
  /** Steps of each plan. */
  public static final int STEPS = 200;

  private SmallStudy() {}

  /** So many days of so many jobs. */
  public static List<Past> days(int count, int jobs) {
    List<Past> days = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      LocalDate date = LocalDate.of(2026, 3, 2).plusDays(i);
      Batch batch = Demo.batch(jobs, i + 1L, date);
      days.add(new Past(date.toString(), batch));
    }
    return days;
  }

  /** The demo's study, with a rig less besides. */
  public static Study study() {
    Study demo = DemoScenarios.study();
    List<Scenario> scenarios = new ArrayList<>(demo.scenarios());
    scenarios.add(
        new Scenario(
            "less", "Without the small table", List.of(new FloorChange.RigGone("R1")), null));
    return new Study(demo.name(), demo.terms(), scenarios, demo.prices(), demo.assumptions());
  }

  /** Writes days and {@code scenarios.yaml} into a folder. */
  public static void write(Path folder, List<Past> days, Study study) {
    try {
      for (Past day : days) {
        BatchFolder.write(folder.resolve("days"), day.batch());
      }
      Files.writeString(
          folder.resolve("scenarios.yaml"),
          ScenarioWriter.write(study, DemoScenarios.INTEREST_PERCENT, Trees.Notation.YAML));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What comes of comparing. */
  public static Compared compared(Study study, List<Past> days, RunSettings settings) {
    WhatIf run =
        FloorSolver.whatIf(
            Compared.arms(study, days.get(0).batch().floor(), settings),
            days,
            settings.seeds(),
            settings.cores(),
            settings.limits(),
            study.terms().pay());
    List<Cell> cells = new ArrayList<>();
    run.run(
        Set.of(),
        new WhatIfListener() {
          @Override
          public void finished(Cell cell, Progress progress) {
            cells.add(cell);
          }

          @Override
          public boolean stopRequested() {
            return false;
          }
        });
    return new Compared(study, days, settings, new Cells(cells), cells.size(), 0, "rigmorrow test");
  }

  /** Settings that stop by steps, on two cores. */
  public static RunSettings settings(int seeds, List<Double> demand, boolean again, boolean more) {
    return new RunSettings(null, STEPS, seeds, 2, demand, again, more);
  }
}
