package rigmorrow.app.board.view;

import java.util.List;

/**
 * A search that runs, or the last one.
 *
 * @param state NONE, RUNNING, KEPT, NO_BETTER, FAILED
 * @param sentence how it stands, in words
 * @param limitSeconds time it was given
 * @param elapsedMillis time it has had
 * @param course best plan over time, oldest first
 */
public record SearchView(
    String state, String sentence, int limitSeconds, long elapsedMillis, List<MomentView> course) {

  /** A better plan was found. */
  public record MomentView(long millis, long hard, long leftOutPoints, long softPoints) {}
}
