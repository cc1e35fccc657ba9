package rigmorrow.app.board.make;

import rigmorrow.app.board.desk.SearchProgress;
import rigmorrow.app.board.view.SearchView;
import rigmorrow.app.board.view.SearchView.MomentView;

/** How a search stands, for the page. */
public final class Searches {
  private Searches() {}

  /** The view of a search. */
  public static SearchView of(SearchProgress progress) {
    return new SearchView(
        progress.state().name(),
        progress.sentence(),
        progress.limitSeconds(),
        progress.elapsedMillis(),
        progress.course().stream()
            .map(
                moment ->
                    new MomentView(
                        moment.millis(),
                        moment.figures().hard(),
                        moment.figures().leftOutPoints(),
                        moment.figures().softPoints()))
            .toList());
  }
}
