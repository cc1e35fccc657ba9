package rigmorrow.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Change.Kind;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Rig;

/** Which changes of the floor are worth a try. */
final class FloorChanges {
  /** As many as the decoder can take. */
  private static final int MOST_OPERATORS = 31;

  private FloorChanges() {}

  /**
   * @param kits ids of the kit that matters
   * @param rigs ids of the rigs that matter
   * @param laterSeconds how much later hours may end
   */
  static List<Change> of(
      Question question, Set<String> kits, Set<String> rigs, int... laterSeconds) {
    Floor floor = question.batch().floor();
    List<Change> changes = new ArrayList<>();
    if (floor.crew().size() < MOST_OPERATORS) {
      changes.add(Change.of(Kind.ONE_MORE_OPERATOR, ""));
    }
    for (Kit kit : floor.kits()) {
      if (kits.contains(kit.id())) {
        changes.add(Change.of(Kind.ONE_MORE_KIT, kit.id()));
      }
    }
    for (Rig rig : floor.rigs()) {
      if (rigs.contains(rig.id()) && !rig.closed().isEmpty()) {
        changes.add(Change.of(Kind.RIG_NOT_CLOSED, rig.id()));
      }
    }
    for (int later : laterSeconds) {
      changes.add(new Change(Kind.LONGER_HOURS, "", later));
    }
    return changes;
  }
}
