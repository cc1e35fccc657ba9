package rigmorrow.app.board.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** Reads the bodies of requests and holds them against the description of the interface. */
final class Bodies {
  private static final int MOST_TOLD = 5;

  private static final Map<Class<?>, Schema> KNOWN = new ConcurrentHashMap<>();

  private static final SchemaRegistry OFFLINE =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          registry -> registry.schemaLoader(loader -> loader.fetchRemoteResources(false)));

  private Bodies() {}

  /**
   * A record.
   *
   * @throws Refusal with what departs from the description, and where
   */
  static <T> T read(byte[] bytes, Class<T> type) {
    JsonNode tree = BoardJson.tree(bytes);
    List<Error> departures = KNOWN.computeIfAbsent(type, Bodies::schema).validate(tree);
    if (!departures.isEmpty()) {
      throw Refusal.malformed(
          departures.stream()
              .map(Bodies::sentence)
              .distinct()
              .limit(MOST_TOLD)
              .collect(Collectors.joining("; ", "The body is not as described: ", ".")));
    }
    return BoardJson.record(tree, type);
  }

  private static Schema schema(Class<?> type) {
    Schemas schemas = new Schemas("#/$defs/");
    ObjectNode root = schemas.reference(type);
    root.set("$defs", schemas.definitions());
    return OFFLINE.getSchema(root);
  }

  private static String sentence(Error error) {
    String where = error.getInstanceLocation().toString();
    return (where.isEmpty() ? "" : where + ": ") + error.getMessage();
  }
}
