package rigmorrow.app.board.route;

import io.javalin.http.Context;
import java.time.Clock;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigmorrow.app.board.api.Answer;
import rigmorrow.app.board.api.Exchange;
import rigmorrow.app.board.api.Parameter;
import rigmorrow.app.board.api.Refusal;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.desk.BoardState.Handed;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.handout.HandOut;
import rigmorrow.app.board.handout.PlanChart;

/** Files to take away: run sheets, tables, calendars, labels, a chart. */
public final class HandOutRoutes {
  /** Our own documents bring their style with them, and no script. */
  static final String DOCUMENT_POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
          + " form-action 'none'; frame-ancestors 'none'";

  private final Desk desk;
  private final Clock clock;

  /**
   * @param desk with the plans
   * @param clock tells when a calendar was made
   */
  public HandOutRoutes(Desk desk, Clock clock) {
    this.desk = desk;
    this.clock = clock;
  }

  /** Every route. */
  public List<Route> all() {
    String names =
        Stream.of(HandOut.values()).map(HandOut::fileName).collect(Collectors.joining(", "));
    List<Answer> files =
        Stream.of(HandOut.values())
            .map(HandOut::contentType)
            .distinct()
            .map(kind -> Answer.of(kind, "The file."))
            .toList();
    return List.of(
        new Route(
            Route.Method.GET,
            "/api/hand-out/{name}",
            "A file made of a plan.",
            List.of(
                Parameter.path("name", "one of " + names),
                Parameter.query("version", "number of a version; 0 for the plan there is")),
            Route.Body.NONE,
            files,
            this::handOut),
        new Route(
            Route.Method.GET,
            "/api/chart.svg",
            "The whole plan as a drawing, for print.",
            List.of(
                Parameter.query("by", "rig or crew; rig where it is left out"),
                Parameter.query("version", "number of a version; 0 for the plan there is")),
            Route.Body.NONE,
            List.of(Answer.of("image/svg+xml", "The drawing.")),
            this::chart));
  }

  private void handOut(Context context) {
    HandOut file =
        HandOut.of(context.pathParam("name"))
            .orElseThrow(() -> Refusal.unknown("There is no such file to hand out."));
    int version = version(context);
    Handed handed = VersionRoutes.handed(desk, version);
    byte[] bytes = file.bytes(handed, clock.instant());
    String how = file.shown() ? "inline" : "attachment";
    context.header(
        "Content-Disposition",
        how + "; filename=\"" + file.savedAs(handed.state(), version) + "\"");
    context.header("Content-Security-Policy", DOCUMENT_POLICY);
    boolean text = file.contentType().startsWith("text/");
    context.contentType(file.contentType() + (text ? "; charset=utf-8" : "")).result(bytes);
  }

  private void chart(Context context) {
    String by = context.queryParam("by");
    if (by != null && !by.equals("rig") && !by.equals("crew")) {
      throw Refusal.malformed("by is another word; accepted: rig or crew.");
    }
    String drawing =
        new PlanChart(VersionRoutes.handed(desk, version(context))).svg("crew".equals(by));
    context.header("Content-Security-Policy", DOCUMENT_POLICY);
    context.contentType("image/svg+xml").result(drawing);
  }

  private static int version(Context context) {
    String text = context.queryParam("version");
    return text == null || text.isEmpty() ? 0 : Exchange.number("version", text);
  }
}
