package rigmorrow.data.floor;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The ids a floor file defines, taken from the tree before anything is checked, so that a rig with
 * a wrong figure does not make every mention of it look wrong too. A set is null where the section
 * is no list; then nothing can be said of references to it.
 *
 * @param rigs ids of rigs
 * @param kits ids of kits
 * @param places where units of kit lie; null too when one cannot be read
 * @param recipes ids of recipes
 * @param attributes value ids by attribute id
 * @param skills skills of each operator; null when the crew cannot be read
 */
record FloorNames(
    @Nullable Set<String> rigs,
    @Nullable Set<String> kits,
    @Nullable Set<String> places,
    @Nullable Set<String> recipes,
    @Nullable Map<String, Set<String>> attributes,
    @Nullable List<Set<String>> skills) {

  static FloorNames of(JsonNode floor) {
    return new FloorNames(
        idsIfList(floor.path("rigs")),
        idsIfList(floor.path("kits")),
        places(floor.path("kits")),
        idsIfList(floor.path("recipes")),
        attributes(floor.path("attributes")),
        skills(floor.path("crew")));
  }

  /** Ids of setup attributes. */
  @Nullable Set<String> attributeIds() {
    return attributes == null ? null : attributes.keySet();
  }

  /** Value ids of an attribute; null when it is not known. */
  @Nullable Set<String> valuesOf(String attribute) {
    return attributes == null ? null : attributes.get(attribute);
  }

  /** How many operators have all of these skills; many when the crew cannot be read. */
  int operatorsWith(Set<String> wanted) {
    if (skills == null) {
      return Integer.MAX_VALUE;
    }
    return (int) skills.stream().filter(held -> held.containsAll(wanted)).count();
  }

  /** How many operators there are; many when the crew cannot be read. */
  int operators() {
    return skills == null ? Integer.MAX_VALUE : skills.size();
  }

  private static @Nullable Set<String> idsIfList(JsonNode list) {
    if (!list.isArray() && !list.isMissingNode()) {
      return null;
    }
    return ids(list);
  }

  private static Set<String> ids(JsonNode list) {
    Set<String> ids = new LinkedHashSet<>();
    for (JsonNode element : list) {
      if (element.path("id").isTextual()) {
        ids.add(element.path("id").textValue());
      }
    }
    return ids;
  }

  private static @Nullable Set<String> places(JsonNode kits) {
    if (!kits.isArray() && !kits.isMissingNode()) {
      return null;
    }
    Set<String> places = new LinkedHashSet<>();
    for (JsonNode kit : kits) {
      // A kit without units is told where it stands; any place may have been meant by it.
      if (!kit.path("units").isArray() || kit.path("units").isEmpty()) {
        return null;
      }
      for (JsonNode unit : kit.path("units")) {
        if (!unit.path("place").isTextual()) {
          return null;
        }
        places.add(unit.path("place").textValue());
      }
    }
    return places;
  }

  private static @Nullable Map<String, Set<String>> attributes(JsonNode list) {
    if (!list.isArray() && !list.isMissingNode()) {
      return null;
    }
    Map<String, Set<String>> attributes = new LinkedHashMap<>();
    for (JsonNode element : list) {
      if (element.path("id").isTextual()) {
        attributes.putIfAbsent(element.path("id").textValue(), ids(element.path("values")));
      }
    }
    return attributes;
  }

  private static @Nullable List<Set<String>> skills(JsonNode crew) {
    if (!crew.isArray() || crew.isEmpty()) {
      return null;
    }
    List<Set<String>> skills = new ArrayList<>();
    for (JsonNode operator : crew) {
      JsonNode list = operator.path("skills");
      if (!list.isArray() && !list.isMissingNode()) {
        return null;
      }
      Set<String> held = new LinkedHashSet<>();
      list.forEach(skill -> held.add(skill.asText()));
      skills.add(held);
    }
    return skills;
  }
}
