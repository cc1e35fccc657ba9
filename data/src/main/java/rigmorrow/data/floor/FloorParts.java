package rigmorrow.data.floor;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Fields;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.SetupAttribute;

/** Parts of a floor that stand in other files. */
public final class FloorParts {
  private FloorParts() {}

  /** Reads a rig that is to stand on a floor. */
  public static Rig rig(Cursor rig, Floor floor) {
    FloorNames names = names(floor);
    return new RigReader(names, new SetupReader(names), new CrewReader(names))
        .rig(rig, FloorReader.seen());
  }

  /** Reads hours that come back every week. */
  public static OpenHours hours(Cursor hours) {
    return CrewReader.openHours(hours);
  }

  /** Writes a rig. */
  public static Fields fields(Rig rig) {
    return RigWriter.rig(rig);
  }

  /** Writes hours that come back every week. */
  public static Fields fields(OpenHours hours) {
    return FloorWriter.hours(hours);
  }

  private static FloorNames names(Floor floor) {
    Map<String, Set<String>> attributes = new LinkedHashMap<>();
    for (SetupAttribute attribute : floor.attributes()) {
      attributes.put(
          attribute.id(), ids(attribute.values().stream().map(AttributeValue::id).toList()));
    }
    return new FloorNames(
        ids(floor.rigs().stream().map(Rig::id).toList()),
        ids(floor.kits().stream().map(kit -> kit.id()).toList()),
        floor.kits().stream()
            .flatMap(kit -> kit.units().stream())
            .map(unit -> unit.place())
            .collect(Collectors.toCollection(LinkedHashSet::new)),
        ids(floor.recipes().stream().map(recipe -> recipe.id()).toList()),
        attributes,
        floor.crew().stream().map(operator -> operator.skills()).toList());
  }

  private static Set<String> ids(List<String> ids) {
    return new LinkedHashSet<>(ids);
  }
}
