package rigmorrow.data.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.samples.Samples;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.model.floor.Floor;

/** What the schema refuses is told in our words, once, and in one list with what readers find. */
class SchemaCheckTest {
  private static final String FLOOR = Samples.text("tiny-floor.yaml");
  private static final String SHOTS = Samples.text("tiny-shots.json");

  @Test
  void tellsTheSchemasFindingsAndTheReadersInTheFilesOrder() {
    String broken =
        FLOOR
            .replace("name: Two tables", "nam: Two tables")
            .replace("to: grey, attendedSeconds: 180", "to: gray, attendedSeconds: -180")
            .replace("takesKit: [rotator]", "takesKit: [rotator, rotator, rotators]")
            .replace("plateDiameterMm: 850", "plateDiameterMm: 850.0")
            .replace("blurPixels: 1", "blurPixels: big");
    assertThat(floorProblems(broken))
        .containsExactly(
            "name: nothing there; accepted: a text that is not empty; put digits in quotes",
            "nam: 'unknown field'; accepted: one of version, name, zone, attributes, changeovers,"
                + " rigs, kits, fetches, crew, recipes, itemSetups, handling, physics, weights,"
                + " costs (did you mean name?)",
            "changeovers[0].to: 'gray'; accepted: a value of background or *: white-lit, grey, *"
                + " (did you mean grey?)",
            "changeovers[0].attendedSeconds: '-180'; accepted: a whole number from 0 to 604800",
            "rigs[0].size.plateDiameterMm: '850.0'; accepted: a whole number from 1 to 100000",
            "rigs[0].takesKit: 'rotator twice'; accepted: every word once",
            "rigs[0].takesKit: 'rotators'; accepted: kit: rotator (did you mean rotator?)",
            "physics.blurPixels: 'big'; accepted: a number above 0, up to 1000");
  }

  /** What follows from a refused value is no problem of its own. */
  @Test
  void drawsNoConclusionsFromARefusedValue() {
    assertThat(floorProblems(FLOOR.replace("plateDiameterMm: 850", "plateDiameterMm: 0")))
        .containsExactly(
            "rigs[0].size.plateDiameterMm: '0'; accepted: a whole number from 1 to 100000");
    assertThat(floorProblems(FLOOR.replace("armLowMm: -50", "armLowMm: 900000")))
        .containsExactly(
            "rigs[0].camera.armLowMm: '900000'; accepted: a whole number from -10000 to 100000");
    assertThat(floorProblems(FLOOR.replace("from: \"2026-11-27T12:00\"", "from: \"2026-13-27\"")))
        .containsExactly(
            "rigs[0].closed[0].from: '2026-13-27'; accepted: a date and time such as"
                + " 2026-11-26T09:00");
  }

  @Test
  void takesNullForAFieldThatIsNotThere() throws Exception {
    String with = FLOOR.replace("edgeMarginMm: 20", "edgeMarginMm: null");
    String without = FLOOR.replace("      edgeMarginMm: 20\n", "");
    assertThat(FloorReader.read("null", with, Trees.Notation.YAML))
        .isEqualTo(FloorReader.read("none", without, Trees.Notation.YAML));
    assertThat(floorProblems(FLOOR.replace("edgeMarginMm: 20", "edgMargin: null")))
        .singleElement()
        .asString()
        .contains("edgMargin", "unknown field", "did you mean edgeMarginMm?");
    assertThat(floorProblems(FLOOR.replace("plateDiameterMm: 850", "plateDiameterMm: null")))
        .containsExactly(
            "rigs[0].size.plateDiameterMm: nothing there; accepted: a whole number from 1 to"
                + " 100000");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "lengthMm": 320  | "lengthMm": 1e999  | jobs[0].lengthMm: 'a number too large to be stored'; accepted: a whole number from 1 to 100000
          "days": 2        | "days": 1e999      | days: 'a number too large to be stored'; accepted: a whole number from 1 to 31
          "gtin": "6291041500213" | "gtin": 6291041500213 | jobs[0].gtin: '6291041500213'; accepted: 8, 12, 13 or 14 digits; put digits in quotes
          "version": 1     | "version": "1"     | version: '1'; accepted: 1
          "recipe": "spin" | "recipes": "spin"  | jobs[0].recipe: nothing there; accepted: a recipe of the floor: spin, stills
          """)
  void saysItInOurWords(String right, String wrong, String told) {
    assertThat(SHOTS).contains(right);
    String broken = SHOTS.replaceFirst(right, wrong);
    assertThat(lines(() -> ShotJsonReader.read("broken", broken, Trees.Notation.JSON, floor())))
        .contains(told);
  }

  @Test
  void tellsWhatIsNeededBesideWhatIsGiven() {
    String broken = SHOTS.replaceFirst("\"watts\": \\d+,", "");
    assertThat(broken).isNotEqualTo(SHOTS);
    assertThat(lines(() -> ShotJsonReader.read("broken", broken, Trees.Notation.JSON, floor())))
        .singleElement()
        .asString()
        .endsWith(
            "watts: nothing there; accepted: a whole number from 1 to 100000, since volts is"
                + " given");
  }

  private interface Read {
    Object read() throws InputException;
  }

  private static Floor floor() {
    return Samples.tinyFloor();
  }

  private static List<String> floorProblems(String text) {
    return lines(() -> FloorReader.read("broken", text, Trees.Notation.YAML));
  }

  private static List<String> lines(Read read) {
    return catchThrowableOfType(InputException.class, read::read).problems().stream()
        .map(InputProblem::line)
        .toList();
  }
}
