package rigmorrow.data.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
  PLAN("plan", "plan");

  private final String word;
  private final String text;
  private final JsonNode tree;
  private final Shape shape;
  private @Nullable Schema compiled;

  FileSchema(String word, String kind) {
    this.word = word;
    String file = word + ".schema.json";
    try (InputStream in = FileSchema.class.getResourceAsStream(file)) {
      byte[] bytes = Objects.requireNonNull(in, file).readAllBytes();
      this.text = new String(bytes, StandardCharsets.UTF_8);
      this.tree = new ObjectMapper().readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    this.shape = Shape.ofFile(tree, kind);
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
