package rigmorrow.data.json;

/**
 * Bounds of a figure.
 *
 * @param low least value
 * @param lowOpen true when {@code low} itself is refused
 * @param high greatest value
 * @param highOpen true when {@code high} itself is refused
 */
public record Range(double low, boolean lowOpen, double high, boolean highOpen) {
  /** From {@code low} to {@code high}, both allowed. */
  public static Range of(double low, double high) {
    return new Range(low, false, high, false);
  }

  /** Above {@code low}, up to and with {@code high}. */
  public static Range above(double low, double high) {
    return new Range(low, true, high, false);
  }

  /** Between {@code low} and {@code high}, neither allowed. */
  public static Range between(double low, double high) {
    return new Range(low, true, high, true);
  }

  /** True when the value lies within; never true for a value that is no number. */
  public boolean holds(double value) {
    return (lowOpen ? value > low : value >= low) && (highOpen ? value < high : value <= high);
  }

  /** The bounds as a phrase, such as "a whole number from 1 to 1000". */
  public String phrase(String kindOfNumber) {
    if (lowOpen) {
      return kindOfNumber
          + " above "
          + plain(low)
          + (highOpen ? " and below " : ", up to ")
          + plain(high);
    }
    return kindOfNumber + " from " + plain(low) + " to " + plain(high);
  }

  /** Some value within, to go on reading with when the file's own value was refused. */
  double standIn() {
    return lowOpen ? low + Math.min(1, (high - low) / 2) : low;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
