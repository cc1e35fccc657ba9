package rigmorrow.app.board.server;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;
import static rigmorrow.app.board.server.TestBoard.message;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.Formats;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.shottable.ShotTableWriter;
import rigmorrow.data.table.TableOptions;
import rigmorrow.model.floor.Floor;

/** A shot list that is dropped on the page: told, mended, read again, planned. */
class IntakeTest {
  private static final Path BROKEN = Path.of("../data/src/test/resources/broken");

  private static final String LIST =
      """
      article;recipe;length (cm);width (cm);height (cm);mass (kg);due
      0417;spin-99;30,5;20;10;1,5;15:00
      00418;stills;12;20;10;heavy;16:00
      00419;stills;12;20;10;2;
      """;

  @TempDir static Path folder;

  private static TestBoard board;

  @BeforeAll
  static void open() {
    board = TestBoard.open(folder);
  }

  @AfterAll
  static void close() {
    board.close();
  }

  static Stream<Path> broken() throws Exception {
    List<Path> files = new ArrayList<>();
    for (String kind : List.of("shotlist-csv", "shotlist-json")) {
      try (Stream<Path> all = Files.list(BROKEN.resolve(kind))) {
        all.filter(file -> !file.toString().endsWith(".expected")).sorted().forEach(files::add);
      }
    }
    assertThat(files).hasSizeGreaterThan(60);
    return files.stream();
  }

  @ParameterizedTest
  @MethodSource("broken")
  void tellsOfABrokenFileWhatTheCommandLineTellsButNamesItsOwnFields(Path file) throws Exception {
    HttpResponse<byte[]> answer = board.drop(encoded(file), Files.readAllBytes(file), "");
    assertThat(answer.statusCode()).isEqualTo(200);
    JsonNode view = json(answer);
    List<String> told = new ArrayList<>();
    for (JsonNode one : view.path("problems")) {
      String where = one.path("where").asText() + " " + one.path("field").asText();
      told.add(where + ": " + one.path("value").asText() + "; " + one.path("accepted").asText());
    }
    assertThat(told).isNotEmpty().containsExactlyElementsOf(fromFile(file));
    assertThat(view.path("jobs").asInt()).isZero();
    assertThat(view.path("fit").isNull()).isTrue();
    String plan = "/api/intake/" + view.path("id").asText() + "/plan";
    HttpResponse<byte[]> planned = board.post(plan, revision());
    assertThat(planned.statusCode()).isEqualTo(422);
    assertThat(message(planned)).contains("mend");
  }

  @Test
  void showsProblemsAtTheirCells() {
    JsonNode view = drop("list.csv", LIST);
    assertThat(view.path("notes").get(0).asText()).isEqualTo("text UTF-8, delimiter semicolon");
    JsonNode first = view.path("problems").get(0);
    assertThat(first.path("row").asInt()).isEqualTo(2);
    assertThat(first.path("column").asInt()).isEqualTo(2);
    assertThat(first.path("accepted").asText()).contains("spin-36");
    JsonNode table = view.path("table");
    assertThat(table.path("headerRow").asInt()).isEqualTo(1);
    assertThat(table.path("rowCount").asInt()).isEqualTo(3);
    JsonNode row = table.path("rows").get(0);
    assertThat(row.path("row").asInt()).isEqualTo(2);
    assertThat(row.path("cells").get(1).asText()).isEqualTo("spin-99");
  }

