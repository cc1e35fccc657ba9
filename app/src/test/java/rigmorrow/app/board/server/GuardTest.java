package rigmorrow.app.board.server;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigmorrow.app.board.server.TestBoard.json;
import static rigmorrow.app.board.server.TestBoard.message;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.demo.Demo;

/** Who may ask the board what. */
class GuardTest {
  private static final int MOST_TRIES = 20;

  private static final String TOKEN = "a-token-that-is-long-enough";

  @TempDir static Path folder;
  @TempDir static Path guarded;

  private static TestBoard board;
  private static TestBoard withToken;

  @BeforeAll
  static void open() {
    board = TestBoard.open(folder);
    withToken = TestBoard.open(guarded, Demo.batch(5, 1, TestBoard.DAY), TOKEN);
  }

  @AfterAll
  static void close() {
    board.close();
    withToken.close();
  }

  @Test
  void answersItsOwnPage() {
    assertThat(board.get("/api/board").statusCode()).isEqualTo(200);
    HttpRequest.Builder ours =
        wish("/api/undo").header("Origin", "http://127.0.0.1:" + board.server.port());
    assertThat(board.send(ours.header("Sec-Fetch-Site", "same-origin")).statusCode())
        .isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://evil.example",
        "https://127.0.0.1:%d",
        "http://127.0.0.1:1",
        "http://127.0.0.1",
        "http://localhost:%d",
        "null",
        ""
      })
  void refusesAWishFromAnotherOrigin(String origin) {
    long before = board.revision();
    HttpResponse<byte[]> answer =
        board.send(wish("/api/keep").header("Origin", origin.formatted(board.server.port())));
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(message(answer)).contains("another site");
    assertThat(board.revision()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cross-site", "same-site", "none"})
  void refusesAWishThatABrowserSaysIsOfAnotherPage(String site) {
    HttpResponse<byte[]> answer = board.send(wish("/api/undo").header("Sec-Fetch-Site", site));
    assertThat(answer.statusCode()).isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/whatif/scenarios",
        "/api/whatif/scenarios/add",
        "/api/whatif/scenarios/remove",
        "/api/whatif/estimate",
        "/api/whatif/compare",
        "/api/whatif/stop"
      })
  void refusesToCompareWhatAnotherSiteWants(String path) {
    HttpResponse<byte[]> answer = board.send(wish(path).header("Origin", "http://evil.example"));
    assertThat(answer.statusCode()).isEqualTo(403);
    HttpRequest.Builder stranger =
        withToken
            .request(path)
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString("{}"));
    assertThat(withToken.send(stranger).statusCode()).isEqualTo(401);
  }

  @Test
  void showsThePageToALinkButNotThePlan() {
    HttpRequest.Builder page = board.request("/").header("Sec-Fetch-Site", "cross-site");
    assertThat(board.send(page).statusCode()).isEqualTo(200);
    HttpRequest.Builder plan = board.request("/api/board").header("Sec-Fetch-Site", "cross-site");
    assertThat(board.send(plan).statusCode()).isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"evil.example:%d", "evil.example", "127.0.0.1", "127.0.0.1:1", "x@127.0.0.1:%d"})
  void refusesAnotherName(String host) {
    HttpRequest.Builder request =
        board.request("/api/board").header("Host", host.formatted(board.server.port()));
    HttpResponse<byte[]> answer = board.send(request);
    assertThat(answer.statusCode()).isIn(400, 403);
    assertThat(json(answer).has("message")).isTrue();
  }

  /** Browsers leave the usual port out, and an address of IPv6 is the same in any spelling. */
  @Test
  void knowsItsNamesInEverySpelling() {
    Hosts hosts = Hosts.of(ServerSettings.LOOPBACK);
    assertThat(List.of("localhost:8017", "LOCALHOST:8017", "127.0.0.1:8017", "[::1]:8017"))
        .allMatch(header -> hosts.ours(header, 8017));
    assertThat(List.of("[0:0:0:0:0:0:0:1]:8017", "[0000::0001]:8017"))
        .allMatch(header -> hosts.ours(header, 8017));
    assertThat(List.of("localhost", "127.0.0.1", "[::1]", "[0:0::1]", "localhost:80"))
        .allMatch(header -> hosts.ours(header, 80))
        .noneMatch(header -> hosts.ours(header, 8017));
    assertThat(List.of("[::2]", "[1.2.3.4]", "[::1", "::1", "localhost:", ":80", "", "[x]", "[]"))
        .noneMatch(header -> hosts.ours(header, 80));
    assertThat(Hosts.of("fd00:0:0::7").ours("[fd00::7]:9", 9)).isTrue();
    assertThat(Hosts.of("::1").ours("[fd00::7]:9", 9)).isFalse();
  }

  @Test
  void listensToThisMachineUnlessToldOtherwise() {
    assertThat(ServerSettings.loopback(ServerSettings.LOOPBACK)).isTrue();
    assertThat(ServerSettings.loopback("0.0.0.0")).isFalse();
    assertThat(ServerSettings.loopback("127.0.0.1.evil.example")).isFalse();
    assertThatThrownBy(() -> new ServerSettings("0.0.0.0", 0, null))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("token");
    assertThatThrownBy(() -> new ServerSettings("0.0.0.0", 0, "short"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/api/board",
        "/page/index.html",
        "/api/openapi.json",
        "/api/whatif",
        "/api/whatif/report",
        "/api/whatif/report/report.pdf",
        "/?token=another-that-is-long"
      })
  void refusesWhoeverHasNoToken(String path) {
    HttpResponse<byte[]> answer = withToken.get(path);
    assertThat(answer.statusCode()).isEqualTo(401);
    assertThat(message(answer)).contains("token");
  }

  @Test
  void letsInWhoeverHasTheToken() {
    HttpResponse<byte[]> opened = withToken.get("/?token=" + TOKEN);
    assertThat(opened.statusCode()).isEqualTo(200);
    String cookie = opened.headers().firstValue("Set-Cookie").orElseThrow();
    assertThat(cookie).contains("HttpOnly", "SameSite=Strict", "Path=/");
    HttpRequest.Builder next =
        withToken.request("/api/board").header("Cookie", cookie.split(";", 2)[0]);
    assertThat(withToken.send(next).statusCode()).isEqualTo(200);
    HttpRequest.Builder header =
        withToken.request("/api/board").header("Authorization", "Bearer " + TOKEN);
    assertThat(withToken.send(header).statusCode()).isEqualTo(200);
    HttpRequest.Builder wrong =
        withToken.request("/api/board").header("Authorization", "Bearer " + TOKEN + "x");
    assertThat(withToken.send(wrong).statusCode()).isEqualTo(401);
    assertThat(withToken.server.address()).endsWith("/?token=" + TOKEN);
  }

  @Test
  void makesTokensNobodyCanGuess() {
    assertThat(Tokens.made()).hasSizeGreaterThanOrEqualTo(32).isNotEqualTo(Tokens.made());
    assertThat(new ServerSettings("0.0.0.0", 0, Tokens.made()).token()).isNotNull();
  }

  @Test
  void refusesWhatIsTooLarge() {
    String large = "{\"revision\":1,\"touch\":\"" + "x".repeat(1_000_000) + "\"}";
    HttpResponse<byte[]> json = answered(() -> board.post("/api/keep", large));
    assertThat(json.statusCode()).isEqualTo(413);
    assertThat(message(json)).contains("at most 1000000 bytes");
    HttpResponse<byte[]> file =
        answered(() -> board.drop("list.csv", new byte[20 * 1024 * 1024 + 1], ""));
    assertThat(file.statusCode()).isEqualTo(413);
    HttpResponse<byte[]> scenarios =
        answered(() -> board.dropAt("/api/whatif/scenarios", "s.yaml", new byte[1_000_001]));
    assertThat(scenarios.statusCode()).isEqualTo(413);
  }

  /** The server hangs up on what is too large; a client that still writes may miss the answer. */
  private static HttpResponse<byte[]> answered(Supplier<HttpResponse<byte[]>> request) {
    for (int tries = 1; ; tries++) {
      try {
        return request.get();
      } catch (UncheckedIOException e) {
        if (tries == MOST_TRIES) {
          throw e;
        }
      }
    }
  }

  @Test
  void refusesWhatIsTooLargeWithoutSayingSo() {
    byte[] large = new byte[1_000_001];
    HttpRequest.Builder chunked =
        board
            .request("/api/keep")
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(large)));
    assertThat(answered(() -> board.send(chunked)).statusCode()).isEqualTo(413);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/page/../index.html",
        "/page/../../../../etc/passwd",
        "/page/%2e%2e/%2e%2e/etc/passwd",
        "/page/%2E%2E/x",
        "/page/..%2f..%2fetc%2fpasswd",
        "/page/.%2e/x",
        "/page//etc/passwd",
        "/page/%5c..%5cx",
        "/page/x%00.html",
        "/page/;/index.html",
        "/page/index.html;jsessionid=1",
        "/api/hand-out/..%2f..%2fetc%2fpasswd",
        "/api/hand-out/%2e%2e%2fplan.csv",
        "/api/intake/..%2f..%2fx/annotated",
        "/api/whatif/report/..%2fcells.csv",
        "/api/whatif/report/%2e%2e%2f%2e%2e%2fboard.sqlite",
        "/api/whatif/report/board.sqlite",
        "/..",
        "/%2e%2e/",
        "/api/jobs/%zz/why",
        "/page/file:%2f%2f%2fetc%2fpasswd",
        "/page/%2fetc%2fpasswd",
        "/page/",
        "/page/nothing.html",
        "/page/js",
        "/etc/passwd",
        "/WEB-INF/web.xml",
        "/rigmorrow/app/board/page/index.html"
      })
  void refusesAnAddressWithAPathInIt(String path) throws IOException {
    String answer =
        raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nConnection: close\r\n\r\n");
    assertThat(answer).containsPattern("^HTTP/1\\.1 40[04] ");
    assertThat(answer).contains("application/json", "\"message\":");
    assertThat(answer).doesNotContain("root:", "<html", "Exception", "\tat ");
  }

  @Test
  void answersWhatIsNoHttpInTheSameForm() throws IOException {
    String answer = raw("NONSENSE\r\n\r\n");
    assertThat(answer).contains(" 400 ", "\"message\":").doesNotContain("jetty", "Jetty", "<h");
    String long_ = raw("GET /" + "x".repeat(20_000) + " HTTP/1.1\r\nHost: 127.0.0.1:%d\r\n\r\n");
    assertThat(long_).contains(" 414 ", "\"message\":");
    String headers =
        raw("GET / HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nX: " + "x".repeat(20_000) + "\r\n\r\n");
    assertThat(headers).contains(" 431 ", "\"message\":");
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "FOO"})
  void refusesOtherMethods(String method) throws IOException {
    String answer =
        raw(method + " /api/board HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nConnection: close\r\n\r\n");
    assertThat(answer).containsPattern("^HTTP/1\\.1 40[05] ");
    assertThat(answer).doesNotContain("\"revision\":1,");
  }

  @Test
  void saysWhichMethodAnAddressTakes() {
    HttpResponse<byte[]> answer = board.get("/api/keep");
    assertThat(answer.statusCode()).isEqualTo(405);
    assertThat(answer.headers().firstValue("Allow")).contains("POST");
  }

  @Test
  void refusesABodyOfAnotherKind() {
    for (String kind :
        List.of("text/plain", "application/x-www-form-urlencoded", "multipart/form-data")) {
      HttpRequest.Builder request =
          board
              .request("/api/undo")
              .header("Content-Type", kind)
              .POST(BodyPublishers.ofString("{\"revision\":1}"));
      assertThat(board.send(request).statusCode()).isEqualTo(415);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "null",
        "{\"revision\":1}}",
        "{\"revision\":\"1\"}",
        "{\"revision\":1.5}",
        "{\"revision\":1,\"revision\":1}",
        "{\"revision\":1,\"other\":2}",
        "{\"revision\":99999999999999999999}",
        "{\"revision\":null}"
      })
  void refusesABodyThatIsNotAsDescribed(String body) {
    HttpResponse<byte[]> answer = board.post("/api/undo", body);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(message(answer)).startsWith("The body");
  }

  @Test
  void saysWhereABodyIsNotAsDescribed() {
    HttpResponse<byte[]> answer =
        board.post(
            "/api/try",
            "{\"revision\":1,\"touch\":{\"kind\":\"MOVE\",\"job\":\"J1\",\"rig\":\"R1\"}}");
    assertThat(message(answer)).contains("/touch", "'place'").doesNotContain("SWAP");
    String deep = "[".repeat(10_000);
    assertThat(board.post("/api/try", deep).statusCode()).isEqualTo(400);
  }

  @Test
  void keepsBrowsersFromDoingMoreThanThePageNeeds() {
    HttpResponse<byte[]> answer = board.get("/");
    String policy = answer.headers().firstValue("Content-Security-Policy").orElseThrow();
    assertThat(policy)
        .contains(
            "default-src 'self'", "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'")
        .contains("script-src 'self';")
        .doesNotContain("unsafe-eval");
    assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    assertThat(answer.headers().firstValue("Referrer-Policy")).contains("no-referrer");
    assertThat(answer.headers().firstValue("Server")).isEmpty();
    HttpResponse<byte[]> refused = board.get("/nothing");
    assertThat(refused.headers().firstValue("Content-Security-Policy")).isPresent();
  }

  @Test
  void sendsThePageCompressedAndOnlyWhenItChanged() {
    HttpRequest.Builder packed = board.request("/").header("Accept-Encoding", "gzip");
    HttpResponse<byte[]> page = board.send(packed);
    assertThat(page.headers().firstValue("Content-Encoding")).contains("gzip");
    String tag = board.get("/").headers().firstValue("ETag").orElseThrow();
    HttpRequest.Builder again = board.request("/").header("If-None-Match", tag);
    assertThat(board.send(again).statusCode()).isEqualTo(304);
  }

  @Test
  void saysWhenThePortIsTaken() {
    ServerSettings taken = new ServerSettings(ServerSettings.LOOPBACK, board.server.port(), null);
    assertThatThrownBy(
            () ->
                BoardServer.start(
                    board.desk, board.comparisons, taken, TestBoard.CLOCK, "rigmorrow test"))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("127.0.0.1:" + board.server.port())
        .hasMessageContaining("--port");
  }

  private static HttpRequest.Builder wish(String path) {
    String body =
        path.equals("/api/keep")
            ? board.move(board.revision())
            : "{\"revision\":" + board.revision() + "}";
    return board
        .request(path)
        .header("Content-Type", "application/json")
        .POST(BodyPublishers.ofString(body));
  }

  private static String raw(String request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", board.server.port())) {
      socket.setSoTimeout(20_000);
      OutputStream out = socket.getOutputStream();
      out.write(request.replace("%d", "" + board.server.port()).getBytes(UTF_8));
      out.flush();
      socket.shutdownOutput();
      return new String(socket.getInputStream().readAllBytes(), UTF_8);
    }
  }
}
