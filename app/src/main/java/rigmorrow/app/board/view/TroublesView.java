package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Jobs that are late or left out.
 *
 * @param revision of the plan that the answer is about
 */
public record TroublesView(long revision, List<TroubleView> troubles) {

  /**
   * One of them.
   *
   * @param sentence how it stands and what would help it, what can be done at once first
   * @param rig id of the rig to move it to; null when none was found that helps
   * @param place on that rig, 0 for the first; null with rig
   */
  public record TroubleView(
      String job, String name, String sentence, @Nullable String rig, @Nullable Integer place) {}
}
