package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Recipe;

/** Says which pictures a recipe takes. */
final class RecipeText {

  private static final double FULL_TURN_DEG = 360;

  private RecipeText() {}

  static List<String> pictures(Recipe recipe) {
    List<String> lines = new ArrayList<>();
    int rowNumber = 1;
    int pictures = recipe.stills().size();
    for (FrameRow row : recipe.rows()) {
      pictures += row.frames();
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
    lines.add(
        (pictures == 0 ? "Pictures as set up on the rig" : "In all " + count(pictures))
            + (recipe.attended() ? "; an operator stays" : ""));
    return lines;
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
