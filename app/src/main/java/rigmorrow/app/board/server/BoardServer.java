package rigmorrow.app.board.server;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import rigmorrow.app.board.api.Answer;
import rigmorrow.app.board.api.Exchange;
import rigmorrow.app.board.api.OpenApi;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.route.DeskRoutes;
import rigmorrow.app.board.route.HandOutRoutes;
import rigmorrow.app.board.route.IntakeRoutes;
import rigmorrow.app.board.route.Shown;
import rigmorrow.app.board.route.VersionRoutes;
import rigmorrow.app.board.route.WhatIfRoutes;
import rigmorrow.app.board.whatif.ComparisonDesk;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.problem.InputProblem;

/** The web server of a board. */
public final class BoardServer implements AutoCloseable {
  private static final String EVENTS = "/api/events";
  private static final int MOST_THREADS = 40;
  private static final int LEAST_THREADS = 4;

  private final Desk desk;
  private final Shown shown;
  private final ServerSettings settings;
  private final Tokens tokens;
  private final Events events;
  private final PageFiles page = PageFiles.read();
  private final List<Route> routes;
  private final Javalin server;

  private BoardServer(
      Desk desk, ComparisonDesk comparisons, ServerSettings settings, Clock clock, String version) {
    this.desk = desk;
    this.shown = new Shown(desk);
    this.settings = settings;
    this.tokens = new Tokens(settings.token());
    this.events = new Events(desk, comparisons, settings.keepAlive());
    this.routes = routes(comparisons, clock, version);
    this.server = Javalin.create(this::configure);
  }

  /**
   * Refuses what cannot be listened on, before anything is stored for a board that nobody could
   * open. Starting asks again: between the two another program may be quicker.
   *
   * @throws RefusedException when the port is taken or the host is not ours
   */
  public static void requireFree(ServerSettings settings) {
    try (ServerSocket probe = new ServerSocket()) {
      probe.setReuseAddress(true); // As the server does: a port that was just given up is free.
      probe.bind(new InetSocketAddress(settings.host(), settings.port()));
    } catch (IOException e) {
      throw taken(settings);
    }
  }

  private static RefusedException taken(ServerSettings settings) {
    String accepted = "another --port, or an address of this machine as --host";
    String where = Hosts.written(settings.host()) + ":" + settings.port();
    return new RefusedException(
        where + " cannot be listened on, something else may do so; accepted: " + accepted,
        List.of(new InputProblem("", "command line", "--port", where, accepted)));
  }

  /**
   * Starts a server.
   *
   * @param comparisons what the board compares; the caller closes it, as the desk
   * @param clock tells today, and when something is handed out
   * @param version of the program
   * @throws RefusedException when the port is taken or the host is not ours
   */
  public static BoardServer start(
      Desk desk, ComparisonDesk comparisons, ServerSettings settings, Clock clock, String version) {
    BoardServer board = new BoardServer(desk, comparisons, settings, clock, version);
    try {
      board.server.start(settings.host(), settings.port());
    } catch (JavalinBindException e) {
      throw taken(settings);
    }
    return board;
  }

  /** The port it listens on. */
  public int port() {
    return server.port();
  }

  /** The address to open, with the token where one is needed. */
  public String address() {
    String query = settings.token() == null ? "" : "?token=" + settings.token();
    return "http://" + Hosts.reachable(settings.host()) + ":" + port() + "/" + query;
  }

  /** Makes the first touches quick; goes on in the background. */
  public void warmUp() {
    new WarmUp(desk, shown).begin();
  }

  /** Everything that can be asked. */
  public List<Route> routes() {
    return routes;
  }

  /** How many streams of events are open. */
  public int streams() {
    return events.open();
  }

  /** Ends every stream and request. */
  @Override
  public void close() {
    events.close();
    server.stop();
  }

  private List<Route> routes(ComparisonDesk comparisons, Clock clock, String version) {
    List<Route> all = new ArrayList<>();
    all.addAll(new DeskRoutes(desk, shown).all());
    all.addAll(new VersionRoutes(desk, shown).all());
    all.addAll(new HandOutRoutes(desk, clock).all());
    all.addAll(new IntakeRoutes(desk, shown, clock).all());
    all.addAll(new WhatIfRoutes(comparisons).all());
    all.add(
        new Route(
            Route.Method.GET,
            EVENTS,
            "What changes, as it happens.",
            List.of(),
            Route.Body.NONE,
            List.of(
                Answer.of(
                    "text/event-stream",
                    "Events 'board' with revision and change of the board when the plan, its bounds or"
                        + " its versions changed;"
                        + " events 'search' with how a search stands;"
                        + " events 'whatif' with how far a comparison of scenarios is.")),
            events::stream));
    all.add(
        new Route(
            Route.Method.GET,
            "/api/openapi.json",
            "This description.",
            List.of(),
            Route.Body.NONE,
            List.of(Answer.of(Answer.JSON, "OpenAPI 3.1.")),
            context -> Exchange.answer(context, OpenApi.of(routes(), version))));
    return List.copyOf(all);
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.startupWatcherEnabled = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.prefer405over404 = true;
    config.router.ignoreTrailingSlashes = false;
    config.jetty.threadPool = new QueuedThreadPool(MOST_THREADS, LEAST_THREADS);
    Failures.register(config);
    config.routes.before(new Guard(Hosts.of(settings.host()), tokens));
    for (Route route : routes) {
      HandlerType type = route.method() == Route.Method.GET ? HandlerType.GET : HandlerType.POST;
      config.routes.addHttpHandler(type, route.path(), route.handler());
    }
    // The server would answer 200 for any address that takes GET.
    config.routes.addHttpHandler(HandlerType.HEAD, EVENTS, Events::head);
    config.routes.get("/", this::open);
    config.routes.get("/page/<name>", page::file);
  }

  /**
   * The page. Who comes with the token gets it to keep and is sent on by the page itself: a browser
   * does not send a strict cookie along when another site's link is redirected.
   */
  private void open(Context context) {
    if (context.queryParam("token") == null) {
      page.index(context);
      return;
    }
    tokens.give(context);
    context
        .contentType("text/html; charset=utf-8")
        .result(
            "<!doctype html><html lang=\"en\"><title>Rigmorrow</title>"
                + "<meta http-equiv=\"refresh\" content=\"0;url=/\">"
                + "<a href=\"/\">Go on to the board</a></html>");
  }
}
