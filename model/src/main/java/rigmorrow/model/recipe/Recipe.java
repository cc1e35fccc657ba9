package rigmorrow.model.recipe;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.check.Require;
import rigmorrow.model.setup.Setup;

/**
 * What pictures a job needs and what they take.
 *
 * @param id unique on the floor
 * @param label what people call it
 * @param rows spin rows in the order they are shot
 * @param stills single pictures, shot after the rows in this order
 * @param exposureSeconds of one picture, 0 or more
 * @param focusBrackets exposures per picture at different focus, at least 1
 * @param lighting kind of light
 * @param setup the setup it asks for; attributes it does not name may stay as they are
 * @param equipment kinds of equipment it needs, fitted or as kit
 * @param skills what the operator who loads must be able to do
 * @param attended true when an operator stays during capture
 * @param backgroundMarginMm background needed on each side of the item, 0 or more
 * @param measuredCaptureSeconds measured capture time by rig id, which replaces the computed one
 */
public record Recipe(
    String id,
    String label,
    List<FrameRow> rows,
    List<Still> stills,
    double exposureSeconds,
    int focusBrackets,
    Lighting lighting,
    Setup setup,
    Set<String> equipment,
    Set<String> skills,
    boolean attended,
    int backgroundMarginMm,
    Map<String, Integer> measuredCaptureSeconds) {
  public Recipe {
    Require.text("recipe.id", id);
    Require.text("recipe.label", label);
    rows = List.copyOf(rows);
    stills = List.copyOf(stills);
    measuredCaptureSeconds = Map.copyOf(measuredCaptureSeconds);
    Require.that(
        !rows.isEmpty() || !stills.isEmpty() || !measuredCaptureSeconds.isEmpty(),
        "recipe.rows",
        "empty",
        "rows, stills or measuredCaptureSeconds");
    Require.atLeast("recipe.exposureSeconds", exposureSeconds, 0);
    Require.atLeast("recipe.focusBrackets", focusBrackets, 1);
    equipment = Set.copyOf(equipment);
    skills = Set.copyOf(skills);
    Require.atLeast("recipe.backgroundMarginMm", backgroundMarginMm, 0);
    measuredCaptureSeconds.forEach(
        (rig, seconds) ->
            Require.atLeast("recipe.measuredCaptureSeconds[" + rig + "]", seconds, 0));
  }

  /** The steepest camera elevation of any picture, 0 when there is none. */
  public double maxElevationDeg() {
    double steepest = 0;
    for (FrameRow row : rows) {
      steepest = Math.max(steepest, row.elevationDeg());
    }
    for (Still still : stills) {
      steepest = Math.max(steepest, still.elevationDeg());
    }
    return steepest;
  }
}
