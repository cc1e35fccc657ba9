package rigmorrow.app.board.server;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;
import static rigmorrow.app.board.server.TestBoard.message;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.data.demo.Demo;

/** Comparing scenarios from the page: what is taken, refused, made and kept. */
@Timeout(120)
class WhatIfTest {
  private static final int DAYS = 3;
  private static final long STEPS = 60;
  private static final long FOREVER = 1_000_000_000;

  @TempDir static Path past;
  @TempDir Path folder;

  @BeforeAll
  static void writeDays() {
    SmallStudy.write(past, SmallStudy.days(DAYS, 8), SmallStudy.study());
  }

  private TestBoard open(@Nullable DaySource days) throws InterruptedException {
    TestBoard board = TestBoard.open(folder, Demo.batch(6, 1, TestBoard.DAY), null, days);
    TestBoard.await(() -> !look(board).path("days").asText().equals("READING"));
    return board;
  }

  private TestBoard open() throws InterruptedException {
    return open(DaySource.folder(past.resolve("days")));
  }

  private static JsonNode look(TestBoard board) {
    return json(board.get("/api/whatif"));
  }

  private static JsonNode bring(TestBoard board) throws Exception {
    byte[] file = Files.readAllBytes(past.resolve("scenarios.yaml"));
    HttpResponse<byte[]> answer = board.dropAt("/api/whatif/scenarios", "mine.yaml", file);
    assertThat(answer.statusCode()).isEqualTo(200);
    return json(answer);
  }

  private static HttpResponse<byte[]> add(TestBoard board, String change) {
    long number = look(board).at("/scenarios/number").asLong();
    return board.post(
        "/api/whatif/scenarios/add", "{\"number\":" + number + ",\"change\":" + change + "}");
  }

  private static HttpResponse<byte[]> compare(TestBoard board, String path, long steps) {
    long number = look(board).at("/scenarios/number").asLong();
    return board.post(
        "/api/whatif/" + path,
        "{\"number\":%d,\"steps\":%d,\"seeds\":1,\"demand\":[],\"again\":false,\"oneMore\":false}"
            .formatted(number, steps));
  }

  private static JsonNode finished(TestBoard board) throws InterruptedException {
    TestBoard.await(() -> !look(board).at("/comparison/state").asText().equals("RUNNING"));
    return look(board).path("comparison");
  }

  private List<Path> cells() throws Exception {
    try (Stream<Path> files = Files.list(folder.resolve("whatif"))) {
      return files.filter(file -> file.getFileName().toString().startsWith("cells-")).toList();
    }
  }

  @Test
  void saysHowToGetDaysWhereThereAreNone() throws Exception {
    try (TestBoard board = open(null)) {
      assertThat(look(board).path("days").asText()).isEqualTo("NONE");
      assertThat(look(board).path("sentence").asText()).contains("without past days");
      assertThat(look(board).path("floor").isNull()).isTrue();
      HttpResponse<byte[]> answer =
          board.dropAt("/api/whatif/scenarios", "s.yaml", "version: 1".getBytes(UTF_8));
      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(message(answer)).contains("without past days");
      assertThat(folder.resolve("whatif")).doesNotExist();
    }
  }

  @Test
  void tellsEverythingThatIsWrongWithTheDays() throws Exception {
    Path bad = folder.resolve("bad");
    Files.createDirectories(bad.resolve("2026-03-02"));
    Files.createDirectories(bad.resolve("2026-03-03"));
    try (TestBoard board = open(DaySource.folder(bad))) {
      assertThat(look(board).path("days").asText()).isEqualTo("REFUSED");
      assertThat(look(board).path("problems")).hasSize(2);
      assertThat(look(board).path("sentence").asText()).startsWith("2 problems with the past days");
      assertThat(look(board).path("problems").toString()).contains("no shot list");
    }
  }

