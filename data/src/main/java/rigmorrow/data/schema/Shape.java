package rigmorrow.data.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a schema says of one value: its keywords, with those of the definition it refers to. */
public final class Shape {
  private static final String DEFINITIONS = "#/$defs/";

  private final JsonNode keywords;
  private final String kind;
  private final Map<String, Shape> properties = new LinkedHashMap<>();

  /** Elements of a list, or values of an object whose names are free. */
  private final @Nullable Shape each;

  private Shape(JsonNode keywords, String kind, JsonNode definitions) {
    this.keywords = keywords;
    this.kind = kind;
    for (Map.Entry<String, JsonNode> field : keywords.path("properties").properties()) {
      properties.put(field.getKey(), of(field.getValue(), definitions));
    }
    JsonNode others = keywords.path(list() ? "items" : "additionalProperties");
    this.each = others.isObject() ? of(others, definitions) : null;
  }

  /** The shape of a whole file, with a name for its kind of object. */
  static Shape ofFile(JsonNode schema, String kind) {
    return new Shape(schema, kind, schema.path("$defs"));
  }

  private static Shape of(JsonNode schema, JsonNode definitions) {
    String reference = schema.path("$ref").asText();
    if (!reference.startsWith(DEFINITIONS)) {
      return new Shape(schema, "", definitions);
    }
    String name = reference.substring(DEFINITIONS.length());
    ObjectNode all = definitions.path(name).deepCopy();
    all.setAll((ObjectNode) schema.deepCopy());
    all.remove("$ref");
    return new Shape(all, all.has("properties") ? name : "", definitions);
  }

  /** Name of the kind of object, such as {@code rig}; empty for anything else. */
  public String kind() {
    return kind;
  }

  /** Names of the fields of an object, in the schema's order. */
  public List<String> names() {
    return List.copyOf(properties.keySet());
  }

  /** True for an object's field of that name, and for any name where names are free. */
  public boolean knows(String name) {
    return properties.containsKey(name) || (!list() && each != null);
  }

  /**
   * The shape of a field.
   *
   * @throws IllegalArgumentException when the schema knows no such field
   */
  public Shape property(String name) {
    Shape shape = properties.getOrDefault(name, list() ? null : each);
    if (shape == null) {
      throw new IllegalArgumentException("The schema of " + kind + " has no field " + name);
    }
    return shape;
  }

  /**
   * The shape of a list's elements.
   *
   * @throws IllegalArgumentException when this is no list
   */
  public Shape element() {
    if (!list() || each == null) {
      throw new IllegalArgumentException("The schema says of no elements");
    }
    return each;
  }

  /** Bounds of a figure. */
  public Range range() {
    return Range.of(keywords);
  }

  /** What the value is when the file gives none; a missing node when that is not a fixed value. */
  public JsonNode standard() {
    return keywords.path("default");
  }

  /** A figure within bounds, to go on reading with when the file gives none that is sound. */
  public double standIn() {
    JsonNode fixed = keywords.has("const") ? keywords.path("const") : standard();
    return fixed.isNumber() ? fixed.doubleValue() : range().standIn();
  }

  /** What would be accepted, as a phrase for the user. */
  public String accepted() {
    return Phrases.accepted(this);
  }

  /** What would be accepted of a figure whose bounds depend on other values. */
  public String accepted(Range bounds) {
    return Phrases.figure(this, bounds);
  }

  /** All that the schema says of this value, references followed. */
  JsonNode keywords() {
    return keywords;
  }

  /** All fields of an object by name, in the schema's order. */
  Map<String, Shape> properties() {
    return Collections.unmodifiableMap(properties);
  }

  /** True for the kind of value: string, integer, number, boolean, array or object. */
  boolean is(String type) {
    return keywords.path("type").asText().equals(type);
  }

  /** The texts under a keyword such as {@code enum} or {@code required}; empty without it. */
  List<String> texts(String keyword) {
    List<String> texts = new ArrayList<>();
    keywords.path(keyword).forEach(text -> texts.add(text.asText()));
    return texts;
  }

  private boolean list() {
    return is("array");
  }
}
