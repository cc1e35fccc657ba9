package rigmorrow.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.cli.Runner.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.EarlyStop;
import rigmorrow.app.terminal.Session;
import rigmorrow.app.whatif.SmallStudy;

/** The command that opens a board: what it begins with, goes on with, and refuses. */
@Timeout(180)
class BoardCommandTest {
  @TempDir static Path folder;

  @BeforeAll
  static void writeFiles() {
    Ran demo = run(folder, "demo", "--write-only", "--jobs", "12", "--out", "in");
    assertThat(demo.exitCode()).as(demo.err()).isZero();
    Ran other = run(folder, "demo", "--write-only", "--jobs", "9", "--out", "other");
    assertThat(other.exitCode()).as(other.err()).isZero();
    Ran plan =
        run(
            folder,
            "plan",
            "in/floor.yaml",
            "in/shot-list.csv",
            "--steps",
            "300",
            "--out",
            "planned");
    assertThat(plan.exitCode()).as(plan.err()).isZero();
  }

  /** A board that runs until it is told to stop, as by Ctrl-C. */
  private static final class Running implements AutoCloseable {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final EarlyStop stop = new EarlyStop();
    private final CompletableFuture<Integer> exitCode;

    Running(String... arguments) throws Exception {
      this(Runner.CLOCK, arguments);
    }

    Running(Clock clock, String... arguments) throws Exception {
      Console console =
          Console.plain(new PrintStream(out, true, UTF_8), new PrintStream(err, true, UTF_8));
      Session session = new Session(console, stop, clock, folder);
      List<String> all =
          Stream.concat(
                  Stream.of("board"), Stream.concat(Stream.of(arguments), Stream.of("--port", "0")))
              .toList();
      exitCode =
          CompletableFuture.supplyAsync(
              () -> RigmorrowCommand.run(all, session, () -> new String[] {"rigmorrow test"}));
      while (out.size() == 0 && !exitCode.isDone()) {
        Thread.sleep(20);
      }
      assertThat(exitCode.isDone()).as(err.toString(UTF_8)).isFalse();
    }

    String address() {
      return out.toString(UTF_8).strip();
    }

    JsonNode board() throws Exception {
      return get("api/board");
    }

    JsonNode get(String path) throws Exception {
      HttpResponse<String> answer =
          HttpClient.newHttpClient()
              .send(
                  HttpRequest.newBuilder(URI.create(address() + path)).build(),
                  HttpResponse.BodyHandlers.ofString());
      assertThat(answer.statusCode()).isEqualTo(200);
      return new ObjectMapper().readTree(answer.body());
    }

    String post(String path, String body) throws Exception {
      HttpRequest request =
          HttpRequest.newBuilder(URI.create(address() + path))
              .header("Content-Type", "application/json")
              .POST(HttpRequest.BodyPublishers.ofString(body))
              .build();
      return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString()).body();
    }

    int end() throws Exception {
      stop.request();
      return exitCode.get(60, TimeUnit.SECONDS);
    }

