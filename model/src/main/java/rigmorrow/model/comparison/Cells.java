package rigmorrow.model.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.outcome.Outcome;
import rigmorrow.model.scenario.Scenario;

/** The cells of a run, finished or not, by what they are of. */
public final class Cells {
  private final List<Cell> all;
  private final Map<Arm, Map<String, Map<Long, Outcome>>> byArm = new LinkedHashMap<>();

  private record Arm(String scenario, double demandPercent) {}

  /**
   * @param cells in any order, each once
   */
  public Cells(List<Cell> cells) {
    this.all = List.copyOf(cells);
    for (Cell cell : cells) {
      byArm
          .computeIfAbsent(
              new Arm(cell.key().scenario(), cell.key().demandPercent()), arm -> new TreeMap<>())
          .computeIfAbsent(cell.key().batch(), batch -> new TreeMap<>())
          .put(cell.key().seed(), cell.outcome());
    }
  }

  /** Every cell. */
  public List<Cell> all() {
    return all;
  }

  /** Outcomes of a scenario under the demand of the batches. */
  public List<Outcome> outcomes(String scenario) {
    return of(scenario, 0).values().stream().flatMap(seeds -> seeds.values().stream()).toList();
  }

  /**
   * How a figure of a scenario differs from the floor as it is under the same demand.
   *
   * @return nothing where they have no batch and seed in common
   */
  public Optional<Difference> difference(String scenario, double demandPercent, Figure figure) {
    List<Pair> pairs = pairs(scenario, demandPercent, figure);
    return pairs.isEmpty() ? Optional.empty() : Optional.of(Difference.of(figure, pairs));
  }

  /** One pair for each batch that both have, by name. */
  private List<Pair> pairs(String scenario, double demandPercent, Figure figure) {
    Map<String, Map<Long, Outcome>> base = of(Scenario.BASE, demandPercent);
    List<Pair> pairs = new ArrayList<>();
    of(scenario, demandPercent)
        .forEach(
            (batch, theirs) -> {
              Map<Long, Outcome> ours = new TreeMap<>(base.getOrDefault(batch, Map.of()));
              ours.keySet().retainAll(theirs.keySet());
              if (!ours.isEmpty()) {
                Map<Long, Outcome> both = new TreeMap<>(theirs);
                both.keySet().retainAll(ours.keySet());
                pairs.add(new Pair(batch, mean(ours, figure::of), mean(both, figure::of)));
              }
            });
    return pairs;
  }

  private static double mean(Map<Long, Outcome> bySeed, ToDoubleFunction<Outcome> figure) {
    return bySeed.values().stream().mapToDouble(figure).average().orElse(0);
  }

  /** How many rigs are taken in each half hour of a day, on average. */
  public List<Double> rigLoad(String scenario) {
    return load(scenario, Outcome::rigLoad);
  }

  /** How many operators are at work in each half hour of a day, on average. */
  public List<Double> crewLoad(String scenario) {
    return load(scenario, Outcome::crewLoad);
  }

  private List<Double> load(
      String scenario, java.util.function.Function<Outcome, LoadCurve> curve) {
    List<Outcome> outcomes = outcomes(scenario);
    List<Double> means = new ArrayList<>();
    for (int i = 0; i < LoadCurve.PARTS; i++) {
      int part = i;
      means.add(
          outcomes.stream()
              .mapToDouble(outcome -> curve.apply(outcome).mean(part, outcome.days()))
              .average()
              .orElse(0));
    }
    return means;
  }

  private Map<String, Map<Long, Outcome>> of(String scenario, double demandPercent) {
    return byArm.getOrDefault(new Arm(scenario, demandPercent), Map.of());
  }
}
