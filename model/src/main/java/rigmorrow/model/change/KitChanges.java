package rigmorrow.model.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.scenario.FloorChange;

/** Kit of which there is more. */
final class KitChanges {
  private KitChanges() {}

  static void add(FloorChange.MoreUnits change, FloorDraft draft) {
    int index = draft.kit("kit", change.kit());
    String place = change.place();
    Set<String> places = new TreeSet<>(draft.places());
    draft.rigs.forEach(rig -> places.add(rig.id()));
    if (place != null && !places.contains(place)) {
      draft.refuse("place", place, "a rig or a shelf", new ArrayList<>(places));
      return;
    }
    if (index < 0) {
      return;
    }
    Kit kit = draft.kits.get(index);
    Set<String> taken = new HashSet<>();
    draft.kits.forEach(one -> one.units().forEach(unit -> taken.add(unit.id())));
    List<KitUnit> units = new ArrayList<>(kit.units());
    for (int number = 1; units.size() < kit.units().size() + change.units(); number++) {
      String id = kit.id() + "-" + number;
      if (taken.add(id)) {
        units.add(new KitUnit(id, place == null ? kit.units().get(0).place() : place));
      }
    }
    draft.kits.set(
        index,
        new Kit(
            kit.id(),
            kit.label(),
            kit.provides(),
            units,
            kit.alignSeconds(),
            kit.people(),
            kit.skills(),
            kit.caution()));
  }
}
