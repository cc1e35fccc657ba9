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

  /**
   * How many slips of the keyboard make one word the other: a letter too many, too few, another or
   * two that changed places (optimal string alignment).
   */
  public static int slips(String first, String second) {
    int[][] slips = new int[first.length() + 1][second.length() + 1];
    for (int i = 0; i <= first.length(); i++) {
      for (int j = 0; j <= second.length(); j++) {
        if (i == 0 || j == 0) {
          slips[i][j] = i + j;
          continue;
        }
        int replace = slips[i - 1][j - 1] + (first.charAt(i - 1) == second.charAt(j - 1) ? 0 : 1);
        slips[i][j] = Math.min(replace, 1 + Math.min(slips[i - 1][j], slips[i][j - 1]));
        boolean swapped =
            i > 1
                && j > 1
                && first.charAt(i - 1) == second.charAt(j - 2)
                && first.charAt(i - 2) == second.charAt(j - 1);
        slips[i][j] = swapped ? Math.min(slips[i][j], slips[i - 2][j - 2] + 1) : slips[i][j];
      }
    }
    return slips[first.length()][second.length()];
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
