package rigmorrow.data.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What FORMAT.md says: names of fields by kind of object. */
public final class FormatPage {
  private static final Pattern KIND = Pattern.compile("### `(\\w+)`");
  private static final Pattern FIELD = Pattern.compile("\\| `(\\w+)` \\|.*");

  private FormatPage() {}

  /** The fields of every kind of object in one section, such as "Floor file". */
  public static Map<String, Set<String>> section(String title) {
    Map<String, Set<String>> fields = new TreeMap<>();
    Set<String> current = new TreeSet<>();
    for (String line : text(title).split("\n")) {
      Matcher kind = KIND.matcher(line);
      Matcher field = FIELD.matcher(line);
      if (kind.matches()) {
        current = new TreeSet<>();
        fields.put(kind.group(1), current);
      } else if (field.matches()) {
        current.add(field.group(1));
      }
    }
    return fields;
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
