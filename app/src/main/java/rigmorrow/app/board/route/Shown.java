package rigmorrow.app.board.route;

import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.make.BoardViews;
import rigmorrow.app.board.make.FitBook;
import rigmorrow.app.board.view.BoardView;
import rigmorrow.app.board.view.FitView;

/** The desk's plan as the page shows it. */
public final class Shown {
  private final Desk desk;
  private final FitBook fits = new FitBook();
  private final BoardViews views = new BoardViews(fits);

  /**
   * @param desk with the plan
   */
  public Shown(Desk desk) {
    this.desk = desk;
  }

  /** The whole board, of one revision: another tab may change it while it is asked part by part. */
  public BoardView board() {
    while (true) {
      BoardState state = desk.now();
      @Nullable String undo = desk.undoSentence();
      @Nullable String redo = desk.redoSentence();
      boolean searching = desk.searching();
      if (desk.now().revision() == state.revision()) {
        return views.of(
            state.revision(), state.batch(), state.plan(), state.breaches(), undo, redo, searching);
      }
    }
  }

  /** The fit check of every job. */
  public FitView fit() {
    return fits.view(desk.now().batch());
  }
}
