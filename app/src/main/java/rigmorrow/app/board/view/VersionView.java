package rigmorrow.app.board.view;

import java.util.List;

/**
 * A plan that was put by.
 *
 * @param number 1 for the first
 * @param note what the planner wrote
 * @param at when, in floor time with offset
 * @param stamp what its papers say of it
 * @param published true for the one that the crew works from
 */
public record VersionView(
    int number, String note, String at, String stamp, boolean published, FiguresView figures) {

  /**
   * How two versions differ.
   *
   * @param costs what is better or worse in the second, in sentences with figures
   * @param moves what is otherwise with each job: its place and time, promise, weight and pin
   */
  public record DifferenceView(
      FiguresView before, FiguresView after, List<String> costs, List<MoveView> moves) {}

  /**
   * A job with which something is otherwise.
   *
   * @param group what happens to it, in words, alike for all to which the same happens
   * @param sentence one or more, with what was before and what is after
   */
  public record MoveView(String job, String name, String group, String sentence) {}
}
