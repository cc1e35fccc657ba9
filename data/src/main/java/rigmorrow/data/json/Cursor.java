package rigmorrow.data.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Words;

/**
 * Stands on one object of a tree and reads its fields. What is wrong is noted with its path, and a
 * value within bounds is handed out in its place, so that reading goes on and finds the rest. A
 * null in the file counts as a field that is not there.
 */
public final class Cursor {
  /** Stands in for a text that is missing or refused. */
  public static final String NO_TEXT = "\u0000";

  private final JsonNode node;
  private final String path;
  private final String kind;
  private final Reading reading;
  private final boolean silent;
  private final Set<String> asked = new LinkedHashSet<>();

  /** True when a part of this object could not be built, so that not every field was asked for. */
  private boolean cutShort;

  private Cursor(JsonNode node, String path, String kind, Reading reading, boolean silent) {
    this.node = node;
    this.path = path;
    this.kind = kind;
    this.reading = reading;
    this.silent = silent;
  }

  /**
   * Reads a whole tree.
   *
   * @return null when the object could not be built; a problem is noted then
   */
  public static <T> @Nullable T readRoot(
      JsonNode tree, String kind, Reading reading, Function<Cursor, T> reader) {
    if (!tree.isObject()) {
      reading.problems().add("file", "", shown(tree), "an object with fields");
      return null;
    }
    return new Cursor(tree, "", kind, reading, false).finish(reader);
  }

  /** The pass over the file that this cursor belongs to. */
  public Reading reading() {
    return reading;
  }

  /** Path of this object, such as {@code rigs[2].size}; empty for the whole file. */
  public String path() {
    return path;
  }

  /** Names of the fields that are there, for objects whose names are free. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** True when the field is there and not null. */
  public boolean has(String field) {
    return !value(field).isMissingNode();
  }

  /** Notes that a field's value is refused; the field is shown as it stands in the file. */
  public void refuse(String field, String accepted) {
    refuse(field, shown(value(field)), accepted);
  }

  /** Notes that a field is refused, with a value of one's own wording. */
  public void refuse(String field, String value, String accepted) {
    if (!silent) {
      reading.problems().add(pathOf(field), field, value, accepted);
    }
  }

  /** Reads the object in a field that must be there. */
  public <T> T object(String field, String childKind, Function<Cursor, T> reader) {
    JsonNode child = value(field);
    if (!child.isObject()) {
      refuse(field, "an object with fields");
    }
    try {
      return child(child, field, childKind).close(reader);
    } catch (IllegalArgumentException e) {
      cutShort = true;
      throw e;
    }
  }

  /** Reads the object in a field that may be missing; null when it is. */
  public <T> @Nullable T optionalObject(
      String field, String childKind, Function<Cursor, T> reader) {
    return has(field) ? object(field, childKind, reader) : null;
  }

  /**
   * The object in a field that may be missing, with free names: nothing is unknown there.
   *
   * @return an object without fields when there is none
   */
  public Cursor freeObject(String field) {
    JsonNode child = value(field);
    if (!child.isObject() && !child.isMissingNode()) {
      refuse(field, "an object with fields");
    }
    return child(child, field, "");
  }

  /**
   * Reads a list of objects. An object that cannot be built is left out; a problem is noted then.
   *
   * @param least how many there must be
   */
  public <T> List<T> list(String field, String childKind, int least, Function<Cursor, T> reader) {
    List<T> read = new ArrayList<>();
    List<JsonNode> elements = elements(field, least);
    for (int i = 0; i < elements.size(); i++) {
      String childPath = pathOf(field) + "[" + i + "]";
      JsonNode element = elements.get(i);
      if (!element.isObject()) {
        note(childPath, field, element, "an object with fields");
        continue;
      }
      T built = new Cursor(element, childPath, childKind, reading, silent).finish(reader);
      if (built != null) {
        read.add(built);
      }
    }
    return read;
  }

  /** Notes a problem when a field has a list of more elements than so many. */
  public void atMost(String field, int most) {
    int size = value(field).isArray() ? value(field).size() : 0;
    if (size > most) {
      refuse(field, size + " of them", "a list of at most " + most);
    }
  }

