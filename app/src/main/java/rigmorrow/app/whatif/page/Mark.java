package rigmorrow.app.whatif.page;

/**
 * A text beside a drawing.
 *
 * @param text what it says
 * @param side that its place is counted from
 * @param part of the drawing's width or height, 0 to 1
 */
public record Mark(String text, Side side, double part) {
  /** Where places are counted from. */
  public enum Side {
    /** Along an axis that goes across. */
    LEFT,
    /** Along one that goes up. */
    TOP
  }

  /** Where it stands as a style sheet has it, such as {@code left: 12.50%}. */
  public String place() {
    return (side == Side.LEFT ? "left: " : "top: ") + Scale.percent(part);
  }
}
