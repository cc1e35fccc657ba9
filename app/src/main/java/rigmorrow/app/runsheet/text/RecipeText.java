package rigmorrow.app.runsheet.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
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
          (recipe.stills().size() == 1 ? "1 still" : recipe.stills().size() + " stills")
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
        (pictures == 0 ? "Pictures as set up on the rig" : "In all " + count(pictures))
            + (recipe.attended() ? "; an operator stays" : ""));
    return lines;
  }

  /** The recipe by name and how many pictures it takes. */
  public static String brief(Recipe recipe) {
    int pictures = number(recipe);
    return recipe.label() + (pictures == 0 ? "" : ", " + count(pictures));
  }

  private static int number(Recipe recipe) {
    return recipe.stills().size() + recipe.rows().stream().mapToInt(FrameRow::frames).sum();
  }

  private static String row(FrameRow row) {
    return degrees(row.elevationDeg())
        + ", "
        + count(row.frames()).replace("picture", "frame")
        + (row.sweepDeg() == FULL_TURN_DEG ? "" : " over " + degrees(row.sweepDeg()))
        + (row.turning() ? ", plate turning" : ", stop and go");
  }

  private static String count(int pictures) {
    return pictures == 1 ? "1 picture" : pictures + " pictures";
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "") + "°";
  }
}
