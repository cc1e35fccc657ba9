package rigmorrow.model.floor;

import java.util.List;
import java.util.Set;
import rigmorrow.model.check.Require;

/**
 * A member of the crew.
 *
 * @param id unique on the floor
 * @param name what the run sheet shows
 * @param skills what this operator may do
 * @param shifts working hours, at least one
 * @param breaks hours within the shifts in which the operator does nothing
 * @param closed dated absences
 */
public record Operator(
    String id,
    String name,
    Set<String> skills,
    List<OpenHours> shifts,
    List<OpenHours> breaks,
    List<Closure> closed) {
  public Operator {
    Require.text("operator.id", id);
    Require.text("operator.name", name);
    skills = Set.copyOf(skills);
    shifts = List.copyOf(shifts);
    Require.that(!shifts.isEmpty(), "operator.shifts", "empty", "at least one shift");
    breaks = List.copyOf(breaks);
    closed = List.copyOf(closed);
  }
}