  @Test
  void isMendedOnThePageAndPlanned() {
    String id = drop("list.csv", LIST).path("id").asText();
    JsonNode half = json(cells(id, "2,2,spin-36"));
    assertThat(half.path("problems")).hasSize(1);
    HttpResponse<byte[]> copy = board.get("/api/intake/" + id + "/annotated");
    assertThat(new String(copy.body(), UTF_8))
        .contains("0417;spin-36;30,5", "F mass (kg): 'heavy'");
    assertThat(copy.headers().firstValue("Content-Disposition").orElse(""))
        .isEqualTo("attachment; filename*=UTF-8''list-annotated.csv");
    JsonNode whole = json(cells(id, "3,6,2,5"));
    assertThat(whole.path("problems")).isEmpty();
    assertThat(whole.path("jobs").asInt()).isEqualTo(3);
    assertThat(whole.path("fit").path("jobs")).hasSize(3);
    assertThat(whole.path("notes").get(0).asText()).contains("decimal mark comma");
    int before = board.desk.now().batch().shotList().jobs().size();
    HttpResponse<byte[]> planned = board.post("/api/intake/" + id + "/plan", revision());
    assertThat(planned.statusCode()).isEqualTo(200);
    assertThat(json(planned).path("jobs")).hasSize(3);
    assertThat(json(planned).path("undo").asText()).contains("3 jobs of list.csv");
    HttpResponse<byte[]> undone = board.post("/api/undo", revision());
    assertThat(json(undone).path("jobs")).hasSize(before);
  }

  @Test
  void refusesAStaleWishToPlan() {
    String id = drop("list.csv", "article,recipe\n1,stills\n").path("id").asText();
    HttpResponse<byte[]> planned = board.post("/api/intake/" + id + "/plan", "{\"revision\":0}");
    assertThat(planned.statusCode()).isEqualTo(409);
  }

