package rigmorrow.benchmarks.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The best score at some time of a search.
 *
 * @param millis since it began
 */
public record Moment(long millis, Score score) {
  /** How many moments of a search are looked at. */
  public static final int COUNT = 24;

  private static final double FIRST_SHARE = 0.01;

  /** The moments that are looked at, from a hundredth of a limit to the limit in equal ratios. */
  public static List<Long> grid(long limitMillis) {
    List<Long> grid = new ArrayList<>();
    for (int i = 0; i < COUNT; i++) {
      double share = Math.pow(FIRST_SHARE, 1 - i / (COUNT - 1.0));
      grid.add(Math.round(limitMillis * share));
    }
    return grid;
  }

  static String text(List<Moment> course) {
    return course.stream()
        .map(moment -> moment.millis + ":" + moment.score)
        .collect(Collectors.joining(" "));
  }

  static List<Moment> parse(String text) {
    if (text.isBlank()) {
      return List.of();
    }
    return Arrays.stream(text.split(" ")).map(Moment::one).toList();
  }

  private static Moment one(String text) {
    int colon = text.indexOf(':');
    if (colon < 1) {
      throw new IllegalArgumentException("'" + text + "' is no moment");
    }
    return new Moment(
        Long.parseLong(text.substring(0, colon)), Score.parse(text.substring(colon + 1)));
  }
}
