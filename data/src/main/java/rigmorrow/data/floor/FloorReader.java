package rigmorrow.data.floor;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.schema.FileSchema;
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
  static final Costs NO_COSTS = new Costs("EUR", 0, 1, 0, 0, 0);

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
    JsonNode tree = reading.open(text, notation, FileSchema.FLOOR);
    FloorReader reader = new FloorReader(reading, FloorNames.of(tree));
    return reading.build(reader::floor);
  }

  private Floor floor(Cursor floor) {
    floor.get().whole("version");
    SetupReader setups = new SetupReader(names);
    CrewReader crew = new CrewReader(names);
    RecipeReader recipes = new RecipeReader(names, setups, crew);
    String name = floor.get().text("name");
    ZoneId zone = floor.get().zone("zone");
    List<SetupAttribute> attributes = setups.attributes(floor);
    List<ChangeoverRule> rules = setups.changeovers(floor, crew);
    List<Rig> rigs = new RigReader(names, setups, crew).rigs(floor);
    if (!reading.troubled("attributes") && !reading.troubled("changeovers")) {
      ChangeoverCoverage.check(attributes, rules, rigs, reading.problems());
    }
    Weights weights = floor.optionalObject("weights", FloorReader::weights);
    Costs costs = floor.optionalObject("costs", FloorReader::costs);
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
    return new Weights(
        weights.get().whole("latenessPerMinute"),
        weights.get().whole("changeoverPerMinute"),
        weights.get().whole("finishingPerMinute"),
        weights.get().whole("mustFactor"));
  }

  private static Costs costs(Cursor costs) {
    return new Costs(
        costs.get().text("currency"),
        costs.get().number("operatorPerHour"),
        costs.get().number("overtimeFactor"),
        costs.get().number("rigPerHour"),
        costs.get().number("latePerHour"),
        costs.get().number("leftOutPerJob"));
  }

  /** A fresh set to find ids that come twice. */
  static Set<String> seen() {
    return new HashSet<>();
  }
}
