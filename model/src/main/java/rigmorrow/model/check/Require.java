package rigmorrow.model.check;

import java.util.Collection;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/**
 * Argument checks that name the field, the value and what would be accepted. Every method throws
 * {@link IllegalArgumentException} when the value is refused and returns the value otherwise.
 */
public final class Require {
  private Require() {}

  /** A text that has at least one visible character. */
  public static String text(String field, String value) {
    if (Objects.requireNonNull(value, field).isBlank()) {
      throw refused(field, "'" + value + "'", "a text that is not empty");
    }
    return value;
  }

  /** A finite number of at least {@code minimum}. */
  public static double atLeast(String field, double value, double minimum) {
    if (!(value >= minimum) || Double.isInfinite(value)) {
      throw refused(field, String.valueOf(value), "a number of at least " + minimum);
    }
    return value;
  }

  /** A whole number of at least {@code minimum}. */
  public static int atLeast(String field, int value, int minimum) {
    if (value < minimum) {
      throw refused(field, String.valueOf(value), "a whole number of at least " + minimum);
    }
    return value;
  }

  /** A finite number above zero. */
  public static double positive(String field, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refused(field, String.valueOf(value), "a number above 0");
    }
    return value;
  }

  /** A number within closed bounds. */
  public static double between(String field, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw refused(field, String.valueOf(value), "a number from " + low + " to " + high);
    }
    return value;
  }

  /** A condition on a combination of fields. */
  public static void that(boolean holds, String field, Object value, String accepted) {
    if (!holds) {
      throw refused(field, String.valueOf(value), accepted);
    }
  }

  /** Items whose keys are all different. */
  public static <T> void distinct(String field, Collection<T> items, Function<T, String> key) {
    Set<String> seen = new HashSet<>();
    for (T item : items) {
      if (!seen.add(key.apply(item))) {
        throw refused(field, "'" + key.apply(item) + "' twice", "every id once");
      }
    }
  }

  private static IllegalArgumentException refused(String field, String value, String accepted) {
    return new IllegalArgumentException(field + " is " + value + "; accepted: " + accepted);
  }
}
