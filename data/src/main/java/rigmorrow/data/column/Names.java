package rigmorrow.data.column;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Finds what a cell names by id or label. */
public final class Names {
  private Names() {}

  /**
   * The thing with this id; else the only one whose id or label is the same but for case, blanks
   * and punctuation; else null.
   */
  public static <T> @Nullable T find(
      List<T> things, String name, Function<T, String> id, Function<T, String> label) {
    for (T thing : things) {
      if (id.apply(thing).equals(name)) {
        return thing;
      }
    }
    String key = Column.key(name);
    List<T> alike =
        things.stream()
            .filter(
                thing ->
                    Column.key(id.apply(thing)).equals(key)
                        || Column.key(label.apply(thing)).equals(key))
            .toList();
    return alike.size() == 1 && !key.isEmpty() ? alike.get(0) : null;
  }
}