  @Test
  void refusesAFileWithItsPlacesAndKeepsTheScenariosThereAre() throws Exception {
    try (TestBoard board = open()) {
      JsonNode good = bring(board);
      assertThat(good.path("refused").isNull()).isTrue();
      assertThat(good.at("/scenarios/fileName").asText()).isEqualTo("mine.yaml");
      assertThat(good.at("/scenarios/scenarios")).hasSize(5);
      assertThat(good.at("/scenarios/scenarios/0/price").asText())
          .isEqualTo("42,000 EUR, used for 8 years");
      String bad =
          "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios:\n"
              + "  - {name: a, changes: [{removeRig: {rig: R9}}]}\n"
              + "  - {name: b, changes: [{addKitUnits: {kit: macro-lens, units: 0}}]}\n";
      JsonNode refused =
          json(board.dropAt("/api/whatif/scenarios", "../../bad.yaml", bad.getBytes(UTF_8)));
      assertThat(refused.at("/refused/what").asText()).isEqualTo("bad.yaml");
      assertThat(refused.at("/refused/problems")).hasSize(2);
      JsonNode first = refused.at("/refused/problems/0");
      assertThat(first.path("where").asText()).startsWith("scenarios[0].changes[0].removeRig");
      assertThat(first.path("value").asText()).isEqualTo("R9");
      assertThat(first.path("accepted").asText()).contains("R1, R2");
      assertThat(refused.at("/scenarios/fileName").asText()).isEqualTo("mine.yaml");
      assertThat(look(board).path("refused").isNull()).isTrue();
    }
  }

  @Test
  void tellsProblemsOfEveryKindOfAFileAtOnce() throws Exception {
    try (TestBoard board = open()) {
      String bad =
          "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios:\n"
              + "  - {name: a, purchase: {price: -5, lifeYears: 3}, changes: [{removeRig: {rig: R9}}]}\n"
              + "  - {name: a, changes: [{removeRig: {rig: R8}}]}\n";
      JsonNode refused =
          json(board.dropAt("/api/whatif/scenarios", "bad.yaml", bad.getBytes(UTF_8)));
      assertThat(refused.at("/refused/problems").findValuesAsText("where"))
          .containsExactly(
              "scenarios[0].purchase.price",
              "scenarios[0].changes[0].removeRig.rig",
              "scenarios[1].name",
              "scenarios[1].changes[0].removeRig.rig");
      assertThat(refused.at("/refused/problems").findValuesAsText("value"))
          .containsExactly("-5", "R9", "a", "R8");
      assertThat(refused.at("/refused/problems").findValuesAsText("accepted"))
          .noneMatch(String::isEmpty);
      assertThat(refused.path("scenarios").isNull()).isTrue();
    }
  }

  @Test
  void makesTheUsualChangesAsAFileThatTheCommandReads() throws Exception {
    try (TestBoard board = open()) {
      for (String change :
          List.of(
              "{\"kind\":\"ANOTHER_RIG\",\"rig\":\"R2\"}",
              "{\"kind\":\"WITHOUT_RIG\",\"rig\":\"R1\"}",
              "{\"kind\":\"ANOTHER_OPERATOR\",\"operator\":\"O1\"}",
              "{\"kind\":\"ANOTHER_UNIT\",\"kit\":\"macro-lens\"}",
              "{\"kind\":\"OTHER_DEMAND\",\"percent\":20}",
              "{\"kind\":\"OPEN_LONGER\",\"earlierMinutes\":0,\"laterMinutes\":60,\"regularTime\":false}")) {
        HttpResponse<byte[]> answer = add(board, change);
        assertThat(answer.statusCode()).as(message(answer)).isEqualTo(200);
        assertThat(json(answer).path("refused").isNull()).as(change).isTrue();
      }
      assertThat(look(board).at("/scenarios/scenarios").findValuesAsText("title"))
          .containsExactly(
              "One more rig like R2 (Glass table)",
              "Without R1 (Small glass table)",
              "One more operator like O1 (Signe)",
              "One more macro-lens (Macro lens)",
              "20 % more jobs",
              "Every rig and operator 60 min later");
      String text = new String(board.get("/api/whatif/scenarios.yaml").body(), UTF_8);
      assertThat(text).contains("addRigLike", "like: R2", "removeRig", "laterMinutes: 60");
      JsonNode again =
          json(board.dropAt("/api/whatif/scenarios", "again.yaml", text.getBytes(UTF_8)));
      assertThat(again.path("refused").isNull()).isTrue();
      assertThat(again.at("/scenarios/scenarios")).hasSize(6);
    }
  }

