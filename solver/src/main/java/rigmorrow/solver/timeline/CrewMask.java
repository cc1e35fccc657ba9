package rigmorrow.solver.timeline;

import java.util.Collection;
import java.util.List;
import rigmorrow.model.floor.Operator;

/**
 * Sets of operators as bits in crew order.
 *
 * @param crew in the order of the bits
 */
record CrewMask(List<Operator> crew) {
  /** Operators who have all of the skills. */
  int of(Collection<String> skills) {
    int mask = 0;
    for (int i = 0; i < crew.size(); i++) {
      mask |= crew.get(i).skills().containsAll(skills) ? 1 << i : 0;
    }
    return mask;
  }
}
