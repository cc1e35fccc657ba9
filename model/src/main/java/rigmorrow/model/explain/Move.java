package rigmorrow.model.explain;

import java.util.List;
import rigmorrow.model.plan.Breach;

/**
 * A job put at another place, every other job in its order, decoded.
 *
 * @param times of the job there
 * @param cost of the whole plan then
 * @param standing of that cost against the plan's
 * @param lateChanges other jobs that would be late by more or less, the largest change first
 * @param breaches hard rules that would be broken and are not now
 */
public record Move(
    JobTimes times,
    Cost cost,
    Standing standing,
    List<LateChange> lateChanges,
    List<Breach> breaches) {
  public Move {
    lateChanges = List.copyOf(lateChanges);
    breaches = List.copyOf(breaches);
  }
}
