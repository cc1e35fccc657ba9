package rigmorrow.data.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaException;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.demo.DemoHistory;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Scalars;
import rigmorrow.data.json.Trees;
import rigmorrow.data.plan.PlanJsonReader;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.samples.Samples;
import rigmorrow.data.scenario.ScenarioReader;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.data.shotjson.ShotJsonWriter;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.PinState;

class FileSchemaTest {
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

  private static Shape floor() {
    return FileSchema.FLOOR.shape();
  }

  private static Shape job() {
    return FileSchema.SHOT_LIST.shape().property("jobs").element();
  }

  /** The meta-schema comes with the library: the JSON Schema specification, draft 2020-12. */
  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void isValidUnderTheMetaSchema(FileSchema schema) throws Exception {
    SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    JsonNode tree = new ObjectMapper().readTree(schema.text());
    assertThat(tree.path("$schema").asText()).isEqualTo(DRAFT);
    assertThat(registry.getSchema(SchemaLocation.of(DRAFT)).validate(tree)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void namesNoWebAddressOfItsOwn(FileSchema schema) throws Exception {
    JsonNode tree = new ObjectMapper().readTree(schema.text());
    assertThat(tree.path("$id").asText()).startsWith("urn:rigmorrow:schema:" + schema);
    assertThat(schema.text().replace(DRAFT, "")).doesNotContain("http");
    assertThat(tree.findValuesAsText("$ref")).allMatch(reference -> reference.startsWith("#/"));
  }

  @Test
  void fetchesNothingFromTheNetwork() {
    SchemaRegistry registry = FileSchema.offline();
    assertThatThrownBy(() -> registry.getSchema(SchemaLocation.of("https://example.org/schema")))
        .isInstanceOf(SchemaException.class);
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void closesEveryObjectWithNamedFields(FileSchema schema) throws Exception {
    JsonNode tree = new ObjectMapper().readTree(schema.text());
    assertThat(tree.findParents("properties"))
        .filteredOn(object -> object.has("type"))
        .isNotEmpty()
        .allSatisfy(
            object -> {
              assertThat(object.path("additionalProperties").isBoolean()).isTrue();
              assertThat(object.path("additionalProperties").asBoolean()).isFalse();
              assertThat(object.path("title").asText()).isNotBlank();
              assertThat(object.path("description").asText()).isNotBlank();
            });
  }

  @Test
  void acceptsTheSamplesThatShip() {
    assertAccepted(FileSchema.FLOOR, Samples.text("tiny-floor.yaml"), Trees.Notation.YAML);
    assertAccepted(FileSchema.SHOT_LIST, Samples.text("tiny-shots.json"), Trees.Notation.JSON);
    String scenarios = Samples.text("tiny-scenarios.yaml");
    assertAccepted(FileSchema.SCENARIOS, scenarios, Trees.Notation.YAML);
  }

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void acceptsTheDemo(Trees.Notation notation) {
    assertAccepted(Demo.batch(), notation);
  }

  @Test
  void acceptsThirtyPastDays() {
    DemoHistory.days(30).forEach(batch -> assertAccepted(batch, Trees.Notation.JSON));
  }

  private static void assertAccepted(Batch batch, Trees.Notation notation) {
    assertAccepted(FileSchema.FLOOR, FloorWriter.write(batch.floor(), notation), notation);
    String shots = ShotJsonWriter.write(batch.shotList(), notation);
    assertAccepted(FileSchema.SHOT_LIST, shots, notation);
  }

  private static void assertAccepted(FileSchema schema, String text, Trees.Notation notation) {
    JsonNode tree = Trees.read(text, notation, new Problems("test"));
    assertThat(tree.size()).isPositive();
    assertThat(schema.departures(tree)).isEmpty();
  }

  @Test
  void knowsTheVersionsThatAreReadAndWritten() {
    assertThat(version(FileSchema.FLOOR)).isEqualTo(FloorReader.VERSION);
    assertThat(version(FileSchema.SHOT_LIST)).isEqualTo(ShotJsonReader.VERSION);
    assertThat(version(FileSchema.PLAN)).isEqualTo(PlanJsonReader.VERSION);
    assertThat(version(FileSchema.SCENARIOS)).isEqualTo(ScenarioReader.VERSION);
  }

  private static int version(FileSchema schema) {
    return schema.shape().property("version").keywords().path("const").asInt();
  }

  @Test
  void hasTheWordsOfEveryConstant() {
    Shape recipe = floor().property("recipes").element();
    Shape pin = FileSchema.SHOT_LIST.shape().property("pins").element();
    Shape leftOut = FileSchema.PLAN.shape().property("leftOut").element();
    assertThat(recipe.property("lighting").texts("enum")).isEqualTo(words(Lighting.values()));
    assertThat(pin.property("state").texts("enum")).isEqualTo(words(PinState.values()));
    assertThat(leftOut.property("cause").texts("enum")).isEqualTo(words(LeftOut.Cause.values()));
    assertThat(job().property("heightSource").texts("enum"))
        .isEqualTo(words(HeightSource.values()));
    Shape money = FileSchema.SCENARIOS.shape().property("money");
    assertThat(money.property("crewPaid").texts("enum")).isEqualTo(words(CrewPay.values()));
    assertThat(money.property("workingDaysPerYear").standIn())
        .isEqualTo(MoneyTerms.USUAL.workingDaysPerYear());
    assertThat(money.property("crewPaid").standard().asText())
        .isEqualTo(Scalars.word(MoneyTerms.USUAL.pay()));
  }

  private static List<String> words(Enum<?>[] constants) {
    return Arrays.stream(constants).map(Scalars::word).toList();
  }

  @Test
  void asksForTheFiguresOfTheKindsOfEquipmentThatHaveAny() {
    Shape equipment = floor().property("rigs").element().property("fitted").element();
    assertThat(equipment.keywords().path("allOf").findValuesAsText("const"))
        .containsExactly(Equipment.ROTATOR, Equipment.POWERED_SOCKET, Equipment.OVERHEAD_FRAME);
  }

  @Test
  void hasTheDefaultWeightsOfTheModel() {
    Shape weights = floor().property("weights");
    assertThat(
            Stream.of("latenessPerMinute", "changeoverPerMinute", "finishingPerMinute")
                .map(field -> (int) weights.property(field).standIn()))
        .containsExactly(
            Weights.DEFAULT.latenessPerMinute(),
            Weights.DEFAULT.changeoverPerMinute(),
            Weights.DEFAULT.finishingPerMinute());
    assertThat(weights.property("mustFactor").standIn()).isEqualTo(Weights.DEFAULT.mustFactor());
  }

  @Test
  void hasTheFieldsAndBoundsOfJobs() {
    List<String> names = Arrays.stream(JobField.values()).map(JobField::key).toList();
    assertThat(job().names()).startsWith(names.toArray(String[]::new)).hasSize(names.size() + 1);
    assertThat(job().names()).endsWith("setup");
    assertThat(JobField.LENGTH_MM.range()).isEqualTo(Range.of(1, 100_000));
    assertThat(JobField.MASS_KG.accepted()).isEqualTo("a number above 0, up to 10000");
    assertThat(JobField.HEIGHT_SOURCE.accepted()).isEqualTo("list, device or hand");
  }
}
