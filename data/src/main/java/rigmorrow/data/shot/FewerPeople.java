package rigmorrow.data.shot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotList;

/** Collects the items that fewer people place than the list says, to be told to the user. */
public final class FewerPeople {
  /** Places beyond these are only counted. */
  private static final int MOST_PLACES = 12;

  private final Map<Key, List<String>> places = new LinkedHashMap<>();

  private record Key(String name, int listed, int planned) {}

  /** The lines about a shot list that was read from JSON or YAML. */
  public static List<String> linesOf(ShotList list) {
    FewerPeople fewer = new FewerPeople();
    for (int i = 0; i < list.jobs().size(); i++) {
      fewer.take(list.jobs().get(i).item(), JobField.HANDS_NEEDED.key(), "jobs[" + i + "]");
    }
    return fewer.lines();
  }

  /**
   * Takes an item; nothing is noted of one that as many people place as the list says.
   *
   * @param name of the field or column with the people, as the file has it
   * @param where it stands
   */
  public void take(Item item, String name, String where) {
    if (item.peopleToPlace() < item.handsNeeded()) {
      places
          .computeIfAbsent(
              new Key(name, item.handsNeeded(), item.peopleToPlace()), key -> new ArrayList<>())
          .add(where);
    }
  }

  /** One line for each field or column and number of people. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    places.forEach(
        (key, where) ->
            lines.add(
                "%s %d: a plan takes %s, since the holder counts as one (%s)"
                    .formatted(key.name, key.listed, planned(key.planned), listed(where))));
    return lines;
  }

  /** A heavy item has two people whatever the list says. */
  private static String planned(int people) {
    return people == 1 ? "1 person, or 2 where the weight asks for them" : people + " people";
  }

  private static String listed(List<String> where) {
    String first = String.join("; ", where.subList(0, Math.min(where.size(), MOST_PLACES)));
    return where.size() <= MOST_PLACES
        ? first
        : first + "; and " + (where.size() - MOST_PLACES) + " more";
  }
}
