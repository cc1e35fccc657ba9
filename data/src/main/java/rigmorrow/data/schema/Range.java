package rigmorrow.data.schema;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * Bounds of a figure.
 *
 * @param low least value
 * @param lowOpen true when {@code low} itself is refused
 * @param high greatest value
 * @param highOpen true when {@code high} itself is refused
 */
public record Range(double low, boolean lowOpen, double high, boolean highOpen) {
  /** Upper bounds from here on say how a number is stored, not what would be sensible. */
  private static final double BEYOND_SENSE = Integer.MAX_VALUE;

  /** From {@code low} to {@code high}, both allowed. */
  public static Range of(double low, double high) {
    return new Range(low, false, high, false);
  }

  /** The bounds that a schema sets by its keywords. */
  static Range of(JsonNode schema) {
    boolean lowOpen = schema.has("exclusiveMinimum");
    boolean highOpen = schema.has("exclusiveMaximum");
    JsonNode low = schema.path(lowOpen ? "exclusiveMinimum" : "minimum");
    JsonNode high = schema.path(highOpen ? "exclusiveMaximum" : "maximum");
    return new Range(
        low.asDouble(Double.NEGATIVE_INFINITY),
        lowOpen,
        high.asDouble(Double.POSITIVE_INFINITY),
        highOpen);
  }

  /** The same bounds with another least value, which is allowed. */
  public Range from(double least) {
    return new Range(least, false, high, highOpen);
  }

  /** The same bounds with another greatest value, which is allowed. */
  public Range to(double greatest) {
    return new Range(low, lowOpen, greatest, false);
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
    if (high < BEYOND_SENSE) {
      return kindOfNumber + " from " + plain(low) + " to " + plain(high);
    }
    return low <= -BEYOND_SENSE ? kindOfNumber : kindOfNumber + " of at least " + plain(low);
  }

  /** Some value within, to go on reading with when the file's own value was refused. */
  double standIn() {
    return lowOpen ? low + Math.min(1, (high - low) / 2) : low;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
