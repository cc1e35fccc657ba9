package rigmorrow.model.change;

import java.util.List;

/**
 * A change of a scenario that cannot be made on a floor.
 *
 * @param change its index among the scenario's changes
 * @param field of the change
 * @param value what stands there
 * @param accepted what would be accepted
 * @param known words that would be accepted; empty where {@code accepted} says it all
 */
public record ChangeProblem(
    int change, String field, String value, String accepted, List<String> known) {
  public ChangeProblem {
    known = List.copyOf(known);
  }
}
