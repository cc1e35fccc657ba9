package rigmorrow.model.floor;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * Portable equipment shared by rigs, in limited units.
 *
 * @param id unique on the floor
 * @param label what people call it
 * @param provides what a rig can do with it
 * @param units the pieces there are, at least one
 * @param alignSeconds hands-on time to mount and align it where it lands, 0 or more
 * @param people 1 or 2, to move it
 * @param skills what the operator who moves it must be able to do
 * @param caution what the crew must mind with it; null when nothing
 */
public record Kit(
    String id,
    String label,
    Equipment provides,
    List<KitUnit> units,
    int alignSeconds,
    int people,
    Set<String> skills,
    @Nullable String caution) {
  public Kit {
    Require.text("kit.id", id);
    Require.text("kit.label", label);
    units = List.copyOf(units);
    Require.that(!units.isEmpty(), "kit.units", "empty", "at least one unit");
    Require.atLeast("kit.alignSeconds", alignSeconds, 0);
    Require.that(people == 1 || people == 2, "kit.people", people, "1 or 2");
    skills = Set.copyOf(skills);
  }
}