    @Override
    public void close() throws Exception {
      end();
    }
  }

  @Test
  void beginsWithDispatchRulesAndEndsInOrder() throws Exception {
    Running running = new Running("in/floor.yaml", "in/shot-list.csv", "--folder", "one");
    assertThat(running.address()).matches("http://127\\.0\\.0\\.1:\\d+/");
    JsonNode board = running.board();
    assertThat(board.path("jobs")).hasSize(12);
    assertThat(board.at("/figures/method").asText()).contains("dispatch rules");
    assertThat(running.end()).isZero();
    assertThat(running.err.toString(UTF_8)).contains("until Ctrl-C", "the board ends");
  }

  @Test
  void goesOnWithWhatItHolds() throws Exception {
    try (Running first = new Running("in/floor.yaml", "in/shot-list.csv", "--folder", "two")) {
      String job = first.board().at("/jobs/0/id").asText();
      first.post(
          "api/keep",
          "{\"revision\":1,\"touch\":{\"kind\":\"SET_WEIGHT\",\"job\":\""
              + job
              + "\",\"weight\":321}}");
    }
    try (Running again = new Running("--folder", "two")) {
      assertThat(again.board().at("/revision").asLong()).isEqualTo(2);
      assertThat(again.board().at("/jobs/0/weight").asInt()).isEqualTo(321);
      assertThat(again.board().path("undo").asText()).contains("321");
    }
    try (Running same = new Running("in/floor.yaml", "in/shot-list.csv", "--folder", "two")) {
      assertThat(same.board().at("/revision").asLong()).isEqualTo(2);
      assertThat(same.err.toString(UTF_8)).contains("going on with the board that two holds");
    }
  }

  @Test
  void neverTakesOtherFilesInPlaceOfWhatIsStored() throws Exception {
    new Running("in/floor.yaml", "in/shot-list.csv", "--folder", "three").close();
    String[] others = {"board", "other/floor.yaml", "other/shot-list.csv", "--folder", "three"};
    Ran refused = run(folder, others);
    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(refused.err()).contains("--new", "no files to go on");
    assertThat(refused.out()).isEmpty();
    try (Running anew =
        new Running("other/floor.yaml", "other/shot-list.csv", "--folder", "three", "--new")) {
      assertThat(anew.board().path("jobs")).hasSize(9);
      assertThat(anew.err.toString(UTF_8)).contains("the old board is now board-2026-03-03-");
    }
    try (Stream<Path> files = Files.list(folder.resolve("three"))) {
      List<Path> aside =
          files.filter(file -> file.getFileName().toString().startsWith("board-2026")).toList();
      assertThat(aside).hasSize(1);
      Files.createDirectories(folder.resolve("back"));
      Files.copy(aside.get(0), folder.resolve("back/board.sqlite"));
    }
    try (Running old = new Running("--folder", "back")) {
      assertThat(old.board().path("jobs")).hasSize(12);
    }
  }

  @Test
  void beginsWithAPlan() throws Exception {
    String[] files = {"in/floor.yaml", "in/shot-list.csv", "planned/plan.json"};
    try (Running running = new Running(files[0], files[1], files[2], "--folder", "four")) {
      assertThat(running.board().at("/figures/method").asText()).contains("search");
      Ran second = run(folder, "board", "--folder", "four", "--port", "0");
      assertThat(second.exitCode()).isEqualTo(2);
      assertThat(second.err()).contains("open already");
    }
    Ran again = run(folder, "board", files[0], files[1], files[2], "--folder", "four");
    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("--new");
  }

  @Test
  void inventsADay() throws Exception {
    try (Running running = new Running("--demo", "--folder", "five", "--json")) {
      JsonNode document = new ObjectMapper().readTree(running.out.toByteArray());
      assertThat(document.path("address").asText()).startsWith("http://127.0.0.1:");
    }
  }

  /** The demo is in nobody's way, and nobody's board is in its way, today and tomorrow. */
  @Test
  void goesOnWithTheDemoBesidesAnyOtherBoard() throws Exception {
    new Running("in/floor.yaml", "in/shot-list.csv").close();
    long revision;
    try (Running demo = new Running("--demo")) {
      assertThat(demo.board().path("jobs")).hasSize(150);
      assertThat(demo.board().path("date").asText()).isEqualTo("2026-03-04");
      assertThat(demo.err.toString(UTF_8)).doesNotContain("going on");
      String job = demo.board().at("/jobs/0/id").asText();
      String touch = "{\"kind\":\"SET_WEIGHT\",\"job\":\"" + job + "\",\"weight\":321}";
      demo.post("api/keep", "{\"revision\":1,\"touch\":" + touch + "}");
      revision = demo.board().path("revision").asLong();
      assertThat(revision).isEqualTo(2);
    }
    try (Running again = new Running("--demo")) {
      assertThat(again.board().path("revision").asLong()).isEqualTo(revision);
      assertThat(again.err.toString(UTF_8))
          .contains("going on with the demo of 2026-03-04 that out/board-demo holds")
          .doesNotContain("--new");
    }
    Clock later = Clock.offset(Runner.CLOCK, Duration.ofDays(1));
    try (Running next = new Running(later, "--demo")) {
      assertThat(next.board().path("revision").asLong()).isEqualTo(revision);
      assertThat(next.err.toString(UTF_8))
          .contains(
              "going on with the demo of 2026-03-04 that out/board-demo holds; --new begins with"
                  + " one of 2026-03-05");
    }
    try (Running anew = new Running(later, "--demo", "--new")) {
      assertThat(anew.board().path("date").asText()).isEqualTo("2026-03-05");
      assertThat(anew.board().path("revision").asLong()).isEqualTo(1);
    }
    try (Running mine = new Running()) {
      assertThat(mine.board().path("jobs")).hasSize(12);
    }
    Ran other = run(folder, "board", "--demo", "--folder", "out/board", "--port", "0");
    assertThat(other.exitCode()).isEqualTo(2);
    assertThat(other.err()).contains("began with other files");
  }

  @Test
  void inventsTheDayThatIsNamedAndTakesNoOtherForIt() throws Exception {
    try (Running named = new Running("--demo", "--date", "2026-12-24", "--folder", "eve")) {
      assertThat(named.board().path("date").asText()).isEqualTo("2026-12-24");
    }
    try (Running again = new Running("--demo", "--date", "2026-12-24", "--folder", "eve")) {
      assertThat(again.err.toString(UTF_8)).contains("going on with the demo of 2026-12-24");
    }
    Ran other =
        run(folder, "board", "--demo", "--date", "2026-12-23", "--folder", "eve", "--port", "0");
    assertThat(other.exitCode()).isEqualTo(2);
    assertThat(other.err()).contains("began with other files", "--new");
    Ran nothing = run(folder, "board", "--date", "2026-12-23", "--folder", "eve", "--port", "0");
    assertThat(nothing.exitCode()).isEqualTo(2);
    assertThat(nothing.err()).contains("without one");
  }

  @Test
  void comparesScenariosOnPastDays() throws Exception {
    SmallStudy.write(folder.resolve("past"), SmallStudy.days(2, 6), SmallStudy.study());
    try (Running running =
        new Running(
            "in/floor.yaml", "in/shot-list.csv", "--folder", "eight", "--past-days", "past/days")) {
      JsonNode look = running.get("api/whatif");
      while (look.path("days").asText().equals("READING")) {
        Thread.sleep(20);
        look = running.get("api/whatif");
      }
      assertThat(look.path("sentence").asText())
          .isEqualTo("Compared on 2 past days from 2026-03-02 to 2026-03-03, with 12 jobs in all.");
    }
    Ran none =
        run(
            folder,
            "board",
            "in/floor.yaml",
            "in/shot-list.csv",
            "--folder",
            "nine",
            "--past-days",
            "no-days");
    assertThat(none.exitCode()).isEqualTo(2);
    assertThat(none.err()).contains("there is no such folder");
    assertThat(folder.resolve("nine")).doesNotExist();
  }

  /** Nobody waits for invented past days who does not look at them. */
  @Test
  void inventsPastDaysForTheDemoWhenSomebodyLooks() throws Exception {
    Path days = folder.resolve("ten/whatif/demo/days");
    try (Running running = new Running("--demo", "--folder", "ten")) {
      assertThat(running.board().path("jobs")).hasSize(150);
      assertThat(days).doesNotExist();
      JsonNode look = running.get("api/whatif");
      while (look.path("days").asText().equals("READING")) {
        Thread.sleep(20);
        look = running.get("api/whatif");
      }
      assertThat(look.path("days").asText()).as(look.toString()).isEqualTo("READY");
      assertThat(look.at("/scenarios/scenarios")).hasSize(4);
    }
    try (Stream<Path> all = Files.list(days)) {
      assertThat(all).hasSize(30);
    }
  }

  @Test
  void refusesWhatMakesNoSense() throws Exception {
    assertThat(run(folder, "board", "--folder", "none").err()).contains("there is no board");
    assertThat(Files.exists(folder.resolve("none"))).isFalse();
    assertThat(run(folder, "board", "--folder", "none").exitCode()).isEqualTo(2);
    assertThat(run(folder, "board", "--new").exitCode()).isEqualTo(2);
    assertThat(run(folder, "board", "in/floor.yaml").exitCode()).isEqualTo(2);
    assertThat(run(folder, "board", "--demo", "--days", "2").err()).contains("without one");
    assertThat(run(folder, "board", "--demo", "in/floor.yaml", "in/shot-list.csv").exitCode())
        .isEqualTo(2);
    assertThat(run(folder, "board", "--port", "70000").err()).contains("0 to 65535");
    assertThat(run(folder, "board", "--token", "short").err()).contains("16 to 200");
    assertThat(
            run(folder, "board", "--demo", "--folder", "x", "--host", "no.such.host.invalid")
                .exitCode())
        .isEqualTo(2);
  }

  @Test
  void saysWhenThePortIsTaken() throws Exception {
    try (ServerSocket taken = new ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
      String port = String.valueOf(taken.getLocalPort());
      Ran ran = run(folder, "board", "--demo", "--folder", "six", "--port", port);
      assertThat(ran.exitCode()).isEqualTo(2);
      assertThat(ran.err()).contains("127.0.0.1:" + port, "--port").doesNotContain("Exception");
      assertThat(ran.err().lines()).hasSize(1);
      assertThat(folder.resolve("six")).as("nothing is left behind").doesNotExist();
      new Running("in/floor.yaml", "in/shot-list.csv", "--folder", "stays").close();
      String[] anew = {"in/floor.yaml", "in/shot-list.csv", "--folder", "stays", "--new"};
      assertThat(
              run(folder, "board", anew[0], anew[1], anew[2], anew[3], anew[4], "--port", port)
                  .exitCode())
          .isEqualTo(2);
      try (Stream<Path> files = Files.list(folder.resolve("stays"))) {
        assertThat(files.map(file -> file.getFileName().toString()))
            .as("nothing is put aside")
            .containsExactlyInAnyOrder("board.lock", "board.sqlite");
      }
    }
  }

  @Test
  void namesEveryFileThatIsNotThere() {
    Ran both = run(folder, "board", "nosuch.yaml", "x.csv", "--folder", "none");
    assertThat(both.exitCode()).isEqualTo(2);
    assertThat(both.err()).contains("2 files are not there: nosuch.yaml, x.csv");
    Ran three = run(folder, "verify", "nosuch.yaml", "in/shot-list.csv", "p.json", "--json");
    assertThat(three.json().at("/error/problems")).hasSize(2);
    assertThat(three.json().at("/error/problems/1/file").asText()).isEqualTo("p.json");
    assertThat(run(folder, "fit", "in/floor.yaml", "x.csv").err()).contains("x.csv");
  }

  @Test
  void needsATokenOffThisMachine() throws Exception {
    Running running =
        new Running("in/floor.yaml", "in/shot-list.csv", "--folder", "seven", "--host", "0.0.0.0");
    String address = running.address();
    assertThat(address).matches("http://[0-9.]+:\\d+/\\?token=[A-Za-z0-9_-]{32}");
    URI open = URI.create(address);
    assertThat(open.getHost()).isNotEqualTo("0.0.0.0");
    URI without = URI.create(open.toString().replaceFirst("\\?.*", ""));
    HttpClient client = HttpClient.newHttpClient();
    HttpResponse.BodyHandler<String> text = HttpResponse.BodyHandlers.ofString();
    assertThat(client.send(HttpRequest.newBuilder(without).build(), text).statusCode())
        .isEqualTo(401);
    assertThat(client.send(HttpRequest.newBuilder(open).build(), text).statusCode()).isEqualTo(200);
    assertThat(running.end()).isZero();
  }
}
