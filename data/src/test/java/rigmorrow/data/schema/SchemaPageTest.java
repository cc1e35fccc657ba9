package rigmorrow.data.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.samples.FormatPage;

/** FORMAT.md and the schemas say the same of every field. */
class SchemaPageTest {
  private static final Map<FileSchema, String> SECTIONS =
      Map.of(
          FileSchema.FLOOR, "Floor file",
          FileSchema.SHOT_LIST, "Shot list in JSON",
          FileSchema.PLAN, "Plan in JSON",
          FileSchema.SCENARIOS, "Scenarios");
  private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
  private static final Pattern FIXED = Pattern.compile("`[^`]+`|-?\\d+|true|false");

  private static final Pattern ANY_BOUNDS =
      Pattern.compile("(-?\\d|above |at least |at most |each once).*");

  /**
   * A field as both describe it.
   *
   * @param name with the kind of its object
   * @param needed true when the schema requires it
   */
  private record Field(String name, boolean needed, Shape shape, FormatPage.Row row) {}

  private static List<Field> fields(FileSchema schema) {
    List<Field> fields = new ArrayList<>();
    Map<String, Map<String, FormatPage.Row>> page = FormatPage.rows(SECTIONS.get(schema));
    kinds(schema)
        .forEach(
            (kind, owner) ->
                page.get(kind)
                    .forEach(
                        (name, row) ->
                            fields.add(
                                new Field(
                                    kind + "." + name,
                                    owner.texts("required").contains(name),
                                    owner.property(name),
                                    row))));
    return fields;
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void haveTheSameFieldsInTheSameOrder(FileSchema schema) {
    Map<String, List<String>> written = new LinkedHashMap<>();
    FormatPage.rows(SECTIONS.get(schema))
        .forEach((kind, rows) -> written.put(kind, List.copyOf(rows.keySet())));
    Map<String, List<String>> ours = new LinkedHashMap<>();
    kinds(schema).forEach((kind, shape) -> ours.put(kind, shape.names()));
    assertThat(ours).isEqualTo(written);
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void agreeOnWhatIsNeeded(FileSchema schema) {
    assertThat(fields(schema))
        .allSatisfy(
            field -> assertThat(field.needed).isEqualTo(field.row.standard().equals("needed")));
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void agreeOnDefaults(FileSchema schema) {
    assertThat(fields(schema))
        .allSatisfy(
            field -> {
              String written = field.row.standard();
              String fixed =
                  FIXED.matcher(written).matches() ? written.replace("`", "") : "no fixed one";
              assertThat(field.shape.standard().asText("no fixed one")).isEqualTo(fixed);
            });
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void agreeOnTheKindOfValue(FileSchema schema) {
    assertThat(fields(schema))
        .allSatisfy(field -> assertThat(field.row.type()).startsWith(kindOfValue(field.shape)));
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void agreeOnBounds(FileSchema schema) {
    assertThat(fields(schema))
        .allSatisfy(
            field -> {
              String bounds = bounds(field.shape);
              if (bounds.isEmpty()) {
                assertThat(field.row.bounds()).doesNotMatch(ANY_BOUNDS);
              } else {
                assertThat(field.row.bounds() + ",").startsWith(bounds + ",");
              }
            });
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void agreeOnWordsToChooseFrom(FileSchema schema) {
    assertThat(fields(schema))
        .allSatisfy(
            field -> {
              boolean list = field.shape.is("array");
              List<String> words = (list ? field.shape.element() : field.shape).texts("enum");
              if (!words.isEmpty()) {
                assertThat(quoted(field.row.type())).isEqualTo(words);
              }
            });
  }

  private static List<String> quoted(String type) {
    return QUOTED.matcher(type).results().map((MatchResult word) -> word.group(1)).toList();
  }

  @ParameterizedTest
  @EnumSource(FileSchema.class)
  void sayWhatEveryFieldMeansAndInWhichUnit(FileSchema schema) {
    Map<String, String> units =
        Map.of("Mm", "millimetre", "Kg", "kilogram", "Seconds", "second", "Deg", "degree");
    assertThat(fields(schema))
        .allSatisfy(
            field -> {
              String description = field.shape.keywords().path("description").asText();
              assertThat(description).endsWith(".");
              units.forEach(
                  (ending, unit) -> {
                    if (field.name.endsWith(ending)) {
                      assertThat(description).containsIgnoringCase(unit);
                    }
                  });
            });
  }

  @Test
  void tellARepeatedWordFromOneThatMayRepeat() {
    Shape rig = FileSchema.FLOOR.shape().property("rigs").element();
    assertThat(bounds(rig.property("takesKit"))).isEqualTo("each once");
    assertThat(bounds(rig.property("cautions"))).isEmpty();
  }

  /** Every kind of object that a file can hold and a floor file cannot, in the page's order. */
  private static Map<String, Shape> kinds(FileSchema schema) {
    Map<String, Shape> found = new LinkedHashMap<>();
    collect(schema.shape(), found);
    if (schema == FileSchema.SCENARIOS) {
      collectedFromFloor().forEach((kind, shape) -> removeSame(found, kind, shape));
    }
    Map<String, Shape> ordered = new LinkedHashMap<>();
    FormatPage.rows(SECTIONS.get(schema))
        .keySet()
        .forEach(kind -> ordered.put(kind, found.remove(kind)));
    assertThat(found).isEmpty();
    return ordered;
  }

  private static Map<String, Shape> collectedFromFloor() {
    Map<String, Shape> found = new LinkedHashMap<>();
    collect(FileSchema.FLOOR.shape(), found);
    return found;
  }

  /** What both describe alike stands on the page once; nothing else has a name twice. */
  private static void removeSame(Map<String, Shape> found, String kind, Shape floors) {
    Shape ours = found.remove(kind);
    if (ours != null) {
      assertThat(ours.keywords().path("properties"))
          .as(kind)
          .isEqualTo(floors.keywords().path("properties"));
    }
  }

  private static void collect(Shape shape, Map<String, Shape> found) {
    if (!shape.kind().isEmpty()) {
      found.put(shape.kind(), shape);
    }
    shape.properties().values().forEach(property -> collect(property, found));
    if (shape.is("array")) {
      collect(shape.element(), found);
    }
  }

  /** What the page's column of types begins with. */
  private static String kindOfValue(Shape shape) {
    if (!shape.kind().isEmpty()) {
      return "[" + shape.kind() + "](#" + shape.kind().toLowerCase(Locale.ROOT) + ")";
    }
    if (shape.keywords().has("enum")) {
      return "`";
    }
    return switch (shape.keywords().path("type").asText()) {
      case "integer" -> "whole number";
      case "number" -> "number";
      case "boolean" -> "true or false";
      case "array" -> "list of " + elements(shape.element());
      case "object" -> "object: ";
      default -> "";
    };
  }

  private static String elements(Shape element) {
    return element.kind().isEmpty() ? "" : kindOfValue(element);
  }

  /** What the page's column of bounds begins with. */
  private static String bounds(Shape shape) {
    JsonNode keywords = shape.keywords();
    if (keywords.has("const")) {
      return keywords.get("const").asText();
    }
    if (shape.is("array")) {
      return listBounds(keywords);
    }
    if (shape.is("object") && shape.kind().isEmpty()) {
      String each = bounds(shape.property("any"));
      return shape.property("any").is("array") ? each.replace("one", "one value each") : each;
    }
    return shape.is("integer") || shape.is("number") ? figureBounds(shape.range()) : "";
  }

  private static String listBounds(JsonNode list) {
    List<String> bounds = new ArrayList<>();
    int least = list.path("minItems").asInt();
    if (list.has("maxItems")) {
      String most = list.get("maxItems").asText();
      bounds.add(least > 0 ? least + " to " + most : "at most " + most);
    } else if (least > 0) {
      bounds.add("at least one");
    }
    if (list.path("uniqueItems").asBoolean()) {
      bounds.add("each once");
    }
    return String.join(", ", bounds);
  }

  private static String figureBounds(Range range) {
    String phrase = range.phrase("").strip();
    if (phrase.isEmpty()) {
      return "64 bits";
    }
    return phrase.equals("from 1 to 2")
        ? "1 or 2"
        : phrase.replaceFirst("^from ", "").replaceFirst("^of at", "at");
  }
}
