package rigmorrow.app.board.route;

import io.javalin.http.Context;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import rigmorrow.app.board.api.Exchange;
import rigmorrow.app.board.api.Parameter;
import rigmorrow.app.board.api.Refusal;
import rigmorrow.app.board.api.Requests.NoteRequest;
import rigmorrow.app.board.api.Requests.NothingRequest;
import rigmorrow.app.board.api.Requests.RevisionRequest;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.BoardState.Handed;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.desk.Version;
import rigmorrow.app.board.make.Differences;
import rigmorrow.app.board.make.Figures;
import rigmorrow.app.board.view.BoardView;
import rigmorrow.app.board.view.FiguresView;
import rigmorrow.app.board.view.VersionView;
import rigmorrow.app.board.view.VersionView.DifferenceView;
import rigmorrow.app.board.view.VersionsView;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Plan;

/** Plans that were put by: list, put by, publish, bring back, compare. */
public final class VersionRoutes {
  private static final int LONGEST_NOTE = 1000;

  private static final Parameter NUMBER = Parameter.path("n", "number of the version, from 1");

  private final Desk desk;
  private final Shown shown;
  private final Map<Integer, Seen> seen = new ConcurrentHashMap<>();

  /**
   * What was seen of a version. A version stays what it is, so that it is decoded once.
   *
   * @param change of the board when it was looked at
   * @param whole false while its plan's bounds may still be found
   */
  private record Seen(long change, boolean whole, String at, String mark, FiguresView figures) {}

  /**
   * @param desk with the plans
   * @param shown the one there is, for the page
   */
  public VersionRoutes(Desk desk, Shown shown) {
    this.desk = desk;
    this.shown = shown;
  }

  /** Every route. */
  public List<Route> all() {
    return List.of(
        Route.get("/api/versions", "Plans that were put by.", VersionsView.class, this::versions),
        Route.post(
            "/api/versions",
            "Put the plan by with a note.",
            NoteRequest.class,
            VersionView.class,
            this::putBy),
        Route.get(
                "/api/versions/compare",
                "How two plans differ.",
                DifferenceView.class,
                this::compare)
            .with(
                Parameter.neededQuery("before", "number of a version; 0 for the plan there is"),
                Parameter.neededQuery("after", "number of a version; 0 for the plan there is")),
        Route.post(
                "/api/versions/{n}/publish",
                "Give a version to the crew.",
                NothingRequest.class,
                VersionView.class,
                this::publish)
            .with(NUMBER),
        Route.post(
                "/api/versions/{n}/restore",
                "Bring a version back; that can be undone.",
                RevisionRequest.class,
                BoardView.class,
                this::restore)
            .with(NUMBER));
  }

  /**
   * The plan of a version that a request names, with what its papers say of it.
   *
   * @param number 0 for the plan there is
   * @throws Refusal when there is none
   */
  static Handed handed(Desk desk, int number) {
    requireKnown(desk, number);
    return desk.handed(number);
  }

  private static void requireKnown(Desk desk, int number) {
    if (number != 0 && desk.versions().stream().noneMatch(one -> one.number() == number)) {
      throw Refusal.unknown("There is no version " + number + ".");
    }
  }

  private void versions(Context context) {
    Exchange.answer(context, new VersionsView(desk.versions().stream().map(this::view).toList()));
  }

  private void putBy(Context context) {
    NoteRequest wish = Exchange.body(context, NoteRequest.class);
    if (wish.note().length() > LONGEST_NOTE) {
      throw Refusal.malformed(
          "The note has %d letters; accepted: at most %d."
              .formatted(wish.note().length(), LONGEST_NOTE));
    }
    Exchange.answer(context, view(desk.putBy(wish.revision(), wish.note().strip())));
  }

  private void compare(Context context) {
    int before = number(context, "before");
    int after = number(context, "after");
    requireKnown(desk, before);
    requireKnown(desk, after);
    Exchange.answer(context, Differences.of(desk.kept(before), desk.kept(after)));
  }

  private void publish(Context context) {
    Exchange.body(context, NothingRequest.class);
    int number = Exchange.number("The version", context.pathParam("n"));
    if (number == 0) {
      throw Refusal.unknown("There is no version 0: put the plan by first.");
    }
    requireKnown(desk, number);
    desk.publish(number);
    Exchange.answer(
        context,
        desk.versions().stream()
            .filter(version -> version.number() == number)
            .map(this::view)
            .findFirst()
            .orElseThrow());
  }

  private void restore(Context context) {
    RevisionRequest wish = Exchange.body(context, RevisionRequest.class);
    int number = Exchange.number("The version", context.pathParam("n"));
    if (number == 0) {
      throw Refusal.unknown("There is no version 0 to bring back.");
    }
    requireKnown(desk, number);
    desk.restore(wish.revision(), number);
    Exchange.answer(context, shown.board());
  }

  private static int number(Context context, String name) {
    String text = context.queryParam(name);
    return Exchange.number(name, Objects.requireNonNullElse(text, ""));
  }

  private VersionView view(Version version) {
    long change = desk.glance().change();
    Seen known = seen.get(version.number());
    if (known == null || (!known.whole() && known.change() != change)) {
      known = look(version, change);
      seen.put(version.number(), known);
    }
    return new VersionView(
        version.number(),
        version.note(),
        known.at(),
        PlanStamp.ofVersion(
                version.number(),
                version.note(),
                version.at(),
                desk.now().batch().floor().zone(),
                published(),
                known.mark())
            .whole(),
        version.published(),
        known.figures());
  }

  private int published() {
    return desk.versions().stream()
        .filter(Version::published)
        .mapToInt(Version::number)
        .findFirst()
        .orElse(0);
  }

  private Seen look(Version version, long change) {
    BoardState state = desk.state(version.number());
    Plan plan = state.plan();
    String at =
        version
            .at()
            .truncatedTo(ChronoUnit.SECONDS)
            .atZone(state.batch().floor().zone())
            .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    boolean whole = plan.bounds() != null || plan.figures().hard() > 0;
    String mark = PlanStamp.mark(state.batch(), plan);
    return new Seen(change, whole, at, mark, Figures.of(state.batch(), plan));
  }
}
