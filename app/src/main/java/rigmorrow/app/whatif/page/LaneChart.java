package rigmorrow.app.whatif.page;

import java.util.List;

/**
 * Lanes one below the other over an axis that goes across.
 *
 * @param title what it shows
 * @param spoken the same for those who do not see it
 * @param unit of the axis
 * @param axis its numbers
 * @param lanes from above
 */
public record LaneChart(
    String title, String spoken, String unit, List<Mark> axis, List<Lane> lanes) {
  /** Width of a lane's view box; a millimetre on paper has ten units. */
  public static final int WIDTH = 1060;

  /** Height of a lane's view box. */
  public static final int HEIGHT = 50;

  public LaneChart {
    axis = List.copyOf(axis);
    lanes = List.copyOf(lanes);
  }

  /** What of the drawing is seen. */
  public String viewBox() {
    return "0 0 " + WIDTH + " " + HEIGHT;
  }

  /**
   * One lane.
   *
   * @param label at its left
   * @param value in words at its right
   * @param layers of the drawing, from below
   */
  public record Lane(String label, String value, List<Layer> layers) {
    public Lane {
      layers = List.copyOf(layers);
    }
  }
}
