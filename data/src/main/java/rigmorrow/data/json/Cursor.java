package rigmorrow.data.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Words;
import rigmorrow.data.schema.Places;
import rigmorrow.data.schema.Shape;

/**
 * Stands on one object of a tree that was held against its schema, and reads its fields. In the
 * place of a value that was refused, something sound is handed out and nothing is told again, so
 * that reading goes on and finds the rest.
 */
public final class Cursor {
  /** Stands in for a text that is missing or refused. */
  public static final String NO_TEXT = "\u0000";

  private final JsonNode node;
  private final String path;
  private final Shape shape;
  private final Reading reading;

  /** True when the object itself is missing or refused: then nothing can be told of its fields. */
  private final boolean silent;

  private Cursor(JsonNode node, String path, Shape shape, Reading reading, boolean silent) {
    this.node = node;
    this.path = path;
    this.shape = shape;
    this.reading = reading;
    this.silent = silent;
  }

  /** Stands on the object that is the whole file. */
  static Cursor ofFile(JsonNode tree, Shape shape, Reading reading) {
    return new Cursor(tree, "", shape, reading, false);
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

  /** True when nothing was told of these fields. */
  public boolean sound(String... fields) {
    for (String field : fields) {
      if (refused(field)) {
        return false;
      }
    }
    return true;
  }

  /** What the schema says of a field. */
  public Shape shape(String field) {
    return shape.property(field);
  }

  /** Notes that a field's value is refused; the field is shown as it stands in the file. */
  public void refuse(String field, String accepted) {
    refuse(field, Places.shown(value(field)), accepted);
  }

  /** Notes that a field is refused, with a value of one's own wording. */
  public void refuse(String field, String value, String accepted) {
    if (!silent) {
      reading.tell(Places.field(path, field), field, value, accepted);
    }
  }

  /** Reads the object in a field that must be there. */
  public <T> T object(String field, Function<Cursor, T> reader) {
    return reader.apply(child(field));
  }

  /** Reads the object in a field that may be missing; null when it is. */
  public <T> @Nullable T optionalObject(String field, Function<Cursor, T> reader) {
    return has(field) ? object(field, reader) : null;
  }

  /**
   * The object in a field that may be missing, with free names.
   *
   * @return an object without fields when there is none
   */
  public Cursor freeObject(String field) {
    return child(field);
  }

  /** Reads a list of objects. An object that cannot be built is left out; that is told. */
  public <T> List<T> list(String field, Function<Cursor, T> reader) {
    List<T> read = new ArrayList<>();
    JsonNode list = value(field);
    Shape element = shape.property(field).element();
    String listPath = Places.field(path, field);
    for (int i = 0; i < list.size(); i++) {
      if (list.path(i).isObject()) {
        String childPath = Places.element(listPath, i);
        T built = new Cursor(list.path(i), childPath, element, reading, silent).finish(reader);
        if (built != null) {
          read.add(built);
        }
      }
    }
    return read;
  }

  /** Texts in their order; empty when the field is missing. */
  public List<String> texts(String field) {
    List<String> texts = new ArrayList<>();
    JsonNode list = value(field);
    for (int i = 0; list.isArray() && i < list.size(); i++) {
      if (reading.sound() || !reading.told(Places.element(Places.field(path, field), i))) {
        texts.add(list.get(i).textValue());
      }
    }
    return texts;
  }

  /** Different texts; empty when the field is missing. */
  public Set<String> words(String field) {
    return new LinkedHashSet<>(texts(field));
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

  /** The value of a field, a missing node when it is not there. */
  JsonNode value(String field) {
    if (!shape.kind().isEmpty()) {
      reading.asked(shape.kind(), field);
    }
    return node.path(field);
  }

  /** The value of a field, a missing node when it is not there or was refused. */
  JsonNode soundValue(String field) {
    JsonNode value = value(field);
    return refused(field) ? MissingNode.getInstance() : value;
  }

  /** True when something was told of the field, or nothing can be. */
  boolean refused(String field) {
    return silent || (!reading.sound() && reading.told(Places.field(path, field)));
  }

  /** Builds the object; an argument that its record refuses becomes a problem of this path. */
  <T> @Nullable T finish(Function<Cursor, T> reader) {
    int before = reading.problems().count();
    try {
      return reader.apply(this);
    } catch (IllegalArgumentException e) {
      if (reading.problems().count() == before && !reading.troubled(path)) {
        String message = e.getMessage();
        reading.tell(path, "", Places.shown(node), message == null ? "sound values" : message);
      }
      return null;
    }
  }

  private Cursor child(String field) {
    JsonNode child = value(field);
    String childPath = Places.field(path, field);
    boolean silentChild = silent || !child.isObject();
    return new Cursor(child, childPath, shape.property(field), reading, silentChild);
  }
}
