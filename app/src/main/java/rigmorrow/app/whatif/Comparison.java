package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.report.Counted;
import rigmorrow.data.cells.CellFile;
import rigmorrow.data.cells.RunHead;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.comparison.Cells;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.whatif.Arm;
import rigmorrow.solver.whatif.Past;
import rigmorrow.solver.whatif.WhatIf;
import rigmorrow.solver.whatif.WhatIfListener;

/** Scenarios to be compared over past days, whoever watches: how many plans, and making them. */
public final class Comparison {
  /** Most plans of one comparison: at 2 s each, more than two days on one core. */
  public static final int MOST_PLANS = 100_000;

  private static final double MILLIS_PER_SECOND = 1000;

  private final Study study;
  private final List<Past> days;
  private final RunSettings settings;
  private final String program;
  private final int arms;
  private final int plans;
  private final WhatIf run;

  /**
   * @param days at least one, on which every scenario can be made
   * @param program name and version
   * @throws IllegalArgumentException when two things to compare have one name
   * @throws RefusedException when it would take more than {@link #MOST_PLANS} plans
   */
  public Comparison(Study study, List<Past> days, RunSettings settings, String program) {
    this.study = study;
    this.days = List.copyOf(days);
    this.settings = settings;
    this.program = program;
    List<Arm> all = Compared.arms(study, days.get(0).batch().floor(), settings);
    this.arms = all.size();
    this.plans = counted();
    this.run =
        FloorSolver.whatIf(
            all, days, settings.seeds(), settings.cores(), settings.limits(), study.terms().pay());
  }

  private int counted() {
    long floors = Math.multiplyExact((long) arms, days.size());
    long count = Math.multiplyExact(floors, settings.seeds());
    if (count > MOST_PLANS) {
      String value = count + " plans: " + forWhat();
      String accepted = "at most " + MOST_PLANS + "; fewer scenarios, demands, days or seeds";
      throw new RefusedException(
          "The comparison would take " + value + "; accepted: " + accepted + ".",
          List.of(new InputProblem("", "comparison", "plans", value, accepted)));
    }
    return (int) count;
  }

  /** How many plans it takes. */
  public int plans() {
    return plans;
  }

  /** How many plans of what effort, for what, on how many days. */
  public String inWords() {
    return Counted.of(plans(), "plan") + " of " + settings.effort() + ": " + forWhat();
  }

  private String forWhat() {
    return Counted.of(arms, "floor and demand", "floors and demands")
        + " on "
        + Counted.of(days.size(), "day")
        + " with "
        + Counted.of(settings.seeds(), "seed");
  }

  /** What its cells have in common; cells of another head are not to be compared with them. */
  public RunHead head() {
    return RunHead.of(
        program,
        study,
        days.stream().map(Past::name).toList(),
        days.stream().map(Past::batch).toList(),
        settings.effortOfRun());
  }

  /**
   * Seconds that the rest takes.
   *
   * @param known cells that are there
   * @return nothing where steps stop the plans and none is there to tell how long one takes
   */
  public OptionalLong secondsLeft(List<Cell> known) {
    int left = plans() - known.size();
    if (settings.time() != null) {
      return OptionalLong.of(settings.wholeSeconds(left));
    }
    if (known.isEmpty()) {
      return OptionalLong.empty();
    }
    double each = known.stream().mapToLong(Cell::millis).average().orElse(0);
    return OptionalLong.of(
        Math.round(Math.ceil(each * left / settings.cores() / MILLIS_PER_SECOND)));
  }

  /**
   * The cells that are there from earlier runs; none may go on meanwhile.
   *
   * @param file of the cells, or where they will be
   * @throws InputException when the file is of another run
   */
  public List<Cell> known(Path file) throws IOException, InputException {
    if (!Files.exists(file)) {
      return List.of();
    }
    return wanted(CellFile.read(file, head()));
  }

  private List<Cell> wanted(List<Cell> cells) {
    Set<Cell.Key> keys = new HashSet<>(run.keys());
    return cells.stream().filter(cell -> keys.contains(cell.key())).toList();
  }

  /**
   * Makes the plans that are not there yet, and keeps each before the next.
   *
   * @param file for the cells, in a folder that is there
   * @return what came of it, whether or not the watch ended it early
   * @throws InputException when the file is of another run, or is being written to
   */
  public Compared run(Path file, ComparisonWatch watch) throws IOException, InputException {
    try (CellFile cells = CellFile.open(file, head())) {
      List<Cell> all = new ArrayList<>(wanted(cells.cells()));
      Set<Cell.Key> known = new HashSet<>();
      all.forEach(cell -> known.add(cell.key()));
      watch.begun(List.copyOf(all));
      Keeping keeping = new Keeping(cells, all, watch);
      if (settings.time() != null && known.size() < plans()) {
        watch.warmingUp();
        run.warmUp(keeping);
      }
      run.run(known, keeping);
      return compared(all);
    }
  }

  /** What came of it as far as it is. */
  public Compared compared(List<Cell> cells) {
    return new Compared(study, days, settings, new Cells(cells), plans(), program);
  }

  private record Keeping(CellFile file, List<Cell> all, ComparisonWatch watch)
      implements WhatIfListener {
    @Override
    public void finished(Cell cell, Progress progress) {
      file.append(cell);
      all.add(cell);
      watch.finished(cell, progress);
    }

    @Override
    public boolean stopRequested() {
      return watch.stopRequested();
    }
  }
}
