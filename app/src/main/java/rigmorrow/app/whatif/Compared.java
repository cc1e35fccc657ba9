package rigmorrow.app.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigmorrow.model.check.Require;
import rigmorrow.model.comparison.Cells;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.comparison.SmallChange;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.SmallChanges;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.whatif.Arm;
import rigmorrow.solver.whatif.Past;

/**
 * What came of comparing scenarios, whether or not all cells are there.
 *
 * @param study what was asked
 * @param days they were compared on
 * @param settings how
 * @param cells what came out
 * @param all cells there are when it is finished
 * @param reused cells that were there before this comparison began, 0 to all of them
 * @param program name and version
 */
public record Compared(
    Study study,
    List<Past> days,
    RunSettings settings,
    Cells cells,
    int all,
    int reused,
    String program) {
  private static final Scenario AGAIN =
      new Scenario(Scenario.AGAIN, "The floor as it is, other seeds", List.of(), null);

  public Compared {
    days = List.copyOf(days);
    Require.that(
        reused >= 0 && reused <= cells.all().size(), "reused", reused, "0 to the cells there are");
  }

  /** Everything that is compared, the floor as it is first. */
  public static List<Arm> arms(Study study, Floor floor, RunSettings settings) {
    List<Scenario> scenarios = new ArrayList<>(List.of(Scenario.base()));
    scenarios.addAll(study.scenarios());
    List<Arm> arms = new ArrayList<>(scenarios.stream().map(Arm::of).toList());
    for (double percent : settings.demandPercents()) {
      scenarios.forEach(scenario -> arms.add(Arm.of(scenario, percent)));
    }
    if (settings.again()) {
      arms.add(Arm.again());
    }
    if (settings.oneMore()) {
      SmallChanges.of(floor, study.prices()).forEach(scenario -> arms.add(Arm.of(scenario)));
    }
    return arms;
  }

  /** What a reader is told of everything that may be compared, by the names of the arms. */
  static Map<String, String> titles(Study study, Floor floor) {
    Map<String, String> titles = new HashMap<>();
    List<Scenario> scenarios = new ArrayList<>(List.of(Scenario.base(), AGAIN));
    scenarios.addAll(SmallChanges.of(floor, study.prices()));
    scenarios.addAll(study.scenarios());
    scenarios.forEach(scenario -> titles.put(scenario.name(), scenario.title()));
    return titles;
  }

  /** The floor of the first day. */
  public Floor floor() {
    return days.get(0).batch().floor();
  }

  /** Prices of the first day's floor; the currency is that of all days. */
  public Costs costs() {
    return floor().costs();
  }

  /** True when every cell is there. */
  public boolean whole() {
    return cells.all().size() == all;
  }

  /** True where the floor gives any cost at all. */
  public boolean hasMoney() {
    return cells.all().stream().anyMatch(cell -> cell.outcome().cost().total() > 0);
  }

  /** Cells whose plan breaks a rule. */
  public long broken() {
    return cells.all().stream().filter(cell -> cell.outcome().breaches() > 0).count();
  }

  /** The scenarios that can be compared already, in the order of their file. */
  public List<ScenarioResult> results() {
    return results(study.scenarios(), 0);
  }

  /** The floor as it is against itself with other seeds; empty where that was not asked. */
  public Optional<ScenarioResult> again() {
    return results(List.of(AGAIN), 0).stream().findFirst();
  }

  /** What each small change buys, best first; empty where that was not asked. */
  public List<SmallChange> smallChanges() {
    MoneyTerms terms = study.terms();
    return SmallChange.sorted(
        results(SmallChanges.of(floor(), study.prices()), 0).stream()
            .map(result -> SmallChange.of(result, terms))
            .toList());
  }

  /** A scenario under each demand that was planned, from the lowest; the usual one among them. */
  public Map<Double, ScenarioResult> byDemand(Scenario scenario) {
    List<Double> percents = new ArrayList<>(settings.demandPercents());
    percents.add(0.0);
    Map<Double, ScenarioResult> found = new LinkedHashMap<>();
    percents.stream()
        .sorted()
        .forEach(
            percent ->
                results(List.of(scenario), percent).forEach(result -> found.put(percent, result)));
    return found;
  }

  private List<ScenarioResult> results(List<Scenario> scenarios, double demandPercent) {
    return scenarios.stream()
        .map(scenario -> ScenarioResult.of(scenario, demandPercent, cells, study.terms()))
        .flatMap(Optional::stream)
        .toList();
  }
}
