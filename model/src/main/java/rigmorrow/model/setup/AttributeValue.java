package rigmorrow.model.setup;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * One way a setup attribute can be set.
 *
 * @param id short name used in files, unique within its attribute
 * @param label what people call it
 * @param frictionCoefficient static friction between this plate surface and an item, above 0; null
 *     when the value is no plate surface
 * @param refusedFinishes finishes this value must not be used with, such as a directly lit
 *     background behind clear glass (soft edges; common practice)
 * @param caution what the crew must mind while this value is set up; null when nothing
 */
public record AttributeValue(
    String id,
    String label,
    @Nullable Double frictionCoefficient,
    Set<String> refusedFinishes,
    @Nullable String caution) {
  public AttributeValue {
    Require.text("value.id", id);
    Require.text("value.label", label);
    if (frictionCoefficient != null) {
      Require.positive("value.frictionCoefficient", frictionCoefficient);
    }
    refusedFinishes = Set.copyOf(refusedFinishes);
  }
}
