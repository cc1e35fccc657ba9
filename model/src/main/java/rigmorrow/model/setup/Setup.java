package rigmorrow.model.setup;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Values by setup attribute. As the state of a rig it has every attribute of the floor; as a
 * request of a job it may leave some out, and then whatever is set up stays.
 *
 * @param values value id by attribute id, in attribute order
 */
public record Setup(Map<String, String> values) {
  /** A request that asks for nothing. */
  public static final Setup ANY = new Setup(Map.of());

  public Setup {
    values = Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /** The value of one attribute, or null when this setup says nothing of it. */
  public @Nullable String value(String attributeId) {
    return values.get(attributeId);
  }

  /** This setup with every value of the request put in. */
  public Setup after(Setup request) {
    if (request.values.isEmpty()) {
      return this;
    }
    Map<String, String> next = new TreeMap<>(values);
    next.putAll(request.values);
    return new Setup(next);
  }

  /** True when every value the request asks for is set. */
  public boolean satisfies(Setup request) {
    return values.entrySet().containsAll(request.values.entrySet());
  }
}
