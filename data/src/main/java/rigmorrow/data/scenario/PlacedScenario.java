package rigmorrow.data.scenario;

import java.util.List;
import rigmorrow.data.json.Cursor;
import rigmorrow.model.scenario.Scenario;

/**
 * A scenario and where it stands in its file.
 *
 * @param scenario as read
 * @param place of it
 * @param changes of its changes, as many as were begun
 * @param reader knows which field of a change says what it is
 */
record PlacedScenario(Scenario scenario, Cursor place, List<Cursor> changes, ChangeReader reader) {

  /** True when nothing was told of it. */
  boolean sound() {
    return !place.reading().troubled(place.path());
  }

  /** The object that says what a change is. */
  Cursor change(int index) {
    Cursor change = changes.get(index);
    return change.freeObject(reader.fields(change).get(0));
  }
}
