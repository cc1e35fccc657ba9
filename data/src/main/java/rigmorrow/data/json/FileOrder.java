package rigmorrow.data.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.schema.Places;

/** Puts problems in the order in which a reader of the file comes upon their places. */
final class FileOrder {
  private final NavigableSet<String> wanted = new TreeSet<>();
  private final Map<String, Integer> ranks = new HashMap<>();

  private FileOrder() {}

  /** The problems in file order; what is missing stands where its object begins. */
  static List<InputProblem> of(JsonNode tree, List<InputProblem> problems) {
    FileOrder order = new FileOrder();
    problems.forEach(problem -> order.wanted.add(problem.where()));
    order.walk("", tree);
    List<InputProblem> sorted = new ArrayList<>(problems);
    sorted.sort(Comparator.comparingInt(problem -> order.rank(problem.where())));
    return sorted;
  }

  private void walk(String path, JsonNode node) {
    ranks.put(path, ranks.size());
    node.properties()
        .forEach(field -> walkIfWanted(Places.field(path, field.getKey()), field.getValue()));
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walkIfWanted(Places.element(path, i), node.get(i));
      }
    }
  }

  private void walkIfWanted(String path, JsonNode node) {
    String next = wanted.ceiling(path);
    if (next != null && next.startsWith(path)) {
      walk(path, node);
    }
  }

  private int rank(String where) {
    String place = where;
    while (!ranks.containsKey(place)) {
      int end = Math.max(place.lastIndexOf('.'), place.lastIndexOf('['));
      place = place.substring(0, Math.max(end, 0));
    }
    return ranks.get(place);
  }
}
