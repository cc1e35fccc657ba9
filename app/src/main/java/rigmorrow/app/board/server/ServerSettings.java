package rigmorrow.app.board.server;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * Where the board listens and who may come in.
 *
 * @param host name or address to listen on
 * @param port 0 for any that is free
 * @param token that every visitor must have; null for none, which only a host of this machine alone
 *     may have
 * @param keepAlive how long a stream of events may be silent
 */
public record ServerSettings(String host, int port, @Nullable String token, Duration keepAlive) {
  /** Where it listens when nothing else is asked for: this machine only. */
  public static final String LOOPBACK = "127.0.0.1";

  /** The usual port. */
  public static final int USUAL_PORT = 8017;

  private static final int LAST_PORT = 65_535;
  private static final int SHORTEST_TOKEN = 16;
  private static final Duration USUAL_KEEP_ALIVE = Duration.ofSeconds(15);

  public ServerSettings {
    Require.text("host", host);
    Require.that(port >= 0 && port <= LAST_PORT, "port", port, "0 to " + LAST_PORT);
    Require.that(
        token != null || loopback(host), "token", "none", "a token for any host but this machine");
    Require.that(
        token == null || token.matches("[A-Za-z0-9_-]{" + SHORTEST_TOKEN + ",200}"),
        "token",
        "another",
        SHORTEST_TOKEN + " to 200 letters, digits, - and _");
  }

  /** With the usual pause between signs of life. */
  public ServerSettings(String host, int port, @Nullable String token) {
    this(host, port, token, USUAL_KEEP_ALIVE);
  }

  /** True for names and addresses that only this machine can reach. */
  public static boolean loopback(String host) {
    return host.equals("localhost")
        || host.equals("::1")
        || host.matches("127\\.\\d{1,3}\\.\\d{1,3}\\.\\d{1,3}");
  }
}
