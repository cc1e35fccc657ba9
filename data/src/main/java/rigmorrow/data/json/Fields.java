package rigmorrow.data.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Builds one object of a tree, field by field in the order of the calls. What is null or empty is
 * left out.
 */
public final class Fields {
  private final ObjectNode node = JsonNodeFactory.instance.objectNode();

  /** The object built so far. */
  public ObjectNode node() {
    return node;
  }

  /** A text; values of other types as their text. */
  public Fields text(String field, @Nullable Object value) {
    if (value != null) {
      node.put(field, value.toString());
    }
    return this;
  }

  /** A whole number. */
  public Fields whole(String field, @Nullable Integer value) {
    if (value != null) {
      node.put(field, value);
    }
    return this;
  }

  /** A whole number that may be large. */
  public Fields large(String field, long value) {
    node.put(field, value);
    return this;
  }

  /** A number. */
  public Fields number(String field, @Nullable Double value) {
    if (value != null) {
      node.put(field, value);
    }
    return this;
  }

  /** True or false. */
  public Fields flag(String field, @Nullable Boolean value) {
    if (value != null) {
      node.put(field, value);
    }
    return this;
  }

  /** Texts in their order. */
  public Fields texts(String field, Collection<String> values) {
    if (!values.isEmpty()) {
      ArrayNode array = node.putArray(field);
      values.forEach(array::add);
    }
    return this;
  }

  /** Texts whose order means nothing, sorted so that the same object gives the same file. */
  public Fields words(String field, Collection<String> values) {
    return texts(field, new TreeSet<>(values));
  }

  /** Another object. */
  public Fields object(String field, @Nullable Fields value) {
    if (value != null && !value.node.isEmpty()) {
      node.set(field, value.node);
    }
    return this;
  }

  /** A list of objects. */
  public <T> Fields list(String field, List<T> values, Function<T, Fields> writer) {
    if (!values.isEmpty()) {
      ArrayNode array = node.putArray(field);
      values.forEach(value -> array.add(writer.apply(value).node));
    }
    return this;
  }

  /** Texts by name, sorted by name. */
  public Fields map(String field, Map<String, String> values) {
    Fields map = new Fields();
    new TreeMap<>(values).forEach(map::text);
    return object(field, map);
  }
}
