package rigmorrow.data.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalTime;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.samples.FormatPage;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.floor.Weights;

class FloorReaderTest {
  private static final String TINY = Samples.text("tiny-floor.yaml");

  @Test
  void knowsExactlyTheFieldsThatAreDescribed() throws Exception {
    Reading reading = new Reading(new Problems("tiny"));
    FloorReader.read(TINY, Trees.Notation.YAML, reading);
    assertThat(new TreeMap<>(reading.known())).isEqualTo(FormatPage.section("Floor file"));
  }

  @Test
  void fillsInWhatIsLeftOut() throws Exception {
    String bare = TINY.replaceAll("(?m)^(weights|costs): .*$", "");
    Floor floor = FloorReader.read("bare", bare, Trees.Notation.YAML);
    assertThat(floor.weights()).isEqualTo(Weights.DEFAULT);
    assertThat(floor.costs().operatorPerHour()).isZero();
    Rig second = floor.rigs().get(1);
    assertThat(second.size().edgeMarginMm()).isZero();
    assertThat(second.changeoverFactor()).isEqualTo(1);
    assertThat(second.captureFactors()).isEmpty();
    assertThat(second.ring()).isNull();
    assertThat(floor.recipes().get(0).rows().get(0).sweepDeg()).isEqualTo(360);
  }

  @Test
  void takesTheSameDefaultsForAnEmptySectionAsForNone() throws Exception {
    String none = TINY.replaceAll("(?m)^(weights|costs): .*$", "");
    String empty = none + "\nweights: {}\ncosts: {}\n";
    assertThat(FloorReader.read("empty", empty, Trees.Notation.YAML))
        .isEqualTo(FloorReader.read("none", none, Trees.Notation.YAML));
  }

  @Test
  void tellsProblemsOfAllSectionsAtOnce() {
    String broken =
        TINY.replace("zone: Europe/Berlin", "zone: Europe/Nowhere")
            .replace("jerkDegPerS3: 720", "jerkDegPerS3: 0")
            .replace("takesKit: [rotator]", "takesKit: [rotators]")
            .replace("lighting: strobe", "lighting: strobes")
            .replace("blurPixels: 1", "blurPixels: -1");
    assertThatThrownBy(() -> FloorReader.read("broken", broken, Trees.Notation.YAML))
        .isInstanceOfSatisfying(
            InputException.class,
            e ->
                assertThat(e.problems())
                    .extracting(problem -> problem.where())
                    .containsExactly(
                        "zone",
                        "rigs[0].plate.jerkDegPerS3",
                        "rigs[0].takesKit",
                        "recipes[0].lighting",
                        "physics.blurPixels"));
  }

  @Test
  void takesTwoHundredRigsAndNoMore() throws Exception {
    assertThat(FloorReader.read("many", withRigs(200), Trees.Notation.YAML).rigs()).hasSize(200);
    assertThatThrownBy(() -> FloorReader.read("many", withRigs(201), Trees.Notation.YAML))
        .isInstanceOfSatisfying(
            InputException.class,
            e ->
                assertThat(e.problems())
                    .singleElement()
                    .satisfies(
                        problem -> {
                          assertThat(problem.where()).isEqualTo("rigs");
                          assertThat(problem.value()).isEqualTo("201 of them");
                          assertThat(problem.accepted()).isEqualTo("a list of at most 200");
                        }));
  }

  /** The small floor with its second rig repeated under further ids. */
  private static String withRigs(int count) {
    int start = TINY.indexOf("  - id: t2\n");
    int end = TINY.indexOf("\nkits:");
    String second = TINY.substring(start, end);
    StringBuilder more = new StringBuilder(TINY.substring(0, end));
    for (int rig = 3; rig <= count; rig++) {
      more.append(second.replace("id: t2", "id: t" + rig));
    }
    return more + TINY.substring(end);
  }

  @Test
  void takesMidnightToMidnightAsHours() throws Exception {
    String whole = TINY.replace("from: \"10:00\", to: \"18:30\"", "from: \"00:00\", to: \"00:00\"");
    Floor floor = FloorReader.read("whole", whole, Trees.Notation.YAML);
    assertThat(floor.crew().get(1).shifts())
        .containsExactly(new OpenHours(Set.of(), LocalTime.MIDNIGHT, LocalTime.MIDNIGHT));
  }

  /** Deep enough to overflow the stack of a reader that calls itself for each level. */
  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void refusesDeepNestingAsAProblem(Trees.Notation notation) {
    String deep = "{\"version\": " + "[".repeat(20_000) + "]".repeat(20_000) + "}";
    assertRefused(deep, notation);
  }

  @ParameterizedTest
  @ValueSource(ints = {100, 5_000})
  void refusesNumbersWithTooManyDigits(int digits) {
    assertRefused(
        TINY.replace("version: 1", "version: " + "1".repeat(digits)), Trees.Notation.YAML);
    assertRefused("{\"version\": " + "1".repeat(digits) + "}", Trees.Notation.JSON);
  }

  @Test
  void takesWordsForTextsThatOlderYamlTookForFlags() throws Exception {
    String flags = TINY.replace("acrylic", "off");
    Floor floor = FloorReader.read("flags", flags, Trees.Notation.YAML);
    assertThat(floor.rigs().get(1).initialSetup().values())
        .isEqualTo(Map.of("background", "grey", "plate", "off"));
  }

  private static void assertRefused(String text, Trees.Notation notation) {
    assertThatThrownBy(() -> FloorReader.read("odd", text, notation))
        .isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems()).isNotEmpty());
  }
}
