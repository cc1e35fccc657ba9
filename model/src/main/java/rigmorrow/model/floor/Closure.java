package rigmorrow.model.floor;

import java.time.LocalDateTime;
import rigmorrow.model.check.Require;

/**
 * A dated time in which a rig or an operator is not there: service, holiday, a course.
 *
 * @param from start, floor time
 * @param to end, exclusive, after the start
 * @param reason what the run sheet shows
 */
public record Closure(LocalDateTime from, LocalDateTime to, String reason) {
  public Closure {
    Require.that(to.isAfter(from), "closed.to", to, "a time after " + from);
    Require.text("closed.reason", reason);
  }
}
