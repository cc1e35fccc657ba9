package rigmorrow.model.work;

import java.util.List;
import java.util.Locale;

/**
 * One line of how a time is made up.
 *
 * @param part "load", "capture" or "unload"
 * @param label what takes the time
 * @param seconds how long, not rounded
 * @param pattern what {@link #figures} says, as {@link String#format} takes it
 * @param values the figures it was computed from
 */
public record TimeTerm(
    String part, String label, double seconds, String pattern, List<Object> values) {
  public TimeTerm {
    values = List.copyOf(values);
  }

  /**
   * The figures it was computed from. Written out only when somebody asks: a batch has thousands of
   * terms that nobody reads.
   */
  public String figures() {
    return String.format(Locale.ROOT, pattern, values.toArray());
  }
}
