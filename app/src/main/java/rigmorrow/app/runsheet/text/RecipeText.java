package rigmorrow.app.runsheet.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rigmorrow.app.report.Counted;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Recipe;

/** Says which pictures a recipe takes. */
public final class RecipeText {

  private static final double FULL_TURN_DEG = 360;

  private RecipeText() {}

  /** Every row and still, focus brackets, and how many pictures there are. */
  public static List<String> pictures(Recipe recipe) {
    List<String> lines = new ArrayList<>();
    int rowNumber = 1;
    for (FrameRow row : recipe.rows()) {
      lines.add("Row " + rowNumber++ + ": elevation " + row(row));
    }
    if (!recipe.stills().isEmpty()) {
      lines.add(
          Counted.of(recipe.stills().size(), "still")
              + " (elevation/turn): "
              + recipe.stills().stream()
                  .map(still -> degrees(still.elevationDeg()) + "/" + degrees(still.angleDeg()))
                  .collect(Collectors.joining(", ")));
    }
    if (recipe.focusBrackets() > 1) {
      lines.add(recipe.focusBrackets() + " focus brackets for each picture");
    }
    int pictures = number(recipe);
    lines.add(
        (pictures == 0
                ? "Pictures as set up on the rig"
                : "In all " + Counted.of(pictures, "picture"))
            + (recipe.attended() ? "; an operator stays" : ""));
    return lines;
  }

  /** Which light the pictures are taken by. */
  public static String light(Recipe recipe) {
    return switch (recipe.lighting()) {
      case STROBE -> "Strobe light";
      case CONTINUOUS -> "Continuous light";
      case EITHER -> "Strobe or continuous light";
    };
  }

  /** The recipe by name and what it takes. */
  public static String brief(Recipe recipe) {
    return recipe.label() + ": " + counts(recipe);
  }

  /**
   * What there must be in the end, to be counted: rows with their frames, stills, and focus
   * brackets of each, such as "2 rows of 36 frames and 4 stills, 3 focus brackets each".
   */
  public static String counts(Recipe recipe) {
    List<String> parts = new ArrayList<>();
    if (!recipe.rows().isEmpty()) {
      parts.add(rows(recipe.rows().stream().map(FrameRow::frames).toList()));
    }
    if (!recipe.stills().isEmpty()) {
      parts.add(Counted.of(recipe.stills().size(), "still"));
    }
    if (parts.isEmpty()) {
      return "pictures as set up on the rig";
    }
    return String.join(" and ", parts)
        + (recipe.focusBrackets() > 1
            ? ", " + recipe.focusBrackets() + " focus brackets each"
            : "");
  }

  private static String rows(List<Integer> frames) {
    if (frames.stream().distinct().count() == 1) {
      return Counted.of(frames.size(), "row") + " of " + Counted.of(frames.get(0), "frame");
    }
    int last = frames.size() - 1;
    return frames.size()
        + " rows of "
        + frames.stream().limit(last).map(String::valueOf).collect(Collectors.joining(", "))
        + " and "
        + Counted.of(frames.get(last), "frame");
  }

  private static int number(Recipe recipe) {
    return recipe.stills().size() + recipe.rows().stream().mapToInt(FrameRow::frames).sum();
  }

  private static String row(FrameRow row) {
    return degrees(row.elevationDeg())
        + ", "
        + Counted.of(row.frames(), "frame")
        + (row.sweepDeg() == FULL_TURN_DEG ? "" : " over " + degrees(row.sweepDeg()))
        + (row.turning() ? ", plate turning" : ", stop and go");
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "") + "°";
  }
}
