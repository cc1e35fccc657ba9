package rigmorrow.app.board.make;

import java.util.List;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Tried;
import rigmorrow.app.board.view.TriedView;
import rigmorrow.app.explain.CostChanges;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/** What a touch would come to, for the page. */
public final class Trials {
  private Trials() {}

  /** The view of a touch that was tried. */
  public static TriedView of(Tried tried) {
    BoardState before = tried.before();
    Plan after = tried.after();
    Batch batch = tried.batchAfter();
    Cost cost = tried.costAfter();
    if (after == null || batch == null || cost == null) {
      return new TriedView(
          before.revision(),
          false,
          tried.refusals(),
          tried.sentence(),
          Figures.of(before.batch(), before.plan()),
          null,
          List.of(),
          Standing.EQUAL.name(),
          List.of(),
          List.of(),
          leftOut(before.plan()));
    }
    return new TriedView(
        before.revision(),
        true,
        List.of(),
        tried.sentence(),
        Figures.of(before.batch(), before.plan()),
        Figures.of(batch, after),
        CostChanges.of(tried.costBefore(), cost, before.plan(), after, batch),
        cost.against(tried.costBefore()).name(),
        Breaches.of(tried.breaches()),
        new Placings(batch).changed(before.plan(), after),
        leftOut(after));
  }

  private static List<String> leftOut(Plan plan) {
    return plan.leftOut().stream().map(LeftOut::job).toList();
  }
}
