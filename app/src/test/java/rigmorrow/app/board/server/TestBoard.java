package rigmorrow.app.board.server;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.whatif.ComparisonDesk;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.shot.Batch;

/** A board of a small invented day with a visitor, in this JVM. */
final class TestBoard implements AutoCloseable {
  static {
    // The guard looks at these, so the tests have to be able to send others.
    System.setProperty("jdk.httpclient.allowRestrictedHeaders", "host,content-length,connection");
  }

  /** A Tuesday. */
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-03T10:00:00Z"), ZoneOffset.UTC);

  static final LocalDate DAY = LocalDate.of(2026, 3, 4);

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  final Desk desk;
  final BoardServer server;
  final HttpClient client = HttpClient.newHttpClient();

  final ComparisonDesk comparisons;

  private TestBoard(
      Desk desk, ServerSettings settings, @Nullable DaySource days, Path comparisonFolder) {
    this.desk = desk;
    this.comparisons = new ComparisonDesk(days, comparisonFolder, desk.cores(), "rigmorrow test");
    this.server = BoardServer.start(desk, comparisons, settings, CLOCK, "rigmorrow test");
  }

  static TestBoard open(Path folder) {
    return open(folder, Demo.batch(12, 1, DAY), null);
  }

  static TestBoard open(Path folder, Batch batch, @Nullable String token) {
    return open(folder, batch, token, null);
  }

  static TestBoard open(
      Path folder, Batch batch, @Nullable String token, @Nullable DaySource days) {
    Desk desk = Desk.open(folder, batch, null, CLOCK);
    ServerSettings settings =
        new ServerSettings(ServerSettings.LOOPBACK, 0, token, Duration.ofMillis(100));
    return new TestBoard(desk, settings, days, folder.resolve("whatif"));
  }

  /** A request to be made up; a POST takes its body from it. */
  HttpRequest.Builder request(String path) {
    URI uri = URI.create("http://127.0.0.1:" + server.port() + path);
    return HttpRequest.newBuilder(uri).timeout(PATIENCE);
  }

  HttpResponse<byte[]> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  HttpResponse<byte[]> get(String path) {
    return send(request(path));
  }

  HttpResponse<byte[]> post(String path, String json) {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(json)));
  }

  HttpResponse<byte[]> drop(String name, byte[] file, String query) {
    return dropAt("/api/intake" + query, name, file);
  }

  HttpResponse<byte[]> dropAt(String path, String name, byte[] file) {
    return send(
        request(path)
            .header("Content-Type", "application/octet-stream")
            .header("X-File-Name", name)
            .POST(HttpRequest.BodyPublishers.ofByteArray(file)));
  }

  /** Waits for something that another thread does. */
  static void await(BooleanSupplier there) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!there.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("it did not come");
      }
      Thread.sleep(20);
    }
  }

  long revision() {
    return desk.now().revision();
  }

  /** A wish to move a planned job to the first place of its own rig. */
  String move(long revision) {
    var rig = desk.now().plan().rigs().stream().filter(one -> one.jobs().size() > 1).findFirst();
    var plan = rig.orElseThrow();
    String job = plan.jobs().get(plan.jobs().size() - 1).job();
    return touch(revision, "MOVE", job, ",\"rig\":\"" + plan.rig() + "\",\"place\":0");
  }

  /**
   * A touch.
   *
   * @param more of its fields, each behind a comma
   */
  static String touch(long revision, String kind, String job, String more) {
    String touch = "{\"kind\":\"" + kind + "\",\"job\":" + text(job) + more + "}";
    return "{\"revision\":" + revision + ",\"touch\":" + touch + "}";
  }

  static String text(String value) {
    return MAPPER.valueToTree(value).toString();
  }

  static JsonNode json(HttpResponse<byte[]> response) {
    try {
      return MAPPER.readTree(response.body());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String message(HttpResponse<byte[]> response) {
    return json(response).path("message").asText();
  }

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  @Override
  public void close() {
    server.close();
    comparisons.close();
    desk.close();
  }
}
