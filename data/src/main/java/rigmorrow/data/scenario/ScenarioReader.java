package rigmorrow.data.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.problem.Words;
import rigmorrow.data.schema.FileSchema;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;

/** Reads scenario files and makes every change on every batch; FORMAT.md describes them. */
public final class ScenarioReader {
  /** The version of the format that is read and written. */
  public static final int VERSION = 1;

  private final List<Batch> batches;
  private final Floor floor;
  private final ChangeReader changes;
  private final List<PlacedScenario> placed = new ArrayList<>();
  private double interestPercent;

  private ScenarioReader(List<Batch> batches) {
    this.batches = batches;
    this.floor = batches.get(0).floor();
    this.changes = new ChangeReader(floor);
  }

  /**
   * Reads scenarios.
   *
   * @param file name for messages
   * @param text content of the file
   * @param notation how it is written
   * @param batches on which every change must be possible; at least one
   * @throws InputException with everything that is wrong with it
   */
  public static Study read(String file, String text, Trees.Notation notation, List<Batch> batches)
      throws InputException {
    return readFile(file, text, notation, batches).study();
  }

  /**
   * Reads scenarios, with what their file says for purchases still to come.
   *
   * @param file name for messages
   * @param text content of the file
   * @param notation how it is written
   * @param batches on which every change must be possible; at least one
   * @throws InputException with everything that is wrong with it
   */
  public static ScenarioFile readFile(
      String file, String text, Trees.Notation notation, List<Batch> batches)
      throws InputException {
    return read(text, notation, batches, new Reading(new Problems(file)));
  }

  static ScenarioFile read(
      String text, Trees.Notation notation, List<Batch> batches, Reading reading)
      throws InputException {
    reading.open(text, notation, FileSchema.SCENARIOS);
    ScenarioReader reader = new ScenarioReader(batches);
    Study study = reading.build(reader::study);
    return new ScenarioFile(study, reader.interestPercent);
  }

  private Study study(Cursor file) {
    file.get().whole("version");
    String name = file.get().text("name");
    MoneyTerms terms = file.object("money", this::terms);
    Set<String> seen = new HashSet<>();
    List<Scenario> scenarios = file.list("scenarios", scenario -> scenario(scenario, seen));
    Study.Prices prices = file.optionalObject("prices", this::prices);
    placed.forEach(scenario -> ScenarioCheck.tell(scenario, batches));
    return new Study(
        name,
        terms,
        scenarios,
        prices == null ? Study.Prices.NONE : prices,
        file.texts("assumptions"));
  }

  private MoneyTerms terms(Cursor terms) {
    interestPercent = terms.get().number("interestPercent");
    return new MoneyTerms(
        terms.get().whole("workingDaysPerYear"), terms.get().constant("crewPaid", CrewPay.class));
  }

  private Scenario scenario(Cursor scenario, Set<String> seen) {
    String name = scenario.get().unique("name", seen);
    if (name.equals(Scenario.BASE)) {
      scenario.refuse("name", "another name; this is the floor as it is");
    } else if (Scenario.reserved(name)) {
      scenario.refuse("name", "another name; this one is for what the program compares besides");
    }
    if (name.codePoints().anyMatch(Character::isISOControl) && !name.equals(Cursor.NO_TEXT)) {
      scenario.refuse("name", "a name on one line");
    }
    List<PlacedScenario.Placed> begun = new ArrayList<>();
    List<ScenarioChange> made =
        scenario.list(
            "changes",
            change -> {
              ScenarioChange read = changes.change(change);
              begun.add(new PlacedScenario.Placed(read, change, changes.fields(change).get(0)));
              return read;
            });
    // Before its purchase is read: whatever is wrong with that, its changes are looked at.
    placed.add(new PlacedScenario(scenario, begun));
    return new Scenario(
        name,
        scenario.get().text("title", name),
        made,
        scenario.optionalObject("purchase", this::investment));
  }

  private Investment investment(Cursor purchase) {
    Double own = purchase.get().numberOrNull("interestPercent");
    return new Investment(
        purchase.get().number("price"),
        purchase.get().whole("lifeYears"),
        own == null ? interestPercent : own,
        purchase.get().number("runningPerYear"));
  }

  private Study.Prices prices(Cursor prices) {
    return new Study.Prices(
        prices(prices, "rigs", ids(floor.rigs().stream().map(Rig::id).toList())),
        prices(prices, "kits", ids(floor.kits().stream().map(Kit::id).toList())));
  }

  private Map<String, Investment> prices(Cursor prices, String field, Set<String> known) {
    Set<String> seen = new HashSet<>();
    Map<String, Investment> read = new TreeMap<>();
    prices.list(
        field,
        thing -> {
          String id = thing.get().unique("id", seen);
          if (!id.equals(Cursor.NO_TEXT) && !known.contains(id)) {
            thing.refuse("id", field + ": " + Words.choice(known, id));
          }
          Investment price = investment(thing);
          read.put(id, price);
          return price;
        });
    return read;
  }

  private static Set<String> ids(List<String> ids) {
    return new LinkedHashSet<>(ids);
  }
}
