package rigmorrow.data.floor;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Range;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.SetupAttribute;

/** Reads floor files; FORMAT.md describes them. */
public final class FloorReader {
  /** The version of the format that is read and written. */
  public static final int VERSION = 1;

  /** Costs when a floor file gives none: money does not count. */
  static final Costs NO_COSTS = new Costs("EUR", 0, 1, 0, 0);

  private final Reading reading;
  private final FloorNames names;

  private FloorReader(Reading reading, FloorNames names) {
    this.reading = reading;
    this.names = names;
  }

  /**
   * Reads a floor.
   *
   * @param file name for messages
   * @param text content of the file
   * @param notation how it is written
   * @throws InputException with everything that is wrong with it
   */
  public static Floor read(String file, String text, Trees.Notation notation)
      throws InputException {
    return read(text, notation, new Reading(new Problems(file)));
  }

  static Floor read(String text, Trees.Notation notation, Reading reading) throws InputException {
    JsonNode tree = Trees.read(text, notation, reading.problems());
    reading.problems().throwIfAny();
    FloorReader reader = new FloorReader(reading, FloorNames.of(tree));
    Floor floor = Cursor.readRoot(tree, "floor", reading, reader::floor);
    reading.problems().throwIfAny();
    return Objects.requireNonNull(floor);
  }

  private Floor floor(Cursor floor) {
    floor.get().whole("version", Range.of(VERSION, VERSION));
    SetupReader setups = new SetupReader(names);
    CrewReader crew = new CrewReader(names);
    RecipeReader recipes = new RecipeReader(names, setups, crew);
    String name = floor.get().text("name");
    ZoneId zone = floor.get().zone("zone");
    int before = reading.problems().count();
    List<SetupAttribute> attributes = setups.attributes(floor);
    List<ChangeoverRule> rules = setups.changeovers(floor, crew);
    boolean tablesSound = reading.problems().count() == before;
    List<Rig> rigs = new RigReader(names, setups, crew).rigs(floor);
    if (tablesSound) {
      ChangeoverCoverage.check(attributes, rules, rigs, reading.problems());
    }
    Weights weights = floor.optionalObject("weights", "weights", FloorReader::weights);
    Costs costs = floor.optionalObject("costs", "costs", FloorReader::costs);
    return new Floor(
        name,
        zone,
        rigs,
        crew.kits(floor),
        crew.fetches(floor),
        crew.operators(floor),
        attributes,
        rules,
        recipes.recipes(floor),
        recipes.itemSetups(floor),
        recipes.handling(floor),
        recipes.physics(floor),
        weights == null ? Weights.DEFAULT : weights,
        costs == null ? NO_COSTS : costs);
  }

  private static Weights weights(Cursor weights) {
    Weights standard = Weights.DEFAULT;
    return new Weights(
        weights.get().whole("latenessPerMinute", Bounds.POINTS, standard.latenessPerMinute()),
        weights.get().whole("changeoverPerMinute", Bounds.POINTS, standard.changeoverPerMinute()),
        weights.get().whole("finishingPerMinute", Bounds.POINTS, standard.finishingPerMinute()),
        weights.get().whole("mustFactor", Range.of(1, 1_000), standard.mustFactor()));
  }

  private static Costs costs(Cursor costs) {
    String currency = costs.get().text("currency", NO_COSTS.currency());
    if (!currency.matches("[A-Z]{3}")) {
      costs.refuse("currency", "three capital letters such as EUR");
      currency = NO_COSTS.currency();
    }
    return new Costs(
        currency,
        costs.get().number("operatorPerHour", Bounds.MONEY, 0),
        costs.get().number("overtimeFactor", Range.of(1, 100), 1),
        costs.get().number("rigPerHour", Bounds.MONEY, 0),
        costs.get().number("latePerHour", Bounds.MONEY, 0));
  }

  /** A fresh set to find ids that come twice. */
  static Set<String> seen() {
    return new HashSet<>();
  }
}
