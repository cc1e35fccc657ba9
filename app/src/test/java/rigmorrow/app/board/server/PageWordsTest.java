package rigmorrow.app.board.server;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;
import static rigmorrow.app.board.server.TestBoard.message;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.http.HttpResponse;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.whatif.Past;

/** Who looks at a page has no command line: no options are told of there. */
@Timeout(180)
class PageWordsTest {
  /** In single quotes stands what scripts call a colour of the style sheet by. */
  private static final Pattern OPTION = Pattern.compile("(?<=[\\s(\"])--[a-z]");

  /** A whole command to be typed is what it says, options and all. */
  private static final Pattern COMMAND = Pattern.compile("rigmorrow [a-z]+(?: --[a-z-]+)+");

  private static final String USUAL =
      "\"steps\":40,\"seeds\":1,\"demand\":[],\"again\":false,\"oneMore\":false";
  private static final String ONE_MORE = USUAL.replace("\"oneMore\":false", "\"oneMore\":true");

  @TempDir static Path past;
  @TempDir Path folder;

  /** Everything that somebody may read, by where it was read. */
  private final Map<String, String> texts = new LinkedHashMap<>();

  /** The second day lacks a rig, so that one more of each cannot be had on both. */
  @BeforeAll
  static void writeDays() {
    List<Past> days = new ArrayList<>(SmallStudy.days(2, 6));
    Past second = days.get(1);
    Batch less = ScenarioMaker.of(second.batch(), List.of(new FloorChange.RigGone("R4"))).batch();
    days.set(1, new Past(second.name(), less));
    Study demo = SmallStudy.study();
    Study one = new Study("x", demo.terms(), demo.scenarios().subList(0, 1), demo.prices());
    SmallStudy.write(past, days, one);
  }

  /** A day with an article number that fits no label. */
  private TestBoard open() throws InterruptedException {
    Batch usual = Demo.batch(6, 1, TestBoard.DAY);
    ShotJob first = usual.shotList().jobs().get(0);
    Batch batch =
        new Batch(
            usual.floor(),
            usual.shotList().withJob(first.id(), job -> named(job, "W".repeat(2000))));
    TestBoard board = TestBoard.open(folder, batch, null, DaySource.folder(past.resolve("days")));
    TestBoard.await(() -> !look(board).path("days").asText().equals("READING"));
    return board;
  }

  private static ShotJob named(ShotJob job, String article) {
    return new ShotJob(
        job.id(),
        article,
        null,
        job.name(),
        job.sample(),
        job.recipe(),
        job.item(),
        job.setup(),
        job.arrivesAt(),
        job.leavesAt(),
        job.promise(),
        job.weight(),
        job.note());
  }

  private static JsonNode look(TestBoard board) {
    return json(board.get("/api/whatif"));
  }

  private HttpResponse<byte[]> read(String where, HttpResponse<byte[]> answer) {
    String text = new String(answer.body(), StandardCharsets.UTF_8);
    assertThat(text).as(where).isNotEmpty();
    texts.put(where, text);
    return answer;
  }

  private HttpResponse<byte[]> wish(TestBoard board, String path, String how) {
    long number = look(board).at("/scenarios/number").asLong();
    String body = "{\"number\":%d,%s}".formatted(number, how);
    return read(path + how, board.post("/api/whatif/" + path, body));
  }

  private void bring(TestBoard board, String what) throws Exception {
    byte[] file = Files.readAllBytes(past.resolve("scenarios.yaml"));
    HttpResponse<byte[]> answer = board.dropAt("/api/whatif/scenarios", "mine.yaml", file);
    assertThat(read(what, answer).statusCode()).as(message(answer)).isEqualTo(200);
    assertThat(json(answer).path("refused").isNull()).isTrue();
  }

  private JsonNode finished(TestBoard board, String what) throws InterruptedException {
    TestBoard.await(() -> !look(board).at("/comparison/state").asText().equals("RUNNING"));
    return json(read(what, board.get("/api/whatif")));
  }

