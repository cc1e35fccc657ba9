package rigmorrow.app.board.view;

import java.util.List;

/**
 * Jobs that are late or left out.
 *
 * @param revision of the plan that the answer is about
 */
public record TroublesView(long revision, List<TroubleView> troubles) {

  /**
   * One of them.
   *
   * @param sentence how it stands and what would help it
   */
  public record TroubleView(String job, String name, String sentence) {}
}