  @Test
  void keepsTheListOfPricesWhateverAScenarioCosts() throws Exception {
    try (TestBoard board = open()) {
      String before = bring(board).at("/scenarios/rigPrices").toString();
      assertThat(before)
          .contains(
              "{\"id\":\"R3\",\"price\":55000.0,\"lifeYears\":8,\"interestPercent\":6.0,"
                  + "\"runningPerYear\":2100.0}");
      String dearer =
          "{\"kind\":\"ANOTHER_RIG\",\"rig\":\"R3\"},\"purchase\":{\"price\":60000,"
              + "\"lifeYears\":9,\"interestPercent\":5,\"runningPerYear\":0}";
      JsonNode added = json(add(board, dearer)).path("scenarios");
      assertThat(added.at("/scenarios/5/price").asText()).isEqualTo("60,000 EUR, used for 9 years");
      assertThat(added.path("rigPrices").toString()).isEqualTo(before);
      JsonNode gone =
          json(
              board.post(
                  "/api/whatif/scenarios/remove",
                  "{\"number\":" + added.path("number") + ",\"name\":\"another-R3\"}"));
      assertThat(gone.at("/scenarios/rigPrices").toString()).isEqualTo(before);
    }
  }

  @Test
  void offersTheInterestThatTheFileSays() throws Exception {
    try (TestBoard board = open()) {
      String file =
          "version: 1\nname: x\nmoney: {interestPercent: 6.5}\nscenarios:\n"
              + "  - {name: a, changes: [{removeRig: {rig: R1}}]}\n";
      JsonNode look = json(board.dropAt("/api/whatif/scenarios", "x.yaml", file.getBytes(UTF_8)));
      assertThat(look.at("/scenarios/interestPercent").asDouble()).isEqualTo(6.5);
      String bought =
          "{\"kind\":\"ANOTHER_RIG\",\"rig\":\"R3\"},\"purchase\":{\"price\":60000,"
              + "\"lifeYears\":9,\"interestPercent\":4,\"runningPerYear\":0}";
      JsonNode added = json(add(board, bought));
      assertThat(added.at("/scenarios/interestPercent").asDouble()).isEqualTo(6.5);
    }
    try (TestBoard again = open()) {
      assertThat(look(again).at("/scenarios/interestPercent").asDouble()).isEqualTo(6.5);
    }
  }

  @Test
  void tellsWhereAUsualChangeCannotBeMade() throws Exception {
    try (TestBoard board = open()) {
      String day =
          "{\"kind\":\"OPEN_LONGER\",\"earlierMinutes\":0,\"laterMinutes\":1439,\"regularTime\":false}";
      JsonNode refused = json(add(board, day));
      assertThat(refused.at("/refused/problems").size()).isPositive();
      assertThat(refused.at("/refused/problems/0/where").asText()).contains("longerHours");
      assertThat(refused.path("scenarios").isNull()).isTrue();
      HttpResponse<byte[]> unknown = add(board, "{\"kind\":\"ANOTHER_RIG\",\"rig\":\"R9\"}");
      assertThat(unknown.statusCode()).isEqualTo(400);
      assertThat(message(unknown)).isEqualTo("rig is 'R9'; accepted: R1, R2, R3, R4, R5, R6");
      HttpResponse<byte[]> none = add(board, "{\"kind\":\"OTHER_DEMAND\",\"percent\":0}");
      assertThat(none.statusCode()).isEqualTo(400);
    }
  }

