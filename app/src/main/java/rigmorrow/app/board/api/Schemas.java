package rigmorrow.app.board.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Describes records as JSON Schema (draft 2020-12, which is what OpenAPI 3.1 takes), as Jackson
 * writes and reads them. A component may be null where it says {@code @Nullable}; records of the
 * view package are always written whole, in others such a component may be left out, and so may one
 * with a default value.
 */
final class Schemas {
  private static final String LOCAL_TIME = "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2})?$";

  private final String home;
  private final JsonNodeFactory nodes = JsonNodeFactory.instance;
  private final Map<String, Class<?>> owners = new TreeMap<>();
  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  /**
   * @param home where the descriptions will stand in their document, as the start of a reference
   */
  Schemas(String home) {
    this.home = home;
  }

  /** A reference to a record's description, which is made when it is not there yet. */
  ObjectNode reference(Class<?> type) {
    return nodes.objectNode().put("$ref", home + define(type));
  }

  /** Every description made so far, by name. */
  ObjectNode definitions() {
    ObjectNode all = nodes.objectNode();
    definitions.forEach(all::set);
    return all;
  }

  private String define(Class<?> type) {
    String name = type.getSimpleName();
    Class<?> owner = owners.putIfAbsent(name, type);
    if (owner != null && owner != type) {
      throw new IllegalStateException("two types are called " + name + ": " + owner + ", " + type);
    }
    if (owner == null) {
      ObjectNode definition = nodes.objectNode();
      definitions.put(name, definition);
      if (type.isRecord()) {
        describe(definition, type, null);
      } else {
        choice(definition, type);
      }
    }
    return name;
  }

  /** A sealed interface whose records are told apart by the property {@code kind}. */
  private void choice(ObjectNode definition, Class<?> type) {
    JsonSubTypes subtypes = type.getAnnotation(JsonSubTypes.class);
    if (subtypes == null) {
      throw new IllegalStateException("no description is known of " + type);
    }
    definition.put("type", "object");
    ArrayNode kinds = definition.putObject("properties").putObject("kind").putArray("enum");
    definition.putArray("required").add("kind");
    ArrayNode all = definition.putArray("allOf");
    for (JsonSubTypes.Type one : subtypes.value()) {
      kinds.add(one.name());
      ObjectNode rule = all.addObject();
      ObjectNode is = rule.putObject("if");
      is.putObject("properties").putObject("kind").put("const", one.name());
      is.putArray("required").add("kind");
      describe(rule.putObject("then"), one.value(), one.name());
    }
  }

  private void describe(ObjectNode definition, Class<?> type, @Nullable String kind) {
    boolean whole = type.getPackageName().endsWith(".view");
    definition.put("type", "object");
    ObjectNode properties = definition.putObject("properties");
    ArrayNode required = nodes.arrayNode();
    if (kind != null) {
      properties.putObject("kind").put("const", kind);
      required.add("kind");
    }
    for (RecordComponent component : type.getRecordComponents()) {
      AnnotatedType annotated = component.getAnnotatedType();
      boolean nullable = annotated.isAnnotationPresent(Nullable.class);
      ObjectNode schema = schema(annotated);
      boolean usual = hasDefault(component);
      if (usual) {
        schema.put("default", false);
      }
      properties.set(component.getName(), nullable ? orNull(schema) : schema);
      if (whole || !(nullable || usual)) {
        required.add(component.getName());
      }
    }
    definition.set("required", required);
    definition.put("additionalProperties", false);
  }

  /** True for a wish that need not be told: false is meant where it is left out. */
  private static boolean hasDefault(RecordComponent component) {
    JsonProperty property = component.getAccessor().getAnnotation(JsonProperty.class);
    return property != null && property.defaultValue().equals("false");
  }

  private ObjectNode orNull(ObjectNode schema) {
    ObjectNode either = nodes.objectNode();
    either.putArray("anyOf").add(schema).addObject().put("type", "null");
    return either;
  }

  private ObjectNode schema(AnnotatedType annotated) {
    Type type = annotated.getType();
    if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
      ObjectNode array = nodes.objectNode().put("type", "array");
      array.set(
          "items",
          schema(((AnnotatedParameterizedType) annotated).getAnnotatedActualTypeArguments()[0]));
      return array;
    }
    if (type instanceof Class<?> plain) {
      return schema(plain);
    }
    throw new IllegalStateException("no description is known of " + type);
  }

  private ObjectNode schema(Class<?> type) {
    ObjectNode schema = nodes.objectNode();
    if (type == String.class) {
      return schema.put("type", "string");
    }
    if (type == int.class || type == Integer.class) {
      return schema
          .put("type", "integer")
          .put("minimum", Integer.MIN_VALUE)
          .put("maximum", Integer.MAX_VALUE);
    }
    if (type == long.class || type == Long.class) {
      return schema
          .put("type", "integer")
          .put("minimum", Long.MIN_VALUE)
          .put("maximum", Long.MAX_VALUE);
    }
    if (type == double.class || type == Double.class) {
      return schema.put("type", "number");
    }
    if (type == boolean.class) {
      return schema.put("type", "boolean");
    }
    if (type == LocalDateTime.class) {
      return schema.put("type", "string").put("pattern", LOCAL_TIME);
    }
    return reference(type);
  }
}
