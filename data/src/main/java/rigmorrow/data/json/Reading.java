package rigmorrow.data.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.schema.FileSchema;
import rigmorrow.data.schema.SchemaCheck;

/**
 * One pass over one file: first its schema tells what it can, then the reader goes through the
 * fields and tells the rest.
 */
public final class Reading {
  private final Problems problems;
  private final Map<String, Set<String>> known = new TreeMap<>();
  private NavigableSet<String> told = new TreeSet<>();
  private JsonNode tree = MissingNode.getInstance();
  private @Nullable Cursor file;
  private int toldBySchema;

  /**
   * @param problems takes all that is wrong
   */
  public Reading(Problems problems) {
    this.problems = problems;
  }

  /** What is wrong so far. */
  public Problems problems() {
    return problems;
  }

  /**
   * Names of fields by kind of object, such as {@code rig} or {@code recipe}, as far as such an
   * object was read. This is what the schema is held against.
   */
  public Map<String, Set<String>> known() {
    return Collections.unmodifiableMap(known);
  }

  /**
   * Reads a text and holds it against its schema.
   *
   * @return the tree, without known fields that are null
   * @throws InputException when there is nothing to read on with
   */
  public JsonNode open(String text, Trees.Notation notation, FileSchema schema)
      throws InputException {
    tree = Trees.read(text, notation, problems);
    problems.throwIfAny();
    told = SchemaCheck.tell(schema, tree, problems);
    toldBySchema = problems.count();
    if (!tree.isObject()) {
      problems.throwIfAny();
    }
    file = Cursor.ofFile(tree, schema.shape(), this);
    return tree;
  }

  /**
   * Builds what the file stands for, once it is open.
   *
   * @throws InputException with everything that is wrong with the file, in the file's order
   */
  public <T> T build(Function<Cursor, T> reader) throws InputException {
    T built = Objects.requireNonNull(file, "not open").finish(reader);
    if (!problems.none()) {
      throw new InputException(FileOrder.of(tree, withoutRepeats()));
    }
    return Objects.requireNonNull(built);
  }

  /** True when something was told of this place. */
  boolean told(String path) {
    return told.contains(path);
  }

  /** True when something was told of this place or of one within. */
  public boolean troubled(String path) {
    return path.isEmpty()
        ? !told.isEmpty()
        : told(path) || toldWithin(path + ".") || toldWithin(path + "[");
  }

  /** True when nothing was told at all. */
  boolean sound() {
    return told.isEmpty();
  }

  /** Tells something of a place. */
  void tell(String path, String field, String value, String accepted) {
    told.add(path);
    problems.add(path.isEmpty() ? "file" : path, field, value, accepted);
  }

  void asked(String kind, String field) {
    known.computeIfAbsent(kind, name -> new TreeSet<>()).add(field);
  }

  private boolean toldWithin(String start) {
    String next = told.ceiling(start);
    return next != null && next.startsWith(start);
  }

  /** Where the reader told the same as the schema, the reader's words count: it knows the floor. */
  private List<InputProblem> withoutRepeats() {
    List<InputProblem> all = problems.all();
    List<InputProblem> fromReader = all.subList(toldBySchema, all.size());
    List<InputProblem> kept = new ArrayList<>(all.subList(0, toldBySchema));
    kept.removeIf(problem -> fromReader.stream().anyMatch(other -> sameThing(problem, other)));
    kept.addAll(fromReader);
    return kept;
  }

  private static boolean sameThing(InputProblem one, InputProblem other) {
    return one.where().equals(other.where()) && one.value().equals(other.value());
  }
}