  /** Texts in their order; empty when the field is missing. */
  public List<String> texts(String field) {
    List<String> texts = new ArrayList<>();
    List<JsonNode> elements = elements(field, 0);
    for (int i = 0; i < elements.size(); i++) {
      JsonNode element = elements.get(i);
      if (element.isTextual() && !element.textValue().isBlank()) {
        texts.add(element.textValue());
      } else {
        note(pathOf(field) + "[" + i + "]", field, element, Scalars.TEXT);
      }
    }
    return texts;
  }

  /** Different texts; empty when the field is missing. */
  public Set<String> words(String field) {
    Set<String> words = new LinkedHashSet<>();
    for (String text : texts(field)) {
      if (!words.add(text)) {
        refuse(field, text + " twice", "every word once");
      }
    }
    return words;
  }

  /** Different texts, each of them one of the known; null accepts all. */
  public Set<String> references(String field, @Nullable Set<String> known, String what) {
    Set<String> words = words(field);
    if (known == null) {
      return words;
    }
    for (String word : words) {
      if (!known.contains(word)) {
        refuse(field, word, what + ": " + Words.choice(known, word));
      }
    }
    words.retainAll(known);
    return words;
  }

  /** Single values of this object. */
  public Scalars get() {
    return new Scalars(this);
  }

  /** The value of a field, a missing node when it is not there or null. */
  JsonNode value(String field) {
    if (asked.add(field) && !kind.isEmpty()) {
      reading.asked(kind, field);
    }
    JsonNode value = node.path(field);
    return value.isNull() ? MissingNode.getInstance() : value;
  }

  private List<JsonNode> elements(String field, int least) {
    JsonNode array = value(field);
    if (!array.isArray()) {
      if (!array.isMissingNode() || least > 0) {
        refuse(field, "a list" + (least > 0 ? " of at least " + least : ""));
      }
      return List.of();
    }
    if (array.size() < least) {
      refuse(field, "a list of at least " + least);
    }
    List<JsonNode> elements = new ArrayList<>();
    Iterator<JsonNode> each = array.elements();
    while (each.hasNext()) {
      elements.add(each.next());
    }
    return elements;
  }

  private Cursor child(JsonNode child, String field, String childKind) {
    return new Cursor(child, pathOf(field), childKind, reading, silent || !child.isObject());
  }

  /** Builds the object; an argument that its record refuses becomes a problem of this path. */
  private <T> @Nullable T finish(Function<Cursor, T> reader) {
    int before = reading.problems().count();
    try {
      return close(reader);
    } catch (IllegalArgumentException e) {
      if (!cutShort) {
        refuseUnknown();
      }
      if (reading.problems().count() == before) {
        String message = e.getMessage();
        note(path.isEmpty() ? "file" : path, "", node, message == null ? "sound values" : message);
      }
      return null;
    }
  }

  private <T> T close(Function<Cursor, T> reader) {
    T built = reader.apply(this);
    refuseUnknown();
    return built;
  }

  private void refuseUnknown() {
    Set<String> unknown = new HashSet<>(names());
    unknown.removeAll(asked);
    for (String name : names()) {
      if (unknown.contains(name)) {
        String nearest =
            Words.nearest(asked, name).map(word -> " (did you mean " + word + "?)").orElse("");
        refuse(name, "unknown field", "one of " + String.join(", ", asked) + nearest);
      }
    }
  }

  private void note(String where, String field, JsonNode value, String accepted) {
    if (!silent) {
      reading.problems().add(where, field, shown(value), accepted);
    }
  }

  private String pathOf(String field) {
    String name = field.matches("[\\w-]+") ? field : "\"" + field + "\"";
    return path.isEmpty() ? name : path + "." + name;
  }

  private static String shown(JsonNode value) {
    if (value.isMissingNode()) {
      return "";
    }
    return value.isTextual() && !value.textValue().isBlank() ? value.textValue() : value.toString();
  }
}
