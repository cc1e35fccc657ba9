package rigmorrow.model.scenario;

import java.util.List;
import java.util.Map;
import rigmorrow.model.check.Require;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;

/**
 * What a scenario file says.
 *
 * @param name what it is about
 * @param terms how a day's money becomes a year's
 * @param scenarios names differ, none is that of the floor as it is
 * @param prices what one more of a thing costs, for comparing small changes
 * @param assumptions what a reader must know of the figures, each a sentence
 */
public record Study(
    String name,
    MoneyTerms terms,
    List<Scenario> scenarios,
    Prices prices,
    List<String> assumptions) {
  public Study {
    Require.text("scenarios.name", name);
    scenarios = List.copyOf(scenarios);
    assumptions = List.copyOf(assumptions);
    Require.distinct("scenarios.scenarios", scenarios, Scenario::name);
    Require.that(
        scenarios.stream().noneMatch(scenario -> scenario.name().equals(Scenario.BASE)),
        "scenarios.name",
        Scenario.BASE,
        "another name; this is the floor as it is");
  }

  /** Scenarios of which there is nothing more to say. */
  public Study(String name, MoneyTerms terms, List<Scenario> scenarios, Prices prices) {
    this(name, terms, scenarios, prices, List.of());
  }

  /**
   * What one more of a thing costs.
   *
   * @param rigs another rig like one, by the id of that rig
   * @param kits another piece of a kit, by the id of the kit
   */
  public record Prices(Map<String, Investment> rigs, Map<String, Investment> kits) {
    /** Nothing has a price. */
    public static final Prices NONE = new Prices(Map.of(), Map.of());

    public Prices {
      rigs = Map.copyOf(rigs);
      kits = Map.copyOf(kits);
    }
  }
}
