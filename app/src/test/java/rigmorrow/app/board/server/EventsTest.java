package rigmorrow.app.board.server;

import static java.net.http.HttpRequest.BodyPublishers.noBody;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigmorrow.app.board.server.TestBoard.json;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.Proxy;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Tabs hear of what happens in others, and none loses what another did. */
@Timeout(120)
class EventsTest {
  @TempDir Path folder;

  private TestBoard board;

  @BeforeEach
  void open() {
    board = TestBoard.open(folder);
  }

  @AfterEach
  void close() {
    board.close();
  }

  /** A tab that listens. */
  private final class Tab implements AutoCloseable {
    private final InputStream in;
    private final BufferedReader reader;

    Tab() throws Exception {
      HttpRequest.Builder request =
          board.request("/api/events").header("Accept", "text/event-stream");
      HttpResponse<InputStream> answer =
          board.client.send(request.build(), HttpResponse.BodyHandlers.ofInputStream());
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.headers().firstValue("Content-Type").orElse(""))
          .startsWith("text/event-stream");
      in = answer.body();
      reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    /** Reads until an event of that kind comes. */
    String next(String kind) throws IOException {
      String line = reader.readLine();
      while (line != null) {
        if (line.equals("event: " + kind)) {
          return reader.readLine();
        }
        line = reader.readLine();
      }
      throw new AssertionError("the stream ended");
    }

    String nextComment() throws IOException {
      String line = reader.readLine();
      while (line != null && !line.startsWith(":")) {
        line = reader.readLine();
      }
      return "" + line;
    }

    @Override
    public void close() throws IOException {
      in.close();
    }
  }

