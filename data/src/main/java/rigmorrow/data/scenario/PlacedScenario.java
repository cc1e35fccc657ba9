package rigmorrow.data.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigmorrow.data.json.Cursor;
import rigmorrow.model.scenario.ScenarioChange;

/**
 * The changes of a scenario and where they stand in its file, whatever is wrong with the rest of
 * it.
 *
 * @param place of the scenario
 * @param changes in their order
 */
record PlacedScenario(Cursor place, List<Placed> changes) {
  private static final Set<String> NAMING =
      Set.of("addRigLike", "addRig", "removeRig", "addOperatorLike");

  PlacedScenario {
    changes = List.copyOf(changes);
  }

  /**
   * A change.
   *
   * @param change as read
   * @param place of it
   * @param field that says what it is
   */
  record Placed(ScenarioChange change, Cursor place, String field) {
    boolean sound() {
      return !place.reading().troubled(place.path());
    }

    /** The object that says what it is. */
    Cursor object() {
      return place.freeObject(field);
    }

    /** True where a change after it may use a name that it brings or frees. */
    private boolean changesNames() {
      return NAMING.contains(field);
    }
  }

  /** True when nothing was told of its changes. */
  boolean sound() {
    return !place.reading().troubled(place.path() + ".changes");
  }

  /**
   * The changes of which nothing was told before, so that what is wrong with them is told too. What
   * stands after a refused one that brings or frees a name is left out: it may be right but for
   * that.
   */
  List<Placed> toCheck() {
    List<Placed> sound = new ArrayList<>();
    for (Placed change : changes) {
      if (change.sound()) {
        sound.add(change);
      } else if (change.changesNames()) {
        return sound;
      }
    }
    return sound;
  }
}
