package rigmorrow.app.board.desk;

import java.util.List;
import rigmorrow.model.plan.PlanFigures;

/**
 * How far a search is, or how the last one ended.
 *
 * @param state how it stands
 * @param sentence the same in words with figures
 * @param limitSeconds time it was given; 0 when steps limit it
 * @param elapsedMillis time it has had
 * @param course figures of the best plan each time a better one was told, oldest first
 */
public record SearchProgress(
    State state, String sentence, int limitSeconds, long elapsedMillis, List<Moment> course) {
  /** Before any search. */
  public static final SearchProgress NONE =
      new SearchProgress(State.NONE, "No search has run.", 0, 0, List.of());

  public SearchProgress {
    course = List.copyOf(course);
  }

  /** How a search stands. */
  public enum State {
    /** There was none. */
    NONE,
    /** It goes on. */
    RUNNING,
    /** It ended, and its plan was kept. */
    KEPT,
    /** It ended and found nothing better than the plan there is, which stays. */
    NO_BETTER,
    /** It ended by a fault; the plan there is stays. */
    FAILED
  }

  /**
   * A better plan was found.
   *
   * @param millis since the search began
   * @param figures of the plan
   */
  public record Moment(long millis, PlanFigures figures) {}
}
