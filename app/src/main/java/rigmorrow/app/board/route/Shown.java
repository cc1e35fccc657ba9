package rigmorrow.app.board.route;

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

  /** The whole board, of one moment. */
  public BoardView board() {
    return views.of(desk.glance(), desk.searching());
  }

  /** The fit check of every job. */
  public FitView fit() {
    return fits.view(desk.now().batch());
  }
}
