package rigmorrow.app.board.server;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.handout.HandOut;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.app.whatif.page.ReportFolder;
import rigmorrow.data.demo.Demo;

/** What the board really answers is what its description says, for every route there is. */
class ApiDescriptionTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @TempDir static Path folder;

  private static TestBoard board;
  private static JsonNode api;

  private final Set<String> asked = new TreeSet<>();

  @BeforeAll
  static void open() throws Exception {
    Path past = folder.resolve("past");
    SmallStudy.write(past, SmallStudy.days(2, 8), SmallStudy.study());
    board =
        TestBoard.open(
            folder, Demo.batch(12, 1, TestBoard.DAY), null, DaySource.folder(past.resolve("days")));
    HttpResponse<byte[]> answer = board.get("/api/openapi.json");
    assertThat(answer.statusCode()).isEqualTo(200);
    api = MAPPER.readTree(answer.body());
  }

  @AfterAll
  static void close() {
    board.close();
  }

  @Test
  void describesItselfAsOpenApi31() {
    assertThat(api.path("openapi").asText()).isEqualTo("3.1.0");
    assertThat(api.at("/info/title").asText()).isNotEmpty();
    List<String> routes = board.server.routes().stream().map(ApiDescriptionTest::name).toList();
    List<String> described = new ArrayList<>();
    for (var path : api.path("paths").properties()) {
      for (var method : path.getValue().properties()) {
        described.add(method.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey());
      }
    }
    assertThat(described).containsExactlyInAnyOrderElementsOf(routes);
    Set<String> ids = new TreeSet<>();
    api.findValuesAsText("operationId").forEach(id -> assertThat(ids.add(id)).as(id).isTrue());
  }

  @Test
  void everyReferenceLeadsSomewhere() {
    Set<String> references = new TreeSet<>(api.findValuesAsText("$ref"));
    assertThat(references).isNotEmpty();
    for (String reference : references) {
      assertThat(api.at(reference.substring(1)).isMissingNode()).as(reference).isFalse();
    }
  }

  @Test
  void answersAsItSays() throws Exception {
    String job = board.desk.now().batch().shotList().jobs().get(0).id();
    see("GET", "/api/board", 200);
    see("GET", "/api/fit", 200);
    see("GET", "/api/search", 200);
    see("GET", "/api/troubles", 200);
    see("GET", "/api/openapi.json", 200);
    see("GET", "/api/jobs/{id}/why", 200, "/api/jobs/" + job + "/why");
    see("GET", "/api/jobs/{id}/why", 404, "/api/jobs/nobody/why");
    touches();
    versions();
    intakes();
    for (HandOut file : HandOut.values()) {
      see("GET", "/api/hand-out/{name}", 200, "/api/hand-out/" + file.fileName());
    }
    see("GET", "/api/hand-out/{name}", 200, "/api/hand-out/plan.csv?version=1");
    see("GET", "/api/hand-out/{name}", 404, "/api/hand-out/plan.doc");
    see("GET", "/api/hand-out/{name}", 404, "/api/hand-out/plan.csv?version=99");
    see("GET", "/api/hand-out/{name}", 400, "/api/hand-out/plan.csv?version=last");
    see("GET", "/api/chart.svg", 200, "/api/chart.svg");
    see("GET", "/api/chart.svg", 200, "/api/chart.svg?by=crew&version=1");
    see("GET", "/api/chart.svg", 400, "/api/chart.svg?by=colour");
    see("GET", "/api/events", 400);
    asked.add("GET /api/events"); // its stream is read in EventsTest
    scenarios();
    search();
    List<String> routes = board.server.routes().stream().map(ApiDescriptionTest::name).toList();
    assertThat(asked).containsExactlyInAnyOrderElementsOf(routes);
  }

  private void touches() {
    tellWhichPlanAnswersAreAbout();
    wish("/api/try", 200, board.move(board.revision()));
    wish("/api/keep", 200, board.move(board.revision()));
    wish("/api/keep", 409, board.move(board.revision() - 1));
    pins();
    String unknown = TestBoard.touch(board.revision(), "LEAVE_OUT", "nobody", "");
    wish("/api/try", 200, unknown);
    wish("/api/keep", 422, unknown);
    wish("/api/keep", 400, "{}");
    wish("/api/undo", 200, revision());
    wish("/api/redo", 200, revision());
    wish("/api/undo", 409, "{\"revision\":0}");
    wish("/api/redo", 400, "{\"revision\":\"last\"}");
  }

  private void tellWhichPlanAnswersAreAbout() {
    String job = board.desk.now().batch().shotList().jobs().get(0).id();
    wish("/api/keep", 200, board.move(board.revision()));
    for (String path : List.of("/api/jobs/" + job + "/why", "/api/troubles")) {
      assertThat(json(board.get(path)).path("revision").asLong()).isEqualTo(board.revision());
    }
  }

  /** A pin comes with its touch: one step, and one to take back. */
  private void pins() {
    String move = board.move(board.revision());
    wish("/api/keep", 400, move.replace("}}", ",\"pin\":null}}"));
    wish("/api/keep", 200, move.replace("}}", ",\"pin\":true}}"));
    var pins = board.desk.now().batch().shotList().pins();
    assertThat(pins).hasSize(1);
    assertThat(pins.get(0).place()).isZero();
    assertThat(board.desk.undoSentence()).endsWith(", and pin it there");
    wish("/api/undo", 200, revision());
    assertThat(board.desk.now().batch().shotList().pins()).isEmpty();
    String without = board.move(board.revision()).replace("}}", ",\"pin\":false}}");
    wish("/api/try", 200, without);
  }

  private void versions() {
    wish("/api/versions", 200, "{\"revision\":%d,\"note\":\"first\"}".formatted(board.revision()));
    wish("/api/versions", 409, "{\"revision\":0,\"note\":\"\"}");
    see("GET", "/api/versions", 200);
    wish("/api/versions/{n}/publish", 200, "/api/versions/1/publish", "{}");
    wish("/api/versions/{n}/publish", 404, "/api/versions/9/publish", "{}");
    wish("/api/keep", 200, board.move(board.revision()));
    see("GET", "/api/versions/compare", 200, "/api/versions/compare?before=1&after=0");
    see("GET", "/api/versions/compare", 404, "/api/versions/compare?before=7&after=0");
    see("GET", "/api/versions/compare", 400, "/api/versions/compare");
    wish("/api/versions/{n}/restore", 200, "/api/versions/1/restore", revision());
    wish("/api/versions/{n}/restore", 404, "/api/versions/0/restore", revision());
  }

  private void intakes() throws Exception {
    byte[] bad = "article,recipe\nA1,no-such\nA2,\n".getBytes(UTF_8);
    HttpResponse<byte[]> dropped = board.drop("list.csv", bad, "?days=2");
    JsonNode view = check("POST", "/api/intake", 200, dropped);
    String id = "/api/intake/" + view.path("id").asText();
    check("POST", "/api/intake", 400, board.drop("list.csv", bad, "?days=many"));
    check("POST", "/api/intake", 200, board.drop("list.json", bad, ""));
    see("GET", "/api/intake/{id}/annotated", 200, id + "/annotated");
    see("GET", "/api/intake/{id}/annotated", 404, "/api/intake/none/annotated");
    wish("/api/intake/{id}/plan", 422, id + "/plan", revision());
    String recipe = board.desk.now().batch().floor().recipes().get(0).id();
    String cells =
        "{\"cells\":[{\"row\":2,\"column\":2,\"value\":\"%s\"},{\"row\":3,\"column\":2,\"value\":\"%s\"}]}"
            .formatted(recipe, recipe);
    wish("/api/intake/{id}/cells", 200, id + "/cells", cells);
    wish(
        "/api/intake/{id}/cells",
        400,
        id + "/cells",
        "{\"cells\":[{\"row\":99,\"column\":1,\"value\":\"\"}]}");
    wish(
        "/api/intake/{id}/options",
        200,
        id + "/options",
        "{\"date\":\"2026-03-05\",\"days\":null}");
    wish("/api/intake/{id}/options", 400, id + "/options", "{\"date\":\"soon\"}");
    wish("/api/intake/{id}/plan", 200, id + "/plan", revision());
    wish("/api/undo", 200, revision());
  }

  private void scenarios() throws Exception {
    see("GET", "/api/whatif/scenarios.yaml", 404);
    see("GET", "/api/whatif/report", 404);
    see("GET", "/api/whatif/report/{name}", 404, "/api/whatif/report/report.html");
    see("GET", "/api/whatif", 200);
    TestBoard.await(() -> json(board.get("/api/whatif")).path("days").asText().equals("READY"));
    byte[] bad = "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios: 3\n".getBytes(UTF_8);
    HttpResponse<byte[]> refused = board.dropAt("/api/whatif/scenarios", "s.yaml", bad);
    JsonNode view = check("POST", "/api/whatif/scenarios", 200, refused);
    assertThat(view.at("/refused/problems")).hasSize(1);
    String kit =
        "{\"number\":0,\"change\":{\"kind\":\"ANOTHER_UNIT\",\"kit\":\"macro-lens\"},\"purchase\":"
            + "{\"price\":900,\"lifeYears\":6,\"interestPercent\":5,\"runningPerYear\":0}}";
    wish("/api/whatif/scenarios/add", 200, kit);
    wish("/api/whatif/scenarios/add", 409, kit);
    see("GET", "/api/whatif/scenarios.yaml", 200);
    wish(
        "/api/whatif/scenarios/add",
        400,
        scenario(",\"change\":{\"kind\":\"ANOTHER_RIG\",\"rig\":\"none\"}"));
    wish("/api/whatif/scenarios/add", 400, scenario(",\"change\":{\"kind\":\"A_THIRD_FLOOR\"}"));
    wish(
        "/api/whatif/scenarios/add",
        200,
        scenario(",\"change\":{\"kind\":\"WITHOUT_RIG\",\"rig\":\"R1\"}"));
    wish("/api/whatif/scenarios/remove", 200, scenario(",\"name\":\"without-R1\""));
    wish("/api/whatif/scenarios/remove", 400, scenario(",\"name\":\"without-R1\""));
    wish("/api/whatif/estimate", 200, compare(50));
    wish("/api/whatif/estimate", 400, compare(0));
    wish("/api/whatif/compare", 400, compare(0));
    wish("/api/whatif/compare", 202, compare(50));
    TestBoard.await(
        () -> json(board.get("/api/whatif")).at("/comparison/state").asText().equals("DONE"));
    see("GET", "/api/whatif/report", 200);
    for (ReportFolder.Report report : ReportFolder.Report.values()) {
      see("GET", "/api/whatif/report/{name}", 200, "/api/whatif/report/" + report.fileName());
    }
    see("GET", "/api/whatif/report/{name}", 404, "/api/whatif/report/cells.csv");
    wish("/api/whatif/compare", 202, compare(1_000_000_000));
    wish("/api/search", 423, "{\"revision\":%d,\"seconds\":60}".formatted(board.revision()));
    wish("/api/whatif/compare", 423, compare(50));
    wish(
        "/api/whatif/scenarios/add",
        423,
        scenario(",\"change\":{\"kind\":\"OTHER_DEMAND\",\"percent\":20}"));
    wish("/api/whatif/stop", 200, "{}");
    TestBoard.await(
        () -> !json(board.get("/api/whatif")).at("/comparison/state").asText().equals("RUNNING"));
  }

  private static String scenario(String rest) {
    return "{\"number\":"
        + json(board.get("/api/whatif")).at("/scenarios/number").asLong()
        + rest
        + "}";
  }

  private static String compare(long steps) {
    return scenario(
        ",\"steps\":" + steps + ",\"seeds\":1,\"demand\":[],\"again\":false,\"oneMore\":false");
  }

  private void search() {
    wish("/api/search", 400, "{\"revision\":%d,\"seconds\":0}".formatted(board.revision()));
    wish("/api/search", 202, "{\"revision\":%d,\"seconds\":60}".formatted(board.revision()));
    for (String path : List.of("/api/keep", "/api/try")) {
      wish(path, 423, board.move(board.revision()));
    }
    for (String path : List.of("/api/undo", "/api/redo")) {
      wish(path, 423, revision());
    }
    wish("/api/whatif/compare", 423, compare(60));
    wish("/api/versions/{n}/restore", 423, "/api/versions/1/restore", revision());
    wish("/api/search", 423, "{\"revision\":%d,\"seconds\":60}".formatted(board.revision()));
    wish("/api/search/stop", 200, "{}");
  }

  private static String revision() {
    return "{\"revision\":" + board.revision() + "}";
  }

  private void see(String method, String path, int status) {
    see(method, path, status, path);
  }

  private void see(String method, String path, int status, String address) {
    check(method, path, status, board.get(address));
  }

  private void wish(String path, int status, String body) {
    wish(path, status, path, body);
  }

  private void wish(String path, int status, String address, String body) {
    check("POST", path, status, board.post(address, body));
  }

  /** Holds an answer against what the description says of that route and status. */
  private JsonNode check(String method, String path, int status, HttpResponse<byte[]> answer) {
    String what = method + " " + path + " " + status;
    assertThat(answer.statusCode())
        .as(what + ": " + new String(answer.body(), UTF_8))
        .isEqualTo(status);
    if (status < 400) {
      asked.add(method + " " + path);
    }
    JsonNode response =
        api.path("paths")
            .path(path)
            .path(method.toLowerCase(Locale.ROOT))
            .path("responses")
            .path("" + status);
    assertThat(response.isMissingNode()).as("not described: " + what).isFalse();
    String kind = answer.headers().firstValue("Content-Type").orElse("").split(";", 2)[0];
    JsonNode media = response.path("content").path(kind);
    assertThat(media.isMissingNode()).as("not described: " + what + " as " + kind).isFalse();
    if (!kind.equals("application/json") || !media.has("schema")) {
      assertThat(answer.body()).as(what).isNotEmpty();
      return MAPPER.nullNode();
    }
    JsonNode body = json(answer);
    assertThat(departures(media.path("schema"), body)).as(what).isEmpty();
    return body;
  }

  private static List<Error> departures(JsonNode schema, JsonNode body) {
    try {
      String text = schema.toString().replace("#/components/schemas/", "#/$defs/");
      ObjectNode root = (ObjectNode) MAPPER.readTree(text);
      String all = api.at("/components/schemas").toString();
      root.set("$defs", MAPPER.readTree(all.replace("#/components/schemas/", "#/$defs/")));
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(root)
          .validate(body);
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void wouldFindAFieldThatIsNotDescribed() {
    ObjectNode body = (ObjectNode) json(board.get("/api/search"));
    JsonNode schema =
        api.at("/paths/~1api~1search/get/responses/200/content")
            .path("application/json")
            .path("schema");
    assertThat(departures(schema, body)).isEmpty();
    body.put("more", 1);
    assertThat(departures(schema, body)).isNotEmpty();
    body.remove("more");
    body.remove("state");
    assertThat(departures(schema, body)).isNotEmpty();
  }

  private static String name(Route route) {
    return route.method() + " " + route.path();
  }
}