  private Path cells() throws Exception {
    try (Stream<Path> files = Files.list(folder.resolve("whatif"))) {
      return files
          .filter(file -> file.getFileName().toString().startsWith("cells-"))
          .findFirst()
          .orElseThrow();
    }
  }

  @Test
  void noOptionsAreToldOfOnPages() throws Exception {
    try (TestBoard board = open()) {
      bring(board, "scenarios that were brought");
      wish(board, "estimate", USUAL);
      assertThat(wish(board, "compare", ONE_MORE).statusCode()).isEqualTo(422);
      HttpResponse<byte[]> begun = wish(board, "compare", USUAL);
      assertThat(begun.statusCode()).as(message(begun)).isEqualTo(202);
      finished(board, "a comparison that is done");
      assertThat(json(board.get("/api/whatif/report")).at("/sections/0/demandBasis").asText())
          .contains("Assumed, not planned", "the board asks for them under Compare");
      read("report", board.get("/api/whatif/report/report.html"));
      assertThat(read("labels", board.get("/api/hand-out/labels.pdf")).statusCode()).isEqualTo(422);
      everythingToGet(board);
      events(board);
      troubleWithCells(board);
    }
    pageFiles();
    assertThat(texts.get("labels")).contains("larger labels");
    assertThat(texts.get("compare" + ONE_MORE)).contains("one more of each");
    assertThat(texts.get("cells in use")).contains("another run is writing to it");
    assertThat(texts.get("cells of something else")).contains("a file of cells, or none");
    assertThat(texts).hasSizeGreaterThan(40);
    texts.forEach(
        (where, text) -> {
          Matcher option = OPTION.matcher(COMMAND.matcher(text).replaceAll("a command"));
          assertThat(option.results().map(one -> around(text, one.start()))).as(where).isEmpty();
        });
  }

  private static String around(String text, int at) {
    return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60));
  }

  private void everythingToGet(TestBoard board) {
    for (Route route : board.server.routes()) {
      boolean plain = !route.path().contains("{") && !route.path().equals("/api/events");
      if (route.method() == Route.Method.GET && plain) {
        read(route.path(), board.get(route.path()));
      }
    }
  }

  private void events(TestBoard board) throws Exception {
    HttpResponse<InputStream> answer =
        board.client.send(
            board.request("/api/events").header("Accept", "text/event-stream").build(),
            HttpResponse.BodyHandlers.ofInputStream());
    StringBuilder told = new StringBuilder();
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8))) {
      String line = lines.readLine();
      while (line != null && !(line.startsWith("data:") && told.indexOf("event: whatif") >= 0)) {
        told.append(line).append('\n');
        line = lines.readLine();
      }
      told.append(line);
    }
    assertThat(told).contains("plans are made");
    texts.put("events", told.toString());
  }

  private void troubleWithCells(TestBoard board) throws Exception {
    Path file = cells();
    List<String> whole = Files.readAllLines(file);
    Files.write(file, whole.subList(0, whole.size() - 1));
    // A lock of this process's keeps the board out as another program's would.
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      assertThat(channel.lock().isValid()).isTrue();
      assertThat(wish(board, "compare", USUAL).statusCode()).isEqualTo(202);
      assertThat(finished(board, "cells in use").at("/comparison/state").asText())
          .isEqualTo("FAILED");
    }
    List<String> bad = new ArrayList<>(whole);
    bad.set(3, "a,b");
    Files.write(file, bad);
    bring(board, "cells that are damaged in part");
    wish(board, "compare", USUAL);
    finished(board, "cells that were mended");
    Files.writeString(file, "name,price\n");
    bring(board, "cells of something else");
    wish(board, "compare", USUAL);
    finished(board, "cells that were put aside");
  }

  /** What the page itself says; what libraries bring is not ours. */
  private void pageFiles() throws Exception {
    Path page = Path.of("src/main/resources/rigmorrow/app/board/page");
    try (Stream<Path> files = Files.walk(page)) {
      for (Path file : files.filter(one -> ("" + one).matches(".*\\.(js|html)")).toList()) {
        if (!("" + file).contains("vendor")) {
          texts.put("" + file, Files.readString(file));
        }
      }
    }
  }
}
