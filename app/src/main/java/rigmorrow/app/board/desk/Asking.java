package rigmorrow.app.board.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Trouble;
import rigmorrow.solver.explain.Explainer;

/** Answers questions about the plan there is. Remembers what was worked out for it. */
final class Asking {
  private @Nullable Explainer explainer;
  private long revision;

  synchronized Explanation explain(BoardState now, String job) {
    return of(now).explain(job);
  }

  synchronized List<Trouble> troubles(BoardState now) {
    return of(now).troubles();
  }

  private Explainer of(BoardState now) {
    Explainer known = explainer;
    if (known != null && revision == now.revision()) {
      return known;
    }
    Explainer made = new Explainer(now.batch(), now.plan());
    explainer = made;
    revision = now.revision();
    return made;
  }
}
