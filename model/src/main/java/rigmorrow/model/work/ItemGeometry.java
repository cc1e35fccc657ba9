package rigmorrow.model.work;

import rigmorrow.model.shot.Item;

/**
 * Lengths that follow from an item's measurements. All need a measured item.
 *
 * @param standingDiagonalMm diagonal of the base that stands on the plate, 0 for what hangs free
 * @param sweptDiameterMm circle the whole item needs when it turns: the given rotation diameter, or
 *     the diagonal in plan plus twice the given offset
 * @param halfBaseMm half the narrower side of the base
 * @param centreOfMassMm height of the centre of mass above the plate
 */
public record ItemGeometry(
    double standingDiagonalMm, double sweptDiameterMm, double halfBaseMm, double centreOfMassMm) {
  /**
   * @throws IllegalArgumentException when the item is not measured
   */
  public static ItemGeometry of(Item item) {
    Integer length = item.lengthMm();
    Integer width = item.widthMm();
    Integer height = item.heightMm();
    if (length == null || width == null || height == null) {
      throw new IllegalArgumentException("item without length, width or height");
    }
    double baseLength = item.baseLengthMm() == null ? length : item.baseLengthMm();
    double baseWidth = item.baseWidthMm() == null ? width : item.baseWidthMm();
    double offset = item.offsetMm() == null ? 0 : item.offsetMm();
    double swept =
        item.rotationDiameterMm() == null
            ? Math.hypot(length, width) + 2 * offset
            : item.rotationDiameterMm();
    double centre =
        item.centreOfMassHeightMm() == null ? height / 2.0 : item.centreOfMassHeightMm();
    return new ItemGeometry(
        item.hangsFree() ? 0 : Math.hypot(baseLength, baseWidth),
        swept,
        Math.min(baseLength, baseWidth) / 2,
        centre);
  }

  /**
   * True when a centre of mass so far off the plate's centre lies outside of a base that stands in
   * the middle of the plate. A body that stands free tips when the vertical through its centre of
   * mass leaves its base of support (statics, in any textbook of mechanics). Where the base stands
   * is not known, nor which way the centre of mass is off: so it may tip, and the narrower side
   * counts. One that is set down off the middle, its base below its centre of mass, does not.
   *
   * @param offsetMm from the plate's centre, level, as in {@link Item#offsetMm}; 0 or more
   */
  public boolean mayTipAt(double offsetMm) {
    return offsetMm > halfBaseMm;
  }
}
