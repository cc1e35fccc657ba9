package rigmorrow.model.shot;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * A decision the planner has taken out of the search's hands, or a fact of the running day.
 *
 * @param job id of the job
 * @param rig id of the rig it stays on
 * @param place 0 for the first job of the rig; null for any place
 * @param startsAt floor time at which its first step starts; null for any time. A start is taken as
 *     given: the job waits for it, and starting later breaks the plan.
 * @param state how far it is
 */
public record Pin(
    String job,
    String rig,
    @Nullable Integer place,
    @Nullable LocalDateTime startsAt,
    PinState state) {
  public Pin {
    Require.text("pin.job", job);
    Require.text("pin.rig", rig);
    if (place != null) {
      Require.atLeast("pin.place", place, 0);
    }
    Require.that(
        state == PinState.PLANNED || (place != null && startsAt != null),
        "pin.place",
        String.valueOf(place),
        "place and startsAt for a job that is running or done");
  }
}
