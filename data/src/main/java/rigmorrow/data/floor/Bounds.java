package rigmorrow.data.floor;

import rigmorrow.data.json.Range;

/** Bounds of figures in floor files. Upper bounds are there to catch slips in the unit. */
final class Bounds {
  /** A week. */
  static final Range SECONDS = Range.of(0, 604_800);

  static final Range SIZE_MM = Range.of(1, 100_000);
  static final Range DISTANCE_MM = Range.of(0, 100_000);
  static final Range MASS_KG = Range.above(0, 10_000);
  static final Range SOME_MASS_KG = Range.of(0, 10_000);
  static final Range PEOPLE = Range.of(1, 2);
  static final Range ELEVATION_DEG = Range.of(0, 90);
  static final Range ANGLE_DEG = Range.of(0, 360);
  static final Range FACTOR = Range.above(0, 1_000);
  static final Range RATE = Range.above(0, 1_000_000_000);
  static final Range COUNT = Range.of(1, 1_000_000_000);
  static final Range MONEY = Range.of(0, 1_000_000_000);
  static final Range POINTS = Range.of(0, 1_000_000);

  static final int MOST_RIGS = 200;

  /** Operators and kits are planned as bits of one whole number each. */
  static final int MOST_OPERATORS = 31;

  /** See {@link #MOST_OPERATORS}. */
  static final int MOST_KITS = 31;

  private Bounds() {}
}
