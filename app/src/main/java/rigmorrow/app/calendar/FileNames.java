package rigmorrow.app.calendar;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Names of files made of ids that may hold anything. The prefix keeps clear of names that a system
 * reserves; two ids never share a name, not even where upper and lower case are one.
 */
final class FileNames {
  private static final int LONGEST = 60;

  private final Map<String, String> names = new HashMap<>();

  /**
   * @param prefix of every name
   * @param ids in the order in which they get their names
   * @param ending with its dot
   */
  FileNames(String prefix, List<String> ids, String ending) {
    Set<String> taken = new HashSet<>();
    for (String id : ids) {
      String plain = prefix + safe(id);
      String name = plain;
      for (int next = 2; !taken.add(name.toLowerCase(Locale.ROOT)); next++) {
        name = plain + "-" + next;
      }
      names.put(id, name + ending);
    }
  }

  /** The name for an id. */
  String of(String id) {
    return Objects.requireNonNull(names.get(id));
  }

  private static String safe(String id) {
    String safe = id.replaceAll("[^A-Za-z0-9._-]", "_");
    return safe.length() > LONGEST ? safe.substring(0, LONGEST) : safe;
  }
}