  @Test
  void everyTabHearsOfAChange() throws Exception {
    List<Tab> tabs = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      Tab tab = new Tab();
      assertThat(tab.next("board")).startsWith("data: {\"revision\":1,\"change\":");
      assertThat(tab.next("search")).contains("\"state\":\"NONE\"");
      assertThat(tab.next("whatif")).contains("\"state\":\"NONE\"", "\"change\":0");
      tabs.add(tab);
    }
    assertThat(board.server.streams()).isEqualTo(5);
    assertThat(board.post("/api/keep", board.move(1)).statusCode()).isEqualTo(200);
    for (Tab tab : tabs) {
      String told = tab.next("board");
      while (told.contains("\"revision\":1,")) { // its bounds may have been found before
        told = tab.next("board");
      }
      assertThat(told).startsWith("data: {\"revision\":2,\"change\":");
      tab.close();
    }
  }

  @Test
  void showsThatItIsStillThereWhenNothingHappens() throws Exception {
    try (Tab tab = new Tab()) {
      assertThat(tab.nextComment()).startsWith(":");
    }
  }

  @Test
  void forgetsTabsThatWereClosed() throws Exception {
    for (int i = 0; i < 3; i++) {
      Tab tab = new Tab();
      tab.next("board");
      tab.close();
    }
    awaitNoStreams();
  }

  @Test
  void sendsNoHeadOfAStream() {
    HttpRequest.Builder head =
        board.request("/api/events").header("Accept", "text/event-stream").method("HEAD", noBody());
    assertThat(board.send(head).statusCode()).isEqualTo(405);
    assertThat(board.server.streams()).isZero();
  }

  /** Tabs that go away before their stream begins take no room from others. */
  @Test
  void makesRoomAgainWhenAStreamCannotBegin() {
    Context gone =
        (Context)
            Proxy.newProxyInstance(
                Context.class.getClassLoader(),
                new Class<?>[] {Context.class},
                (proxy, method, arguments) ->
                    switch (method.getName()) {
                      case "method" -> HandlerType.GET;
                      case "header" -> "text/event-stream";
                      default -> throw new IllegalStateException("the tab went away");
                    });
    Events events = new Events(board.desk, board.comparisons, Duration.ofSeconds(1));
    for (int tab = 0; tab < 100; tab++) {
      assertThatThrownBy(() -> events.stream(gone)).hasMessage("the tab went away");
    }
  }

  @Test
  void endsEveryStreamWhenItCloses() throws Exception {
    Tab tab = new Tab();
    tab.next("board");
    board.server.close();
    String line = tab.reader.readLine();
    while (line != null) {
      line = tab.reader.readLine();
    }
    awaitNoStreams();
  }

  @Test
  void tellsHowASearchStands() throws Exception {
    try (Tab tab = new Tab()) {
      tab.next("search");
      String wish = "{\"revision\":" + board.revision() + ",\"seconds\":600}";
      assertThat(board.post("/api/search", wish).statusCode()).isEqualTo(202);
      assertThat(tab.next("search")).contains("\"state\":\"RUNNING\"");
      assertThat(board.post("/api/search/stop", "{}").statusCode()).isEqualTo(200);
      String told = tab.next("search");
      while (told.contains("\"state\":\"RUNNING\"")) {
        told = tab.next("search");
      }
      assertThat(told).containsAnyOf("\"KEPT\"", "\"NO_BETTER\"");
    }
  }

  /** The search is another each time it is asked; what is beside it must be told all the same. */
  @Test
  void tellsOfVersionsWhileASearchRuns() throws Exception {
    try (Tab tab = new Tab()) {
      tab.next("search");
      String wish = "{\"revision\":1,\"seconds\":600}";
      assertThat(board.post("/api/search", wish).statusCode()).isEqualTo(202);
      assertThat(tab.next("search")).contains("\"state\":\"RUNNING\"");
      long before = change();
      String note = "{\"revision\":1,\"note\":\"meanwhile\"}";
      assertThat(board.post("/api/versions", note).statusCode()).isEqualTo(200);
      long putBy = change();
      assertThat(putBy).isEqualTo(before + 1);
      String told = "";
      while (!told.endsWith(",\"change\":" + putBy + "}")) {
        told = tab.next("board");
      }
      assertThat(board.post("/api/versions/1/publish", "{}").statusCode()).isEqualTo(200);
      assertThat(change()).isEqualTo(putBy + 1);
      assertThat(tab.next("board"))
          .isEqualTo("data: {\"revision\":1,\"change\":" + (putBy + 1) + "}");
      board.post("/api/search/stop", "{}");
    }
  }

  private long change() {
    return json(board.get("/api/board")).path("change").asLong();
  }

  @Test
  void aTabThatIsBehindIsToldWhatItMissed() {
    String stale = board.move(1);
    assertThat(board.post("/api/keep", board.move(1)).statusCode()).isEqualTo(200);
    HttpResponse<byte[]> answer = board.post("/api/keep", stale);
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(json(answer).path("revision").asLong()).isEqualTo(2);
    assertThat(json(answer).path("since")).hasSize(1);
    assertThat(json(answer).path("since").get(0).asText()).startsWith("Move ");
    assertThat(board.revision()).isEqualTo(2);
    assertThat(board.post("/api/try", stale).statusCode()).isEqualTo(409);
    assertThat(board.post("/api/undo", "{\"revision\":1}").statusCode()).isEqualTo(409);
  }

  private void awaitNoStreams() throws InterruptedException {
    while (board.server.streams() > 0) {
      Thread.sleep(20);
    }
  }

  /**
   * The server once handed the failure of the dead line to its own answer again, without an end.
   */
  @Test
  void worksNoLongerForATabThatWent() throws Exception {
    for (int i = 0; i < 3; i++) {
      try (Tab tab = new Tab()) {
        tab.next("board");
      }
    }
    while (board.server.streams() > 0) {
      board.desk.putBy(board.desk.now().revision(), "so that the streams notice");
      Thread.sleep(50);
    }
    Thread.sleep(200);
    long before = nanosOfStreams();
    Thread.sleep(1_000);
    assertThat(nanosOfStreams() - before).as("processor time in a second").isLessThan(300_000_000L);
  }

  private static long nanosOfStreams() {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    return Arrays.stream(threads.getThreadInfo(threads.getAllThreadIds()))
        .filter(one -> one != null && one.getThreadName().startsWith("JavalinDefaultAsync"))
        .mapToLong(one -> Math.max(0, threads.getThreadCpuTime(one.getThreadId())))
        .sum();
  }
}
