package rigmorrow.app.board.server;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;
import static rigmorrow.app.board.server.TestBoard.message;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.data.BatchFolder;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.whatif.Past;

/** Plans that the board finds again where its scenarios or past days are others than before. */
@Timeout(120)
class ReusedPlansOnBoardTest {
  private static final int DAYS = 3;

  @TempDir Path past;
  @TempDir Path folder;

  @BeforeEach
  void writeDays() {
    Study demo = SmallStudy.study();
    Study two = new Study("x", demo.terms(), demo.scenarios().subList(0, 2), demo.prices());
    SmallStudy.write(past, SmallStudy.days(DAYS, 8), two);
  }

  private TestBoard open() throws InterruptedException {
    DaySource days = DaySource.folder(past.resolve("days"));
    TestBoard board = TestBoard.open(folder, Demo.batch(6, 1, TestBoard.DAY), null, days);
    TestBoard.await(() -> !look(board).path("days").asText().equals("READING"));
    return board;
  }

  private static JsonNode look(TestBoard board) {
    return json(board.get("/api/whatif"));
  }

  private void bring(TestBoard board) throws Exception {
    byte[] file = Files.readAllBytes(past.resolve("scenarios.yaml"));
    HttpResponse<byte[]> answer = board.dropAt("/api/whatif/scenarios", "mine.yaml", file);
    assertThat(answer.statusCode()).as(message(answer)).isEqualTo(200);
  }

  private static JsonNode sent(TestBoard board, String path, String more) {
    long number = look(board).at("/scenarios/number").asLong();
    HttpResponse<byte[]> answer =
        board.post("/api/whatif/" + path, "{\"number\":%d,%s}".formatted(number, more));
    assertThat(answer.statusCode()).as(message(answer)).isIn(200, 202);
    return json(answer);
  }

  private static final String HOW =
      "\"steps\":60,\"seeds\":1,\"demand\":[],\"again\":false,\"oneMore\":false";

  private static JsonNode compared(TestBoard board) throws InterruptedException {
    sent(board, "compare", HOW);
    TestBoard.await(() -> !look(board).at("/comparison/state").asText().equals("RUNNING"));
    return look(board).path("comparison");
  }

  private List<String> rows() throws Exception {
    try (Stream<Path> files = Files.list(folder.resolve("whatif"))) {
      List<Path> cells =
          files.filter(file -> file.getFileName().toString().startsWith("cells-")).toList();
      assertThat(cells).hasSize(1);
      List<String> lines = Files.readAllLines(cells.get(0));
      return lines.subList(2, lines.size());
    }
  }

  @Test
  void aScenarioThatComesBackIsThereAtOnce() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      assertThat(compared(board).path("done").asInt()).isEqualTo(3 * DAYS);
      List<String> before = rows();
      String name = look(board).at("/scenarios/scenarios/1/name").asText();
      JsonNode fewer = sent(board, "scenarios/remove", "\"name\":\"" + name + "\"");
      assertThat(fewer.at("/comparison/state").asText()).isEqualTo("DONE");
      assertThat(fewer.at("/comparison/sentence").asText()).isEqualTo("All 6 plans are made.");
      bring(board);
      assertThat(look(board).at("/comparison/sentence").asText())
          .isEqualTo("All 9 plans are made.");
      assertThat(json(board.get("/api/whatif/report")).path("first").toString())
          .as("plans that are only looked at")
          .contains("Weak evidence")
          .doesNotContain("Used again");
      assertThat(json(board.get("/api/whatif/report")).path("answers")).hasSize(2);
      assertThat(sent(board, "estimate", HOW).path("sentence").asText())
          .endsWith("with 1 seed. All of them are there already, so nothing is left to plan.");
      assertThat(compared(board).path("state").asText()).isEqualTo("DONE");
      assertThat(json(board.get("/api/whatif/report")).path("first").path(1).asText())
          .isEqualTo("Used again: all 9 plans were there already.");
      assertThat(rows()).isEqualTo(before);
    }
    try (TestBoard again = open()) {
      assertThat(look(again).at("/comparison/state").asText()).isEqualTo("DONE");
      assertThat(json(again.get("/api/whatif/report")).path("first").toString())
          .contains("Weak evidence")
          .doesNotContain("Used again");
    }
  }

  @Test
  void oneMoreScenarioNeedsItsOwnPlansOnlyAndThePageSaysSoBefore() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      compared(board);
      List<String> before = rows();
      JsonNode more =
          sent(board, "scenarios/add", "\"change\":{\"kind\":\"WITHOUT_RIG\",\"rig\":\"R1\"}");
      assertThat(more.at("/comparison/state").asText()).isEqualTo("STOPPED");
      assertThat(more.at("/comparison/sentence").asText())
          .startsWith("9 of 12 plans are made and kept.");
      JsonNode estimate = sent(board, "estimate", HOW);
      assertThat(estimate.path("plans").asInt()).isEqualTo(12);
      assertThat(estimate.path("known").asInt()).isEqualTo(9);
      assertThat(estimate.path("sentence").asText())
          .matches(
              ".* with 1 seed\\. Of 12 plans 9 are there already; to make the other 3 takes about"
                  + " \\d+ s\\.");
      JsonNode done = compared(board);
      assertThat(done.path("sentence").asText()).isEqualTo("All 12 plans are made.");
      assertThat(rows().subList(0, 9)).isEqualTo(before);
      assertThat(rows().subList(9, 12)).allMatch(row -> row.startsWith("without-R1,"));
    }
  }

  @Test
  void aTimeLimitIsNoReasonToPlanAgainAndThePageSaysWhatThatMeans() throws Exception {
    String timed = "\"seconds\":1,\"seeds\":1,\"demand\":[],\"again\":false,\"oneMore\":false";
    try (TestBoard board = open()) {
      bring(board);
      String name = look(board).at("/scenarios/scenarios/1/name").asText();
      sent(board, "scenarios/remove", "\"name\":\"" + name + "\"");
      sent(board, "compare", timed);
      TestBoard.await(() -> !look(board).at("/comparison/state").asText().equals("RUNNING"));
      bring(board);
      JsonNode estimate = sent(board, "estimate", timed);
      assertThat(estimate.path("known").asInt()).isEqualTo(6);
      assertThat(estimate.path("sentence").asText())
          .contains("Of 9 plans 6 are there already; to make the other 3 takes about ")
          .endsWith("steps make them the same at any time.");
    }
  }

  @Test
  void aPastDayThatIsAnotherIsPlannedAlone() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      compared(board);
    }
    List<String> before = rows();
    Past second = SmallStudy.days(DAYS, 8).get(1);
    Path day = past.resolve("days").resolve(second.name());
    try (Stream<Path> files = Files.list(day)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(day);
    BatchFolder.write(past.resolve("days"), Demo.batch(9, 77, second.batch().shotList().date()));
    try (TestBoard board = open()) {
      assertThat(look(board).at("/comparison/sentence").asText())
          .startsWith("6 of 9 plans are made and kept.");
      assertThat(compared(board).path("sentence").asText()).isEqualTo("All 9 plans are made.");
    }
    assertThat(rows().subList(0, 9)).isEqualTo(before);
    assertThat(rows().subList(9, 12)).allMatch(row -> row.contains("," + second.name() + ","));
  }
}