  @Test
  void readsWorkbooks() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", null)) {
      Worksheet sheet = workbook.newWorksheet("Tomorrow");
      sheet.value(0, 0, "Article");
      sheet.value(0, 1, "Recipe");
      sheet.value(1, 0, "00417");
      sheet.value(1, 1, "nope");
    }
    JsonNode view = json(board.drop("list.xlsx", out.toByteArray(), ""));
    assertThat(view.path("notes").get(0).asText()).isEqualTo("sheet 'Tomorrow'");
    String id = view.path("id").asText();
    HttpResponse<byte[]> copy = board.get("/api/intake/" + id + "/annotated");
    JsonNode again = json(board.drop("copy.xlsx", copy.body(), ""));
    assertThat(again.path("problems")).hasSameSizeAs(view.path("problems"));
    assertThat(json(cells(id, "2,2,stills")).path("jobs").asInt()).isEqualTo(1);
  }

  @Test
  void readsInAnotherWayWhenTold() {
    JsonNode view = drop("list.csv", "article,recipe,height (cm)\n1,stills,\"1,234\"\n");
    assertThat(view.path("problems")).hasSize(1);
    assertThat(view.path("problems").get(0).path("accepted").asText())
        .contains("or say which decimal mark the file has (Decimal mark)");
    String id = view.path("id").asText();
    JsonNode told = json(options(id, "{\"decimal\":\"comma\",\"days\":2,\"date\":\"2026-03-09\"}"));
    assertThat(told.path("problems")).isEmpty();
    assertThat(told.path("date").asText()).isEqualTo("2026-03-09");
    assertThat(told.path("days").asInt()).isEqualTo(2);
    assertThat(options(id, "{\"days\":99}").statusCode()).isEqualTo(400);
    assertThat(options(id, "{\"delimiter\":\"|\"}").statusCode()).isEqualTo(400);
  }

  @Test
  void namesTheFieldOfThePageWhereASheetIsAskedFor() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", null)) {
      for (String name : List.of("Monday", "Tuesday")) {
        Worksheet sheet = workbook.newWorksheet(name);
        sheet.value(0, 0, "Article");
        sheet.value(0, 1, "Recipe");
        sheet.value(1, 0, "00417");
        sheet.value(1, 1, "stills");
      }
    }
    JsonNode view = json(board.drop("list.xlsx", out.toByteArray(), ""));
    JsonNode problem = view.path("problems").get(0);
    assertThat(problem.path("field").asText()).isEqualTo("Sheet");
    assertThat(problem.path("accepted").asText()).contains("Monday, Tuesday");
    JsonNode told = json(options(view.path("id").asText(), "{\"sheet\":\"Tuesday\"}"));
    assertThat(told.path("jobs").asInt()).isEqualTo(1);
  }

  @Test
  void saysOfAListInJsonWhichSizesAreSmallAndOfATableWhichRowIsItsHeader() {
    JsonNode json =
        drop(
            "list.json",
            "{\"version\":1,\"date\":\"2026-03-18\",\"days\":1,\"jobs\":"
                + "[{\"id\":\"1\",\"recipe\":\"stills\",\"widthMm\":4}]}");
    assertThat(json.path("notes").get(1).asText())
        .isEqualTo("widthMm: 1 size is under 10 mm, 4 mm (jobs[0]); check unit and decimal mark");
    JsonNode table = drop("list.csv", "Uge 12\n\nvarenr;opskrift\n1;nope\n");
    assertThat(table.path("table").path("headerRow").asInt()).isEqualTo(3);
    assertThat(table.path("notes").get(1).asText())
        .isEqualTo("row 3 was taken as the header; row 1 above it was not read ('Uge 12')");
    JsonNode mended = json(cells(table.path("id").asText(), "4,2,stills"));
    assertThat(mended.path("jobs").asInt()).isEqualTo(1);
  }

  @Test
  void readsOtherCharacterSetsAndNames() {
    byte[] danish = "Artikel;Opskrift\n1;stills\n".getBytes(Charset.forName("windows-1252"));
    String name = "..%2F..%2Fetc%2Fbestillinger%20p%C3%A5%20tirsdag%3Cb%3E.CSV";
    JsonNode view = json(board.drop(name, danish, ""));
    assertThat(view.path("fileName").asText()).isEqualTo("bestillinger på tirsdag<b>.CSV");
    HttpResponse<byte[]> copy = board.get("/api/intake/" + view.path("id").asText() + "/annotated");
    assertThat(copy.statusCode()).isEqualTo(200);
    assertThat(copy.headers().firstValue("Content-Disposition").orElse(""))
        .contains("tirsdag%3Cb%3E-annotated.CSV");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "%20", "%zz.csv", "a%2F", "%00"})
  void refusesNamesThatAreNone(String name) {
    HttpResponse<byte[]> answer = board.drop(name, new byte[] {'x'}, "");
    assertThat(answer.statusCode()).isEqualTo(400);
  }

  @Test
  void saysWhenTheKindOfFileIsUnknown() {
    JsonNode view = drop("list.pdf", "article\n");
    assertThat(view.path("problems")).hasSize(1);
    assertThat(view.path("problems").get(0).path("accepted").asText()).contains(".xlsx, .csv");
    assertThat(view.path("table").isNull()).isTrue();
    HttpResponse<byte[]> copy = board.get("/api/intake/" + view.path("id").asText() + "/annotated");
    assertThat(copy.statusCode()).isEqualTo(422);
    assertThat(cells(view.path("id").asText(), "1,1,x").statusCode()).isEqualTo(400);
  }

  @Test
  void keepsTheLastEight() {
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      ids.add(drop("list.csv", LIST).path("id").asText());
    }
    assertThat(cells(ids.get(0), "2,2,stills").statusCode()).isEqualTo(404);
    assertThat(cells(ids.get(1), "2,2,stills").statusCode()).isEqualTo(200);
    assertThat(board.get("/api/intake/nothing/annotated").statusCode()).isEqualTo(404);
  }

  @Test
  void takesUpTo5000Jobs() {
    StringBuilder list = new StringBuilder("article,recipe\n");
    for (int i = 0; i < 5000; i++) {
      list.append("A").append(i).append(i == 4000 ? ",nope\n" : ",stills\n");
    }
    JsonNode view = drop("list.csv", list.toString());
    assertThat(view.path("problems")).hasSize(1);
    JsonNode table = view.path("table");
    assertThat(table.path("rowCount").asInt()).isEqualTo(5000);
    assertThat(table.path("rows")).hasSize(200);
    assertThat(table.path("rows").get(0).path("row").asInt()).isEqualTo(4002);
    JsonNode more = drop("list.csv", list + "A5000,stills\n");
    assertThat(more.path("problems").get(0).path("accepted").asText()).isEqualTo("at most 5000");
  }

  @Test
  void readsBackWhatTheProgramWrites() {
    byte[] written = ShotTableWriter.write(board.desk.now().batch().shotList());
    JsonNode view = json(board.drop("shot-list.csv", written, ""));
    assertThat(view.path("problems")).isEmpty();
    HttpResponse<byte[]> json = board.get("/api/hand-out/shot-list.json");
    JsonNode again = json(board.drop("shot-list.json", json.body(), ""));
    assertThat(again.path("problems")).isEmpty();
    assertThat(again.path("jobs").asInt()).isEqualTo(view.path("jobs").asInt());
    assertThat(again.path("table").isNull()).isTrue();
  }

  /** A list that was handed out and comes back is the plan's own, whatever day it is read for. */
  @Test
  void keepsWhatIsLeftOutByHandAndPinned() {
    List<String> jobs =
        board.desk.now().plan().rigs().stream()
            .flatMap(rig -> rig.jobs().stream())
            .map(job -> job.job())
            .limit(2)
            .toList();
    touch("LEAVE_OUT", jobs.get(0), "");
    touch("HOLD", jobs.get(1), ",\"place\":false");
    byte[] list = board.get("/api/hand-out/shot-list.json").body();
    board.post("/api/undo", revision());
    board.post("/api/undo", revision());
    JsonNode view = json(board.drop("shot-list.json", list, "?days=2&date=2026-03-09"));
    String plan = "/api/intake/" + view.path("id").asText() + "/plan";
    assertThat(board.post(plan, revision()).statusCode()).isEqualTo(200);
    var taken = board.desk.now().batch().shotList();
    assertThat(taken.heldBack()).containsExactly(jobs.get(0));
    assertThat(taken.pins()).extracting(pin -> pin.job()).containsExactly(jobs.get(1));
    assertThat(taken.date()).isEqualTo("2026-03-09");
    assertThat(taken.days()).isEqualTo(2);
    board.post("/api/undo", revision());
  }

  private static void touch(String kind, String job, String more) {
    String wish = TestBoard.touch(board.revision(), kind, job, more);
    assertThat(board.post("/api/keep", wish).statusCode()).isEqualTo(200);
  }

  private static List<String> fromFile(Path file) throws Exception {
    Floor floor = board.desk.now().batch().floor();
    try {
      if (Formats.isTable(file)) {
        Formats.readShotTable(
            file, floor, new ShotTableOptions(TestBoard.DAY, 1, TableOptions.FIND.givenOnPage()));
      } else {
        Formats.readShotList(file, floor);
      }
      return List.of();
    } catch (InputException e) {
      return e.problems().stream().map(IntakeTest::told).toList();
    }
  }

  private static String told(InputProblem problem) {
    return problem.where()
        + " "
        + problem.field()
        + ": "
        + problem.value()
        + "; "
        + problem.accepted();
  }

  private static JsonNode drop(String name, String text) {
    HttpResponse<byte[]> answer = board.drop(name, text.getBytes(UTF_8), "");
    assertThat(answer.statusCode()).isEqualTo(200);
    return json(answer);
  }

  /** Mends a cell, given as row, column and text. */
  private static HttpResponse<byte[]> cells(String id, String cell) {
    String[] parts = cell.split(",", 3);
    return board.post(
        "/api/intake/" + id + "/cells",
        "{\"cells\":[{\"row\":%s,\"column\":%s,\"value\":%s}]}"
            .formatted(parts[0], parts[1], TestBoard.text(parts[2])));
  }

  private static HttpResponse<byte[]> options(String id, String body) {
    return board.post("/api/intake/" + id + "/options", body);
  }

  private static String revision() {
    return "{\"revision\":" + board.revision() + "}";
  }

  private static String encoded(Path file) {
    return URLEncoder.encode(file.getFileName().toString(), UTF_8);
  }
}
