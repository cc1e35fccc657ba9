package rigmorrow.app.board.make;

import java.util.List;
import rigmorrow.app.board.view.BoardView.BreachView;
import rigmorrow.model.plan.Breach;

/** Broken rules, for the page. */
public final class Breaches {
  private Breaches() {}

  /** The same rules in the same order. */
  public static List<BreachView> of(List<Breach> breaches) {
    return breaches.stream()
        .map(
            breach ->
                new BreachView(
                    breach.rule().name(), breach.where(), breach.amount(), breach.sentence()))
        .toList();
  }
}
