package rigmorrow.data.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What FORMAT.md says of fields, by kind of object. */
public final class FormatPage {
  private static final Pattern KIND = Pattern.compile("### `(\\w+)`");
  private static final Pattern FIELD =
      Pattern.compile("\\| `(\\w+)` \\| (.*) \\| (.*) \\| ?(.*) ?\\|");

  private FormatPage() {}

  /**
   * One line of a table.
   *
   * @param type what kind of value it is, and what it means
   * @param standard "needed", or what holds when it is missing
   * @param bounds what else must hold; may be empty
   */
  public record Row(String type, String standard, String bounds) {}

  /** The names of the fields of every kind of object in one section, such as "Floor file". */
  public static Map<String, Set<String>> section(String title) {
    Map<String, Set<String>> fields = new TreeMap<>();
    rows(title).forEach((kind, rows) -> fields.put(kind, new TreeSet<>(rows.keySet())));
    return fields;
  }

  /** The lines of every kind of object in one section, by field, in the page's order. */
  public static Map<String, Map<String, Row>> rows(String title) {
    Map<String, Map<String, Row>> rows = new LinkedHashMap<>();
    Map<String, Row> current = new LinkedHashMap<>();
    for (String line : text(title).split("\n")) {
      Matcher kind = KIND.matcher(line);
      Matcher field = FIELD.matcher(line);
      if (kind.matches()) {
        current = new LinkedHashMap<>();
        rows.put(kind.group(1), current);
      } else if (field.matches()) {
        current.put(
            field.group(1), new Row(field.group(2), field.group(3), field.group(4).strip()));
      }
    }
    return rows;
  }

  /** The text of one section. */
  public static String text(String title) {
    try {
      String page = Files.readString(Path.of("FORMAT.md"));
      int start = page.indexOf("\n## " + title + "\n");
      int end = page.indexOf("\n## ", start + 1);
      return page.substring(start, end < 0 ? page.length() : end);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
