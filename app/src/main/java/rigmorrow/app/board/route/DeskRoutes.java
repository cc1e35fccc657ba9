package rigmorrow.app.board.route;

import io.javalin.http.Context;
import java.util.List;
import rigmorrow.app.board.api.Answer;
import rigmorrow.app.board.api.Exchange;
import rigmorrow.app.board.api.Parameter;
import rigmorrow.app.board.api.Refusal;
import rigmorrow.app.board.api.Requests.NothingRequest;
import rigmorrow.app.board.api.Requests.RevisionRequest;
import rigmorrow.app.board.api.Requests.SearchRequest;
import rigmorrow.app.board.api.Requests.TouchRequest;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.make.Searches;
import rigmorrow.app.board.make.Trials;
import rigmorrow.app.board.make.Whys;
import rigmorrow.app.board.view.BoardView;
import rigmorrow.app.board.view.FitView;
import rigmorrow.app.board.view.SearchView;
import rigmorrow.app.board.view.TriedView;
import rigmorrow.app.board.view.TroublesView;
import rigmorrow.app.board.view.WhyView;
import rigmorrow.solver.SolverSettings;

/** The plan: see it, touch it, search, ask why. */
public final class DeskRoutes {
  private static final int MOST_SEARCH_SECONDS = 3600;
  private static final int BEGUN = 202;

  private final Desk desk;
  private final Shown shown;

  /**
   * @param desk with the plan
   * @param shown the same for the page
   */
  public DeskRoutes(Desk desk, Shown shown) {
    this.desk = desk;
    this.shown = shown;
  }

  /** Every route. */
  public List<Route> all() {
    return List.of(
        Route.get("/api/board", "The plan there is.", BoardView.class, this::board),
        Route.get("/api/fit", "The fit check of every job.", FitView.class, this::fit),
        Route.post(
            "/api/try",
            "What a touch would come to; nothing is kept.",
            TouchRequest.class,
            TriedView.class,
            this::attempt),
        Route.post("/api/keep", "Do a touch.", TouchRequest.class, BoardView.class, this::keep),
        Route.post(
            "/api/undo",
            "Take back what was done last.",
            RevisionRequest.class,
            BoardView.class,
            this::undo),
        Route.post(
            "/api/redo",
            "Do again what was taken back last.",
            RevisionRequest.class,
            BoardView.class,
            this::redo),
        Route.post(
                "/api/search",
                "Plan again around the pins.",
                SearchRequest.class,
                SearchView.class,
                this::search)
            .answering(Answer.begun(SearchView.class, "The search has begun.")),
        Route.get(
            "/api/search",
            "How the search stands, or how the last one ended.",
            SearchView.class,
            this::progress),
        Route.post(
            "/api/search/stop",
            "End the search with the best plan so far.",
            NothingRequest.class,
            SearchView.class,
            this::stop),
        Route.get("/api/jobs/{id}/why", "Why a job is where it is.", WhyView.class, this::why)
            .with(Parameter.path("id", "id of the job")),
        Route.get(
            "/api/troubles",
            "Every job that is late or left out.",
            TroublesView.class,
            this::troubles));
  }

  private void board(Context context) {
    Exchange.answer(context, shown.board());
  }

  private void fit(Context context) {
    Exchange.answer(context, shown.fit());
  }

  private void attempt(Context context) {
    TouchRequest wish = Exchange.body(context, TouchRequest.class);
    Exchange.answer(context, Trials.of(desk.attempt(wish.revision(), wish.touch())));
  }

  private void keep(Context context) {
    TouchRequest wish = Exchange.body(context, TouchRequest.class);
    desk.keep(wish.revision(), wish.touch());
    board(context);
  }

  private void undo(Context context) {
    desk.undo(Exchange.body(context, RevisionRequest.class).revision());
    board(context);
  }

  private void redo(Context context) {
    desk.redo(Exchange.body(context, RevisionRequest.class).revision());
    board(context);
  }

  private void search(Context context) {
    SearchRequest wish = Exchange.body(context, SearchRequest.class);
    if (wish.seconds() < 1 || wish.seconds() > MOST_SEARCH_SECONDS) {
      throw Refusal.malformed(
          "seconds is " + wish.seconds() + "; accepted: 1 to " + MOST_SEARCH_SECONDS + ".");
    }
    desk.search(wish.revision(), SolverSettings.seconds(wish.seconds(), wish.revision()));
    Exchange.answer(context, BEGUN, Searches.of(desk.progress()));
  }

  private void progress(Context context) {
    Exchange.answer(context, Searches.of(desk.progress()));
  }

  private void stop(Context context) {
    Exchange.body(context, NothingRequest.class);
    desk.stopSearch();
    progress(context);
  }

  private void why(Context context) {
    String job = context.pathParam("id");
    BoardState state = desk.now();
    if (state.batch().shotList().job(job).isEmpty()) {
      throw Refusal.unknown("There is no job '" + job + "' in the shot list.");
    }
    Exchange.answer(context, new Whys(state).of(desk.explain(state, job)));
  }

  private void troubles(Context context) {
    BoardState state = desk.now();
    Exchange.answer(context, new Whys(state).of(desk.troubles(state)));
  }
}