  @Test
  void saysWhatItTakesComparesAndTellsTheSameInEveryForm() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      assertThat(board.get("/api/whatif/report").statusCode()).isEqualTo(404);
      JsonNode estimate = json(compare(board, "estimate", STEPS));
      assertThat(estimate.path("plans").asInt()).isEqualTo(6 * DAYS);
      assertThat(estimate.path("sentence").asText())
          .isEqualTo(
              "18 plans of 60 steps on one core: 6 floors and demands on 3 days with 1 seed. How"
                  + " long a plan of so many steps takes is known after the first.");
      assertThat(compare(board, "compare", STEPS).statusCode()).isEqualTo(202);
      assertThat(finished(board).path("sentence").asText()).isEqualTo("All 18 plans are made.");
      JsonNode report = json(board.get("/api/whatif/report"));
      JsonNode summary = json(board.get("/api/whatif/report/summary.json"));
      assertThat(report.path("answers")).hasSize(5);
      for (int i = 0; i < 5; i++) {
        assertThat(
                report.at("/answers/" + i + "/title").asText()
                    + " "
                    + report.at("/answers/" + i + "/sentence").asText())
            .isEqualTo(summary.at("/scenarios/" + i + "/sentence").asText());
      }
      assertThat(report.at("/sections/0/byDay/rows")).hasSize(DAYS);
      assertThat(report.at("/sections/0/finishing/layers").findValuesAsText("ink"))
          .containsExactly("faint", "base", "mark", "scenario");
      String html = new String(board.get("/api/whatif/report/report.html").body(), UTF_8);
      assertThat(html).contains(report.path("title").asText(), "All figures");
      String known = json(compare(board, "estimate", STEPS)).path("sentence").asText();
      assertThat(known).endsWith("All of them are there already, so nothing is left to plan.");
    }
  }

  /** The board ends in the middle, and begins again. */
  @Test
  void goesOnWhereItWasWhenTheBoardIsStartedAgain() throws Exception {
    int kept;
    try (TestBoard board = open()) {
      bring(board);
      assertThat(compare(board, "compare", STEPS).statusCode()).isEqualTo(202);
      finished(board);
      assertThat(compare(board, "compare", FOREVER).statusCode()).isEqualTo(202);
      board.post("/api/whatif/stop", "{}");
      assertThat(finished(board).path("state").asText()).isEqualTo("STOPPED");
      JsonNode nothing = json(board.get("/api/whatif/report"));
      assertThat(nothing.path("plans").asInt()).isZero();
      assertThat(nothing.path("sections")).isEmpty();
      assertThat(board.get("/api/whatif/report/report.pdf").statusCode()).isEqualTo(404);
      assertThat(compare(board, "compare", STEPS).statusCode()).isEqualTo(202);
      finished(board);
    }
    assertThat(cells()).hasSize(2);
    Path file = cells().stream().filter(one -> lines(one) > 2).findFirst().orElseThrow();
    List<String> whole = Files.readAllLines(file);
    String some = String.join("\n", whole.subList(0, 9)) + "\n" + whole.get(9).substring(0, 30);
    Files.writeString(file, some); // As a kill would leave it.
    kept = 7;
    try (TestBoard board = open()) {
      JsonNode look = look(board);
      assertThat(look.at("/scenarios/fileName").asText()).isEqualTo("mine.yaml");
      assertThat(look.at("/settings/steps").asLong()).isEqualTo(STEPS);
      assertThat(look.at("/comparison/state").asText()).isEqualTo("STOPPED");
      assertThat(look.at("/comparison/sentence").asText())
          .startsWith(kept + " of 18 plans are made and kept.");
      assertThat(json(board.get("/api/whatif/report")).path("warnings").toString())
          .contains("Not finished: 7 of 18 plans");
      assertThat(compare(board, "compare", STEPS).statusCode()).isEqualTo(202);
      assertThat(finished(board).path("done").asInt()).isEqualTo(18);
    }
    assertThat(Files.readAllLines(file).subList(0, 9)).isEqualTo(whole.subList(0, 9));
    assertThat(Files.readAllLines(file)).hasSameSizeAs(whole);
  }

  private static int lines(Path file) {
    try {
      return Files.readAllLines(file).size();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void doesNotPlanTheDayAndCompareAtOnce() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      assertThat(compare(board, "compare", FOREVER).statusCode()).isEqualTo(202);
      String search = "{\"revision\":1,\"seconds\":600}";
      HttpResponse<byte[]> refused = board.post("/api/search", search);
      assertThat(refused.statusCode()).isEqualTo(423);
      assertThat(message(refused))
          .startsWith("Scenarios are being compared, 0 of 18 plans")
          .contains("Stop it under What if");
      HttpResponse<byte[]> second = compare(board, "compare", STEPS);
      assertThat(second.statusCode()).isEqualTo(423);
      board.post("/api/whatif/stop", "{}");
      finished(board);
      assertThat(board.post("/api/search", search).statusCode()).isEqualTo(202);
      HttpResponse<byte[]> waits = compare(board, "compare", STEPS);
      assertThat(waits.statusCode()).isEqualTo(423);
      assertThat(message(waits)).contains("A search for the plan of the day", "Plan again");
      board.post("/api/search/stop", "{}");
      TestBoard.await(() -> !board.desk.searching());
      assertThat(compare(board, "compare", STEPS).statusCode()).isEqualTo(202);
      assertThat(finished(board).path("state").asText()).isEqualTo("DONE");
    }
  }

  @Test
  void takesNoWishAboutOtherScenarios() throws Exception {
    try (TestBoard board = open()) {
      long before = bring(board).at("/scenarios/number").asLong();
      bring(board);
      HttpResponse<byte[]> stale =
          board.post(
              "/api/whatif/compare",
              "{\"number\":%d,\"steps\":9,\"seeds\":1,\"demand\":[],\"again\":false,\"oneMore\":false}"
                  .formatted(before));
      assertThat(stale.statusCode()).isEqualTo(409);
      assertThat(message(stale)).contains("Other scenarios were chosen meanwhile");
    }
  }
}
