package rigmorrow.model.setup;

import java.util.List;
import java.util.Optional;
import rigmorrow.model.check.Require;

/**
 * One thing about a rig that can be set one way or another: background, plate surface, camera and
 * lens, suspension. The list is open; the floor file defines it.
 *
 * @param id short name used in files, unique on the floor
 * @param label what people call it
 * @param values the ways it can be set, at least one
 */
public record SetupAttribute(String id, String label, List<AttributeValue> values) {
  public SetupAttribute {
    Require.text("setupAttribute.id", id);
    Require.text("setupAttribute.label", label);
    values = List.copyOf(values);
    Require.that(!values.isEmpty(), "setupAttribute.values", "empty", "at least one value");
    Require.distinct("setupAttribute.values", values, AttributeValue::id);
  }

  /** The value with this id, if the attribute has it. */
  public Optional<AttributeValue> value(String valueId) {
    return values.stream().filter(value -> value.id().equals(valueId)).findFirst();
  }

  /**
   * What people call a value: its label, with the id in brackets where another value has the same
   * label; the id alone for a value that the attribute does not have.
   */
  public String nameOf(String valueId) {
    return value(valueId)
        .map(value -> isAmbiguous(value) ? value.label() + " (" + valueId + ")" : value.label())
        .orElse(valueId);
  }

  private boolean isAmbiguous(AttributeValue value) {
    return values.stream().filter(other -> other.label().equals(value.label())).count() > 1;
  }
}
