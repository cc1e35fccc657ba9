package rigmorrow.app.runsheet.chart;

import java.util.List;

/**
 * A day as bars under an axis of hours, one lane for each kind of time. Kinds are told apart by
 * lane, by the words beside it and by pattern, never by colour.
 *
 * @param days in order; days without anything are left out
 */
public record DayChart(List<Day> days) {
  /** Width of the lanes' view box; a millimetre on paper has ten units. */
  static final int WIDTH = 1650;

  /** Height of a lane's view box. */
  static final int LANE_HEIGHT = 24;

  /**
   * One day.
   *
   * @param title the date; empty where the plan has one day only
   * @param spoken what the chart shows, for those who do not see it
   */
  public record Day(
      String title, String spoken, List<Mark> hours, List<Mark> numbers, List<Lane> lanes) {
    /** The place of the view box. */
    public String viewBox() {
      return "0 0 " + WIDTH + " " + LANE_HEIGHT;
    }
  }

  /**
   * A text over the lanes.
   *
   * @param left where it starts, such as 12.5%
   */
  public record Mark(String text, String left) {}

  /**
   * Bars of one kind.
   *
   * @param path their outline as SVG path data
   */
  public record Lane(String label, String path) {}
}
