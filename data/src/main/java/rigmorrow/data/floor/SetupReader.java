package rigmorrow.data.floor;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.problem.Words;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;

/** Reads setup attributes, changeover tables and setups. */
final class SetupReader {
  private final FloorNames names;

  /** What may stand in a changeover line, by attribute: a table has many lines. */
  private final Map<String, Set<String>> valuesOrAny = new HashMap<>();

  SetupReader(FloorNames names) {
    this.names = names;
  }

  List<SetupAttribute> attributes(Cursor floor) {
    Set<String> seen = FloorReader.seen();
    return floor.list("attributes", attribute -> attribute(attribute, seen));
  }

  private SetupAttribute attribute(Cursor attribute, Set<String> seenAttributes) {
    String id = attribute.get().unique("id", seenAttributes);
    Set<String> seen = FloorReader.seen();
    return new SetupAttribute(
        id,
        attribute.get().text("label", id),
        attribute.list("values", value -> value(value, seen)));
  }

  private static AttributeValue value(Cursor value, Set<String> seen) {
    String id = value.get().unique("id", seen);
    return new AttributeValue(
        id,
        value.get().text("label", id),
        value.get().numberOrNull("frictionCoefficient"),
        value.words("refusedFinishes"),
        value.get().textOrNull("caution"));
  }

  List<ChangeoverRule> changeovers(Cursor floor, CrewReader crew) {
    return floor.list("changeovers", rule -> changeover(rule, crew));
  }

  private ChangeoverRule changeover(Cursor rule, CrewReader crew) {
    String attribute = rule.get().reference("attribute", names.attributeIds(), "a setup attribute");
    return new ChangeoverRule(
        attribute,
        valueOrAny(rule, "from", attribute),
        valueOrAny(rule, "to", attribute),
        rule.references("rigs", names.rigs(), "rigs"),
        rule.get().whole("attendedSeconds"),
        rule.get().whole("unattendedSeconds"),
        crew.people(rule),
        crew.skills(rule, "skills"),
        rule.get().textOrNull("step"));
  }

  private String valueOrAny(Cursor rule, String field, String attribute) {
    Set<String> known = valuesOrAny.computeIfAbsent(attribute, this::valuesOrAny);
    return rule.get().reference(field, known, "a value of " + attribute + " or *");
  }

  private @Nullable Set<String> valuesOrAny(String attribute) {
    Set<String> values = names.valuesOf(attribute);
    if (values == null) {
      return null;
    }
    Set<String> known = new LinkedHashSet<>(values);
    known.add(ChangeoverRule.ANY);
    return known;
  }

  /** A request of a recipe or an item: attributes may be left out. */
  Setup request(Cursor owner, String field) {
    return request(owner.freeObject(field));
  }

  private Setup request(Cursor setup) {
    Map<String, String> values = new TreeMap<>();
    for (String attribute : setup.names()) {
      if (known(setup, attribute)) {
        Set<String> accepted = names.valuesOf(attribute);
        values.put(
            attribute, setup.get().reference(attribute, accepted, "a value of " + attribute));
      }
    }
    return new Setup(values);
  }

  /** The state of a rig: a value for every attribute, among those the rig offers. */
  Setup state(Cursor rig, String field, Map<String, Set<String>> offers) {
    Cursor setup = rig.freeObject(field);
    Setup state = request(setup);
    Set<String> attributes = names.attributeIds() == null ? Set.of() : names.attributeIds();
    if (!attributes.isEmpty() && !rig.has(field)) {
      rig.refuse(field, "a value for each of " + String.join(", ", attributes));
    }
    for (String attribute : attributes) {
      String value = state.value(attribute);
      Set<String> offered = offers.get(attribute);
      if (value == null) {
        setup.refuse(attribute, "", "a value: " + choice(attribute));
      } else if (offered != null && !value.equals(Cursor.NO_TEXT) && !offered.contains(value)) {
        setup.refuse(attribute, "a value the rig offers: " + Words.choice(offered, value));
      }
    }
    return state;
  }

  Map<String, Set<String>> offers(Cursor rig) {
    Cursor offers = rig.freeObject("offers");
    Map<String, Set<String>> read = new TreeMap<>();
    for (String attribute : offers.names()) {
      if (known(offers, attribute)) {
        Set<String> values =
            offers.references(attribute, names.valuesOf(attribute), "values of " + attribute);
        if (values.isEmpty()) {
          offers.refuse(attribute, "at least one value of " + choice(attribute));
        } else {
          read.put(attribute, values);
        }
      }
    }
    return read;
  }

  private boolean known(Cursor owner, String attribute) {
    Set<String> attributes = names.attributeIds();
    if (attributes == null || attributes.contains(attribute)) {
      return true;
    }
    owner.refuse(
        attribute, "unknown attribute", "setup attributes: " + Words.choice(attributes, attribute));
    return false;
  }

  private String choice(String attribute) {
    Set<String> values = names.valuesOf(attribute);
    return values == null ? attribute : Words.choice(values, null);
  }
}
