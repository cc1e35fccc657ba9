package rigmorrow.data.floor;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.problem.Words;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.recipe.LiftGeometry;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;

/** Reads recipes, what items add to their setups, handling times and physics. */
final class RecipeReader {
  private final FloorNames names;
  private final SetupReader setups;
  private final CrewReader crew;

  RecipeReader(FloorNames names, SetupReader setups, CrewReader crew) {
    this.names = names;
    this.setups = setups;
    this.crew = crew;
  }

  List<Recipe> recipes(Cursor floor) {
    Set<String> seen = FloorReader.seen();
    return floor.list("recipes", recipe -> recipe(recipe, seen));
  }

  private Recipe recipe(Cursor recipe, Set<String> seen) {
    String id = recipe.get().unique("id", seen);
    String label = recipe.get().text("label", id);
    List<FrameRow> rows = recipe.list("rows", RecipeReader::row);
    List<Still> stills = recipe.list("stills", RecipeReader::still);
    Map<String, Integer> measured = measured(recipe);
    return new Recipe(
        id,
        label,
        rows,
        stills,
        recipe.get().number("exposureSeconds"),
        recipe.get().whole("focusBrackets"),
        recipe.get().constant("lighting", Lighting.class),
        setups.request(recipe, "setup"),
        recipe.words("equipment"),
        crew.skills(recipe, "skills"),
        recipe.get().flag("attended"),
        recipe.get().whole("backgroundMarginMm"),
        measured);
  }

  private static FrameRow row(Cursor row) {
    return new FrameRow(
        row.get().number("elevationDeg"),
        row.get().whole("frames"),
        row.get().number("sweepDeg"),
        row.get().flag("turning"));
  }

  private static Still still(Cursor still) {
    return new Still(still.get().number("elevationDeg"), still.get().number("angleDeg"));
  }

  private Map<String, Integer> measured(Cursor recipe) {
    Cursor seconds = recipe.freeObject("measuredCaptureSeconds");
    Map<String, Integer> read = new TreeMap<>();
    Set<String> rigs = names.rigs();
    for (String rig : seconds.names()) {
      if (rigs != null && !rigs.contains(rig)) {
        seconds.refuse(rig, "unknown rig", "rigs: " + Words.choice(rigs, rig));
      }
      Integer measured = seconds.get().wholeOrNull(rig);
      if (measured != null) {
        read.put(rig, measured);
      }
    }
    return read;
  }

  List<ItemSetupRule> itemSetups(Cursor floor) {
    return floor.list("itemSetups", this::itemSetup);
  }

  private ItemSetupRule itemSetup(Cursor rule) {
    return new ItemSetupRule(
        rule.get().textOrNull("finish"),
        rule.get().flagOrNull("hung"),
        rule.get().flagOrNull("powered"),
        setups.request(rule, "set"));
  }

  Handling handling(Cursor floor) {
    return floor.object("handling", this::handlingTimes);
  }

  private Handling handlingTimes(Cursor handling) {
    return new Handling(
        handling.get().whole("loadSeconds"),
        handling.get().whole("alignSeconds"),
        handling.get().whole("measureByHandSeconds"),
        handling.get().whole("hangSeconds"),
        handling.get().whole("powerSeconds"),
        handling.get().whole("holderSeconds"),
        handling.get().whole("unloadSeconds"),
        handling.get().whole("unhangSeconds"),
        handling.get().whole("unpowerSeconds"),
        crew.skills(handling, "loadSkills"),
        crew.skills(handling, "hangSkills"),
        crew.skills(handling, "powerSkills"));
  }

  Physics physics(Cursor floor) {
    return floor.object("physics", RecipeReader::figures);
  }

  private static Physics figures(Cursor physics) {
    return new Physics(
        physics.get().number("frictionCoefficient"),
        physics.get().number("safetyFactor"),
        physics.get().whole("placementOffsetMm"),
        physics.get().number("slowestTurnDegPerS"),
        physics.get().number("slowestTurnDegPerS2"),
        physics.get().number("swingLogDecrement"),
        physics.get().number("swingFraction"),
        physics.get().number("blurPixels"),
        physics.get().whole("topViewClearanceMm"),
        physics.object("lift", RecipeReader::lift));
  }

  private static LiftGeometry lift(Cursor lift) {
    return new LiftGeometry(
        lift.get().whole("originHeightMm"),
        lift.get().whole("horizontalMm"),
        lift.get().number("asymmetryDeg"),
        lift.get().number("liftsPerMinute"),
        lift.get().number("teamFactor"));
  }
}
