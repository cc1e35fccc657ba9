package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.report.Counted;
import rigmorrow.app.whatif.plans.ComparisonWatch;
import rigmorrow.app.whatif.plans.Keeping;
import rigmorrow.app.whatif.plans.PlanNames;
import rigmorrow.app.whatif.plans.ProgramBuild;
import rigmorrow.data.cells.CellFile;
import rigmorrow.data.cells.KeptCell;
import rigmorrow.data.cells.KeptCells;
import rigmorrow.data.cells.Mended;
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
  private final PlanNames names;
  private final Map<String, String> titles;

  /** Every cell with the name of its plan; null until somebody has asked. */
  private volatile @Nullable Map<Cell.Key, String> plansByCell;

  /** The same with names that nobody else asks for. */
  public Comparison(Study study, List<Past> days, RunSettings settings, String program) {
    this(study, days, settings, program, new PlanNames());
  }

  /**
   * @param days at least one, on which every scenario can be made
   * @param program name and version
   * @param names of its plans, by which those that are there already are found
   * @throws IllegalArgumentException when two things to compare have one name
   * @throws RefusedException when it would take more than {@link #MOST_PLANS} plans
   */
  public Comparison(
      Study study, List<Past> days, RunSettings settings, String program, PlanNames names) {
    this.study = study;
    this.days = List.copyOf(days);
    this.settings = settings;
    this.program = program;
    this.names = names;
    this.titles = Compared.titles(study, days.get(0).batch().floor());
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

  /** True where time stops each plan, so that it depends on the machine. */
  public boolean timed() {
    return settings.time() != null;
  }

  /** How many plans of what effort, for what, on how many days. */
  public String inWords() {
    return Counted.of(plans(), "plan") + " of " + settings.effort() + ": " + forWhat();
  }

  /** What a cell is of, as reports call it: the scenario, under which demand, and the day. */
  public String inWords(Cell.Key key) {
    String demand = key.demandPercent() == 0 ? "" : ", " + FigureText.demand(key.demandPercent());
    String seed = settings.seeds() == 1 ? "" : ", seed " + key.seed();
    return titles.getOrDefault(key.scenario(), key.scenario())
        + demand
        + ", on "
        + key.batch()
        + seed;
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
    return new RunHead(program, ProgramBuild.name(), settings.effortOfRun());
  }

  /**
   * Works out the names of all plans, unless that was done. Whatever needs them is quick
   * afterwards, so whoever holds a lock that others wait for does this before.
   */
  public void namePlans() {
    plansByCell(() -> false);
  }

  /**
   * Every cell with the name of its plan.
   *
   * @param stop true ends it early, with the names there are by then
   */
  private Map<Cell.Key, String> plansByCell(BooleanSupplier stop) {
    Map<Cell.Key, String> known = plansByCell;
    if (known == null) {
      known = names.of(run.tasks(), study.terms().pay(), stop);
      plansByCell = known.size() < plans() ? null : known;
    }
    return known;
  }

  /**
   * Seconds that the rest takes. Cells that rest on the same are planned once, which is looked at
   * where some are there already.
   *
   * @param known cells that are there
   * @return nothing where steps stop the plans and none is there to tell how long one takes
   */
  public OptionalLong secondsLeft(List<Cell> known) {
    int left = known.isEmpty() ? plans() : left(known);
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

  /** How many plans are to be made. */
  private int left(List<Cell> known) {
    Map<Cell.Key, String> byCell = plansByCell(() -> false);
    Set<String> missing = new HashSet<>(byCell.values());
    known.forEach(cell -> missing.remove(byCell.get(cell.key())));
    return missing.size();
  }

  /**
   * Cells that are there.
   *
   * @param damaged lines of their file that are no cells, though they should be
   */
  public record Known(List<Cell> cells, int damaged) {
    /**
     * What there is to say of their file before a comparison begins; empty where all can be used.
     */
    public String note(Path file) {
      return damaged == 0
          ? ""
          : Counted.of(damaged, "plan in %s is", "plans in %s are").formatted(file.getFileName())
              + " damaged and lost. A comparison puts a copy of the file aside, uses the other"
              + " plans and makes these anew.";
    }
  }

  /**
   * How many plans a file holds, of these scenarios or others: known at once, where finding those
   * of these scenarios takes a while.
   *
   * @param file of the cells, or where they will be
   * @throws InputException when the file is of another program or effort
   */
  int kept(Path file) throws IOException, InputException {
    return Files.exists(file) ? CellFile.read(file, head()).cells().size() : 0;
  }

  /**
   * The cells that are there from earlier runs, of these scenarios or others; none may go on
   * meanwhile.
   *
   * @param file of the cells, or where they will be
   * @throws InputException when the file is of another program or effort
   */
  public Known known(Path file) throws IOException, InputException {
    if (!Files.exists(file)) {
      return new Known(List.of(), 0);
    }
    KeptCells kept = CellFile.read(file, head());
    return new Known(wanted(kept.cells(), plansByCell(() -> false)), kept.damaged());
  }

  /**
   * Takes what is damaged out of a file of cells, so that the others can be used; a copy of the
   * file as it was is kept beside it.
   *
   * @param file of the cells, or where they will be
   * @return what was done; nothing where nothing is damaged
   * @throws InputException when the file is of another program or effort, or is being written to
   */
  public Optional<Mended> mend(Path file) throws IOException, InputException {
    return Files.exists(file) ? CellFile.mend(file, head()) : Optional.empty();
  }

  /** Of cells that are kept those that rest on what is planned here, under their names here. */
  private static List<Cell> wanted(List<KeptCell> kept, Map<Cell.Key, String> byCell) {
    Map<String, Cell> byPlan = new HashMap<>();
    kept.forEach(one -> byPlan.put(one.plan(), one.cell()));
    List<Cell> wanted = new ArrayList<>();
    byCell.forEach(
        (key, plan) -> {
          Cell cell = byPlan.get(plan);
          if (cell != null) {
            wanted.add(cell.as(key));
          }
        });
    return wanted;
  }

  /**
   * Makes the plans that are not there yet, and keeps each before the next.
   *
   * @param file for the cells, in a folder that is there
   * @return what came of it, whether or not the watch ended it early; nothing where that was before
   *     anybody knew which plans are there already: then the file stays as it was
   * @throws InputException when the file is of another program or effort, or is damaged, or is
   *     being written to
   */
  public Optional<Compared> run(Path file, ComparisonWatch watch)
      throws IOException, InputException {
    Map<Cell.Key, String> byCell = plansByCell(watch::stopRequested);
    if (byCell.size() < plans()) {
      return Optional.empty();
    }
    try (CellFile cells = CellFile.open(file, head())) {
      Keeping keeping = new Keeping(cells, wanted(cells.cells(), byCell), byCell, watch);
      int there = keeping.cells().size();
      watch.begun(keeping.cells());
      if (settings.time() != null && there < plans()) {
        watch.warmingUp();
        run.warmUp(keeping);
      }
      run.run(keeping.spared(), keeping);
      return Optional.of(compared(keeping.cells(), there));
    }
  }

  /**
   * What came of it as far as it is.
   *
   * @param reused how many of the cells were there before it began
   */
  public Compared compared(List<Cell> cells, int reused) {
    return new Compared(study, days, settings, new Cells(cells), plans(), reused, program);
  }
}
