package rigmorrow.solver;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import rigmorrow.model.plan.PlanFigures;

/** Is told of progress and may end the search. Called from the solver's threads, one at a time. */
public interface SolveListener {
  /** Wants to hear nothing and never stops. */
  SolveListener NONE = stoppedBy(() -> false);

  /** Wants to hear nothing and stops when it is told to. */
  static SolveListener stoppedBy(BooleanSupplier stop) {
    return new SolveListener() {
      @Override
      public void improved(Duration elapsed, PlanFigures figures) {}

      @Override
      public boolean stopRequested() {
        return stop.getAsBoolean();
      }
    };
  }

  /**
   * A better plan was found.
   *
   * @param elapsed since the search began
   * @param figures of the best plan so far
   */
  void improved(Duration elapsed, PlanFigures figures);

  /** Asked several times a second; true ends the search with the best plan so far. */
  boolean stopRequested();
}
