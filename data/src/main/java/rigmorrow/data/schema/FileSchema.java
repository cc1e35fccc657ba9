package rigmorrow.data.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The schemas that ship, one for each kind of file; FORMAT.md describes the same. */
public enum FileSchema {
  /** Floor files. */
  FLOOR("floor", "floor"),
  /** Shot lists in JSON and YAML. */
  SHOT_LIST("shot-list", "shotList"),
  /** Plans in JSON. */
  PLAN("plan", "plan"),
  /** Scenario files; what they say of a rig is what floor files say of it. */
  SCENARIOS("scenarios", "scenarios", FLOOR);

  private final String word;
  private final String text;
  private final JsonNode tree;
  private final Shape shape;
  private @Nullable Schema compiled;

  FileSchema(String word, String kind) {
    this(word, kind, null);
  }

  /**
   * @param lender whose definitions are taken where this one has none of the name
   */
  FileSchema(String word, String kind, @Nullable FileSchema lender) {
    this.word = word;
    String file = word + ".schema.json";
    ObjectMapper mapper = new ObjectMapper();
    try (InputStream in = FileSchema.class.getResourceAsStream(file)) {
      byte[] bytes = Objects.requireNonNull(in, file).readAllBytes();
      this.tree = mapper.readTree(bytes);
      if (lender == null) {
        this.text = new String(bytes, StandardCharsets.UTF_8);
      } else {
        borrow(tree, (ObjectNode) tree.path("$defs"), lender.tree.path("$defs"));
        this.text = mapper.writerWithDefaultPrettyPrinter().writeValueAsString(tree) + "\n";
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    this.shape = Shape.ofFile(tree, kind);
  }

  /** Takes over the definitions that a part of a schema refers to, and those they refer to. */
  private static void borrow(JsonNode part, ObjectNode definitions, JsonNode lent) {
    for (String reference : part.findValuesAsText("$ref")) {
      String name = reference.substring("#/$defs/".length());
      if (!definitions.has(name) && lent.has(name)) {
        definitions.set(name, lent.get(name));
        borrow(lent.get(name), definitions, lent);
      }
    }
  }

  /** The name of the kind of file, as a user types it. */
  @Override
  public String toString() {
    return word;
  }

  /** The schema itself, JSON Schema draft 2020-12. */
  public String text() {
    return text;
  }

  /** What the schema says of the whole file. */
  public Shape shape() {
    return shape;
  }

  /** Everything in which a tree departs from the schema. */
  List<Error> departures(JsonNode file) {
    return compiled().validate(file);
  }

  /** Compiling takes a moment: it is done when the first file of the kind is read. */
  private synchronized Schema compiled() {
    if (compiled == null) {
      compiled = Library.OFFLINE.getSchema(tree);
    }
    return compiled;
  }

  /** Nothing is ever fetched: the schemas refer to themselves only. */
  static SchemaRegistry offline() {
    return SchemaRegistry.withDefaultDialect(
        SpecificationVersion.DRAFT_2020_12,
        registry -> registry.schemaLoader(loader -> loader.fetchRemoteResources(false)));
  }

  /** Loaded when the first file is read. */
  private static final class Library {
    private static final SchemaRegistry OFFLINE = offline();
  }
}
