package rigmorrow.app.board.server;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.app.board.handout.HandOut;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** Jobs may be called anything; the board shows and takes it as it stands. */
class OddIdsTest {
  private static final List<String> ODD =
      List.of(
          "0417/spin-36",
          "a b",
          "50%",
          "%41",
          "<script>alert(1)</script>",
          "\"quoted\" & 'single'",
          "Rød vase på sokkel",
          "x?y#z",
          "+1",
          "a//b/../c",
          "back\\slash",
          "{id}",
          "semi;colon",
          "日本語 \uD83D\uDCF7");

  @TempDir static Path folder;

  private static TestBoard board;

  @BeforeAll
  static void open() {
    Batch demo = Demo.batch(ODD.size(), 3, TestBoard.DAY);
    List<ShotJob> jobs = new ArrayList<>();
    for (int i = 0; i < ODD.size(); i++) {
      jobs.add(named(demo.shotList().jobs().get(i), ODD.get(i)));
    }
    ShotList list = new ShotList(TestBoard.DAY, 1, jobs, List.of());
    board = TestBoard.open(folder, new Batch(demo.floor(), list), null);
  }

  @AfterAll
  static void close() {
    board.close();
  }

  static Stream<String> odd() {
    return ODD.stream();
  }

  @Test
  void showsIdsAsTheyStand() {
    HttpResponse<byte[]> answer = board.get("/api/board");
    assertThat(json(answer).path("jobs").findValuesAsText("id")).containsAll(ODD);
    assertThat(answer.headers().firstValue("Content-Type").orElse(""))
        .startsWith("application/json");
  }

  @ParameterizedTest
  @MethodSource("odd")
  void answersWhyWhateverAJobIsCalled(String id) {
    String path = "/api/jobs/" + URLEncoder.encode(id, UTF_8).replace("+", "%20") + "/why";
    HttpResponse<byte[]> answer = board.get(path);
    assertThat(answer.statusCode()).as(path + new String(answer.body(), UTF_8)).isEqualTo(200);
    assertThat(json(answer).path("job").asText()).isEqualTo(id);
  }

  @ParameterizedTest
  @MethodSource("odd")
  void takesATouchWhateverAJobIsCalled(String id) {
    String wish = TestBoard.touch(board.revision(), "SET_WEIGHT", id, ",\"weight\":777");
    HttpResponse<byte[]> answer = board.post("/api/keep", wish);
    assertThat(answer.statusCode()).as(new String(answer.body(), UTF_8)).isEqualTo(200);
    assertThat(json(answer).path("jobs"))
        .anySatisfy(
            job -> {
              assertThat(job.path("id").asText()).isEqualTo(id);
              assertThat(job.path("weight").asInt()).isEqualTo(777);
            });
  }

  @Test
  void handsThemOutWithoutMakingMarkupOfThem() {
    for (String path : List.of("/api/chart.svg", "/api/hand-out/run-sheets.html")) {
      HttpResponse<byte[]> answer = board.get(path);
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(new String(answer.body(), UTF_8)).doesNotContain("<script");
      assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
          .contains("default-src 'none'");
    }
    for (HandOut file : HandOut.values()) {
      assertThat(board.get("/api/hand-out/" + file.fileName()).statusCode())
          .as(file.fileName())
          .isEqualTo(200);
    }
  }

  private static ShotJob named(ShotJob job, String id) {
    return new ShotJob(
        id,
        job.article(),
        job.gtin(),
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
}
