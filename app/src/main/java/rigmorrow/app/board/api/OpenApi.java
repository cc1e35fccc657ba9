package rigmorrow.app.board.api;

import static java.util.Map.entry;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import rigmorrow.app.board.view.ProblemView;

/** The description of the interface, OpenAPI 3.1, made from the list of routes. */
public final class OpenApi {
  private static final Map<Integer, String> REFUSALS =
      new TreeMap<>(
          Map.ofEntries(
              entry(400, "The request is not what the interface takes."),
              entry(401, "The token is missing or another."),
              entry(403, "The request comes from another site."),
              entry(404, "There is nothing of that name."),
              entry(409, "What it is about was changed since."),
              entry(413, "The body is too large."),
              entry(415, "The body is of another kind."),
              entry(422, "It cannot be done, and why."),
              entry(423, "Something else has the cores or the plan until it ends, and what."),
              entry(500, "A fault of the program."),
              entry(507, "A file cannot be written or read, and why.")));

  private final Schemas schemas = new Schemas("#/components/schemas/");
  private final ObjectNode document = JsonNodeFactory.instance.objectNode();

  private OpenApi() {}

  /**
   * The description.
   *
   * @param version of the program
   */
  public static ObjectNode of(List<Route> routes, String version) {
    OpenApi api = new OpenApi();
    api.document.put("openapi", "3.1.0");
    api.document
        .putObject("info")
        .put("title", "Rigmorrow board")
        .put("version", version)
        .put(
            "description",
            "What the board's page asks and wishes. Every wish about the plan carries the revision"
                + " that it is about.");
    ObjectNode paths = api.document.putObject("paths");
    routes.forEach(route -> api.add(paths, route));
    api.schemas.reference(ProblemView.class);
    api.document.putObject("components").set("schemas", api.schemas.definitions());
    return api.document;
  }

  private void add(ObjectNode paths, Route route) {
    ObjectNode operation =
        paths
            .withObjectProperty(route.path())
            .putObject(route.method().name().toLowerCase(Locale.ROOT));
    operation.put("operationId", operationId(route)).put("summary", route.summary());
    if (!route.parameters().isEmpty()) {
      var list = operation.putArray("parameters");
      for (Parameter parameter : route.parameters()) {
        ObjectNode node = list.addObject();
        node.put("name", parameter.name()).put("in", parameter.in().word());
        node.put("required", parameter.needed()).put("description", parameter.meaning());
        node.putObject("schema").put("type", "string");
      }
    }
    body(operation, route.body());
    ObjectNode responses = operation.putObject("responses");
    for (Answer answer : route.answers()) {
      ObjectNode response = responses.withObjectProperty(String.valueOf(answer.status()));
      response.put("description", answer.meaning());
      ObjectNode media = response.withObjectProperty("content").putObject(answer.contentType());
      if (answer.record() != null) {
        media.set("schema", schemas.reference(answer.record()));
      }
    }
    REFUSALS.forEach(
        (status, meaning) -> {
          ObjectNode response = responses.putObject(String.valueOf(status));
          response.put("description", meaning);
          response
              .putObject("content")
              .putObject(Answer.JSON)
              .set("schema", schemas.reference(ProblemView.class));
        });
  }

  private void body(ObjectNode operation, Route.Body body) {
    if (body.record() != null) {
      operation
          .putObject("requestBody")
          .put("required", true)
          .putObject("content")
          .putObject(Answer.JSON)
          .set("schema", schemas.reference(body.record()));
    } else if (body.bytes()) {
      operation
          .putObject("requestBody")
          .put("required", true)
          .putObject("content")
          .putObject("application/octet-stream");
    }
  }

  /** Such as "postVersionsPublish". */
  private static String operationId(Route route) {
    StringBuilder id = new StringBuilder(route.method().name().toLowerCase(Locale.ROOT));
    for (String part : route.path().split("[^a-zA-Z]+")) {
      if (!part.isEmpty() && !part.equals("api")) {
        id.append(Character.toUpperCase(part.charAt(0))).append(part.substring(1));
      }
    }
    return id.toString();
  }
}
