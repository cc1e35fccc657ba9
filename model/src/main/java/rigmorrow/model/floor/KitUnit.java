package rigmorrow.model.floor;

import rigmorrow.model.check.Require;

/**
 * One piece of kit.
 *
 * @param id unique on the floor
 * @param place where it is at the start: a rig's id or the name of a shelf
 */
public record KitUnit(String id, String place) {
  public KitUnit {
    Require.text("kit.unit.id", id);
    Require.text("kit.unit.place", place);
  }
}
