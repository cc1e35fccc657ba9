package rigmorrow.data.floor;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Range;
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
    return floor.list("recipes", "recipe", 1, recipe -> recipe(recipe, seen));
  }

  private Recipe recipe(Cursor recipe, Set<String> seen) {
    String id = recipe.get().unique("id", seen);
    String label = recipe.get().text("label", id);
    int before = recipe.reading().problems().count();
    List<FrameRow> rows = recipe.list("rows", "row", 0, RecipeReader::row);
    List<Still> stills = recipe.list("stills", "still", 0, RecipeReader::still);
    Map<String, Integer> measured = measured(recipe);
    boolean nothing = rows.isEmpty() && stills.isEmpty() && measured.isEmpty();
    if (nothing && recipe.reading().problems().count() == before) {
      recipe.refuse("rows", "rows, stills or measuredCaptureSeconds");
    }
    Lighting lighting = recipe.get().constantOrNull("lighting", Lighting.class);
    return new Recipe(
        id,
        label,
        rows,
        stills,
        recipe.get().number("exposureSeconds", Bounds.SECONDS),
        recipe.get().whole("focusBrackets", Range.of(1, 1_000), 1),
        lighting == null ? Lighting.EITHER : lighting,
        setups.request(recipe, "setup"),
        recipe.words("equipment"),
        crew.skills(recipe, "skills"),
        recipe.get().flag("attended", false),
        recipe.get().whole("backgroundMarginMm", Bounds.DISTANCE_MM, 0),
        measured);
  }

  private static FrameRow row(Cursor row) {
    return new FrameRow(
        row.get().number("elevationDeg", Bounds.ELEVATION_DEG),
        row.get().whole("frames", Range.of(1, 100_000)),
        row.get().number("sweepDeg", Range.above(0, 360), 360),
        row.get().flag("turning", false));
  }

  private static Still still(Cursor still) {
    return new Still(
        still.get().number("elevationDeg", Bounds.ELEVATION_DEG),
        still.get().number("angleDeg", Bounds.ANGLE_DEG, 0));
  }

  private Map<String, Integer> measured(Cursor recipe) {
    Cursor seconds = recipe.freeObject("measuredCaptureSeconds");
    Map<String, Integer> read = new TreeMap<>();
    Set<String> rigs = names.rigs();
    for (String rig : seconds.names()) {
      if (rigs != null && !rigs.contains(rig)) {
        seconds.refuse(rig, "unknown rig", "rigs: " + Words.choice(rigs, rig));
      }
      Integer measured = seconds.get().wholeOrNull(rig, Bounds.SECONDS);
      if (measured != null) {
        read.put(rig, measured);
      }
    }
    return read;
  }

  List<ItemSetupRule> itemSetups(Cursor floor) {
    return floor.list("itemSetups", "itemSetup", 0, this::itemSetup);
  }

  private ItemSetupRule itemSetup(Cursor rule) {
    if (!rule.has("finish") && !rule.has("hung") && !rule.has("powered")) {
      rule.refuse("finish", "at least one of finish, hung and powered");
    }
    return new ItemSetupRule(
        rule.get().textOrNull("finish"),
        rule.get().flagOrNull("hung"),
        rule.get().flagOrNull("powered"),
        setups.request(rule, "set"));
  }

  Handling handling(Cursor floor) {
    return floor.object("handling", "handling", this::handlingTimes);
  }

  private Handling handlingTimes(Cursor handling) {
    return new Handling(
        handling.get().whole("loadSeconds", Bounds.SECONDS),
        handling.get().whole("alignSeconds", Bounds.SECONDS),
        handling.get().whole("measureByHandSeconds", Bounds.SECONDS),
        handling.get().whole("hangSeconds", Bounds.SECONDS),
        handling.get().whole("powerSeconds", Bounds.SECONDS),
        handling.get().whole("holderSeconds", Bounds.SECONDS),
        handling.get().whole("unloadSeconds", Bounds.SECONDS),
        handling.get().whole("unhangSeconds", Bounds.SECONDS),
        handling.get().whole("unpowerSeconds", Bounds.SECONDS),
        crew.skills(handling, "loadSkills"),
        crew.skills(handling, "hangSkills"),
        crew.skills(handling, "powerSkills"));
  }

  Physics physics(Cursor floor) {
    return floor.object("physics", "physics", RecipeReader::figures);
  }

  private static Physics figures(Cursor physics) {
    return new Physics(
        physics.get().number("frictionCoefficient", Bounds.FACTOR),
        physics.get().number("safetyFactor", Range.of(1, 1_000)),
        physics.get().whole("placementOffsetMm", Bounds.DISTANCE_MM),
        physics.get().number("slowestTurnDegPerS", Bounds.RATE),
        physics.get().number("slowestTurnDegPerS2", Bounds.RATE),
        physics.get().number("swingLogDecrement", Bounds.FACTOR),
        physics.get().number("swingFraction", Range.between(0, 1)),
        physics.get().number("blurPixels", Bounds.FACTOR),
        physics.get().whole("topViewClearanceMm", Bounds.DISTANCE_MM),
        physics.object("lift", "lift", RecipeReader::lift));
  }

  private static LiftGeometry lift(Cursor lift) {
    return new LiftGeometry(
        lift.get().whole("originHeightMm", Bounds.DISTANCE_MM),
        lift.get().whole("horizontalMm", Bounds.DISTANCE_MM),
        lift.get().number("asymmetryDeg", Range.of(0, 135)),
        lift.get().number("liftsPerMinute", Range.of(0, 60)),
        lift.get().number("teamFactor", Range.of(1, 10)));
  }
}
