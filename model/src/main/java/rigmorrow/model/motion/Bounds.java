package rigmorrow.model.motion;

/**
 * Checks of numbers at the door of this package; every message gives name, value and what would be
 * accepted.
 */
final class Bounds {

  private Bounds() {}

  /**
   * Returns the value if it is finite and above zero, else throws {@link IllegalArgumentException}.
   */
  static double positive(String name, double value) {
    return check(value > 0 && Double.isFinite(value), name, value, "a finite number above 0");
  }

  /**
   * Returns the value if it is above zero, infinity included, else throws {@link
   * IllegalArgumentException}.
   */
  static double positiveOrInfinite(String name, double value) {
    return check(value > 0, name, value, "a number above 0, or infinity for no limit");
  }

  /**
   * Returns the value if it is finite and not negative, else throws {@link
   * IllegalArgumentException}.
   */
  static double notNegative(String name, double value) {
    return check(value >= 0 && Double.isFinite(value), name, value, "a finite number of 0 or more");
  }

  /**
   * Returns the value if it lies strictly between 0 and 1, else throws {@link
   * IllegalArgumentException}.
   */
  static double between0And1(String name, double value) {
    return check(value > 0 && value < 1, name, value, "a number above 0 and below 1");
  }

  /**
   * Returns the value if it is finite and at least 1, else throws {@link IllegalArgumentException}.
   */
  static double atLeast1(String name, double value) {
    return check(value >= 1 && Double.isFinite(value), name, value, "a finite number of 1 or more");
  }

  private static double check(boolean holds, String name, double value, String accepted) {
    if (!holds) {
      throw new IllegalArgumentException(name + " is " + value + "; accepted: " + accepted);
    }
    return value;
  }
}
