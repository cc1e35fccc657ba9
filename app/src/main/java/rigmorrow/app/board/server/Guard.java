package rigmorrow.app.board.server;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.api.Refusal;

/** Looks at every request before anything else does, and refuses what is not ours. */
final class Guard implements Handler {
  private static final String POLICY =
      "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " object-src 'none'; base-uri 'none'; frame-ancestors 'none'; form-action 'self'";

  private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST");
  private static final String API = "/api/";

  /** Nothing below it has to do with files, and a job may be called anything. */
  private static final String JOBS = "/api/jobs/";

  /** What climbs out of a folder, and what hides it. */
  private static final Pattern CLIMBING =
      Pattern.compile(
          "(^|/|%2f)(\\.|%2e){1,2}($|/|%2f)|//|\\\\|%5c|%00|;", Pattern.CASE_INSENSITIVE);

  private static final Pattern BROKEN_CODE = Pattern.compile("%(?![0-9a-fA-F]{2})");

  private final Hosts hosts;
  private final Tokens tokens;

  Guard(Hosts hosts, Tokens tokens) {
    this.hosts = hosts;
    this.tokens = tokens;
  }

  @Override
  public void handle(Context context) {
    addHeaders(context);
    refuseMethods(context);
    refusePaths(context);
    refuseHosts(context);
    refuseStrangers(context);
    refuseOtherSites(context);
  }

  private static void addHeaders(Context context) {
    context.header("Content-Security-Policy", POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("X-Frame-Options", "DENY");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header("Cross-Origin-Opener-Policy", "same-origin");
    context.header("Cache-Control", "no-store");
  }

  private static void refuseMethods(Context context) {
    if (!METHODS.contains(context.req().getMethod())) {
      context.header("Allow", "GET, HEAD, POST");
      throw Refusal.of(
          405, context.req().getMethod() + " is not done here; accepted: GET or POST.");
    }
  }

  private static void refusePaths(Context context) {
    String path = context.path();
    boolean climbing = !path.startsWith(JOBS) && CLIMBING.matcher(path).find();
    if (climbing || BROKEN_CODE.matcher(path).find()) {
      throw Refusal.malformed("The address holds a path that leads elsewhere.");
    }
  }

  private void refuseHosts(Context context) {
    String host = context.header("Host");
    if (host == null || !hosts.ours(host, context.req().getLocalPort())) {
      throw Refusal.of(403, "The board is not called that; open the address that was printed.");
    }
  }

  private void refuseStrangers(Context context) {
    boolean opening = context.path().equals("/") && tokens.right(context.queryParam("token"));
    if (!opening && !tokens.has(context)) {
      throw Refusal.of(401, "A token is needed; open the address that was printed, token and all.");
    }
  }

  /** A page of another site may send us requests, but its browser says where they come from. */
  private static void refuseOtherSites(Context context) {
    boolean post = context.req().getMethod().equals("POST");
    if (!post && !context.path().startsWith(API)) {
      return;
    }
    String origin = context.header("Origin");
    if (origin != null && !origin.equals("http://" + context.header("Host"))) {
      throw foreign();
    }
    if (!ofOurPage(context.header("Sec-Fetch-Site"), post)) {
      throw foreign();
    }
  }

  /** Programs other than browsers do not send the header, and no site can make them ask us. */
  private static boolean ofOurPage(@Nullable String site, boolean post) {
    return site == null || site.equals("same-origin") || (!post && site.equals("none"));
  }

  private static Refusal foreign() {
    return Refusal.of(403, "The request comes from another site.");
  }
}
