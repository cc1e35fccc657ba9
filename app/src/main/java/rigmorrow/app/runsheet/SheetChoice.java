package rigmorrow.app.runsheet;

import java.util.Set;

/**
 * Whose sheets or calendars to write.
 *
 * @param rigs ids of rigs
 * @param operators ids of operators; both empty for everybody
 */
public record SheetChoice(Set<String> rigs, Set<String> operators) {
  /** Every rig and every operator. */
  public static final SheetChoice ALL = new SheetChoice(Set.of(), Set.of());

  public SheetChoice {
    rigs = Set.copyOf(rigs);
    operators = Set.copyOf(operators);
  }

  /** Whether everybody is meant. */
  public boolean all() {
    return rigs.isEmpty() && operators.isEmpty();
  }

  /** Whether a rig is meant. */
  public boolean rig(String id) {
    return all() || rigs.contains(id);
  }

  /** Whether an operator is meant. */
  public boolean operator(String id) {
    return all() || operators.contains(id);
  }
}
