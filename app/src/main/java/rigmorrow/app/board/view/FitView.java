package rigmorrow.app.board.view;

import java.util.List;

/**
 * The fit check as a table of jobs and rigs.
 *
 * @param rigs columns, by id and name
 */
public record FitView(List<FitRigView> rigs, List<FitJobView> jobs) {

  /** A column. */
  public record FitRigView(String id, String name) {}

  /**
   * A row.
   *
   * @param unmeasured fields that must be measured first
   * @param cells one for each rig, in order; empty when it is not measured
   */
  public record FitJobView(
      String job,
      String name,
      boolean fitsSomewhere,
      boolean estimated,
      List<String> unmeasured,
      List<FitCellView> cells) {}

  /**
   * What a rig says.
   *
   * @param reasons why not, with figures; empty when it fits
   */
  public record FitCellView(boolean fits, List<String> reasons) {}
}
