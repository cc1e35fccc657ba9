package rigmorrow.data.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Phrases that help with a misspelled word. */
public final class Words {
  private static final int MOST_LISTED = 12;

  private Words() {}

  /**
   * The words to choose from, and the one that was probably meant.
   *
   * @param known what would be accepted
   * @param given what stands there; null when nothing does
   */
  public static String choice(Collection<String> known, @Nullable Object given) {
    if (known.isEmpty()) {
      return "none, since there is none";
    }
    List<String> listed = known.stream().limit(MOST_LISTED).toList();
    String more =
        known.size() > MOST_LISTED ? " and " + (known.size() - MOST_LISTED) + " more" : "";
    String list = String.join(", ", listed) + more;
    return nearest(known, given == null ? "" : given.toString())
        .map(word -> list + " (did you mean " + word + "?)")
        .orElse(list);
  }

  /** The known word that differs least, if it differs by no more than a third of its letters. */
  public static Optional<String> nearest(Collection<String> known, String given) {
    if (given.isEmpty() || given.length() > 100) {
      return Optional.empty();
    }
    return known.stream()
        .filter(word -> distance(word, given) <= Math.max(1, word.length() / 3))
        .min(Comparator.comparingInt(word -> distance(word, given)));
  }

  /** Levenshtein distance without regard to case. */
  private static int distance(String first, String second) {
    String a = first.toLowerCase(Locale.ROOT);
    String b = second.toLowerCase(Locale.ROOT);
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replace = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replace, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[b.length()];
  }
}
