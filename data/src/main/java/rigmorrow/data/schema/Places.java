package rigmorrow.data.schema;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.regex.Pattern;

/** How places and values of a tree are written for the user. */
public final class Places {
  private static final Pattern PLAIN = Pattern.compile("[\\w-]+");

  private Places() {}

  /** The path of a field, such as {@code rigs[2].size}. */
  public static String field(String path, String name) {
    String written = PLAIN.matcher(name).matches() ? name : "\"" + name + "\"";
    return path.isEmpty() ? written : path + "." + written;
  }

  /** The path of a list's element, such as {@code rigs[2]}. */
  public static String element(String path, int index) {
    return path + "[" + index + "]";
  }

  /** A value as the file has it; empty for what is not there. */
  public static String shown(JsonNode value) {
    if (value.isMissingNode()) {
      return "";
    }
    if (value.isDouble() && Math.abs(value.doubleValue()) == Double.MAX_VALUE) {
      return "a number too large to be stored";
    }
    return value.isTextual() && !value.textValue().isBlank() ? value.textValue() : value.toString();
  }
}
