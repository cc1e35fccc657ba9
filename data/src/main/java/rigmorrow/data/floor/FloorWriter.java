package rigmorrow.data.floor;

import java.time.DayOfWeek;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import rigmorrow.data.json.Fields;
import rigmorrow.data.json.Scalars;
import rigmorrow.data.json.Trees;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.recipe.LiftGeometry;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.SetupAttribute;

/** Writes floor files; the same floor always gives the same text. */
public final class FloorWriter {
  private FloorWriter() {}

  /** The text of a floor file. */
  public static String write(Floor floor, Trees.Notation notation) {
    return Trees.write(tree(floor).node(), notation);
  }

  private static Fields tree(Floor floor) {
    return new Fields()
        .whole("version", FloorReader.VERSION)
        .text("name", floor.name())
        .text("zone", floor.zone().getId())
        .list("attributes", floor.attributes(), FloorWriter::attribute)
        .list("changeovers", floor.changeovers(), FloorWriter::changeover)
        .list("rigs", floor.rigs(), RigWriter::rig)
        .list("kits", floor.kits(), FloorWriter::kit)
        .list("fetches", floor.fetches(), FloorWriter::fetch)
        .list("crew", floor.crew(), FloorWriter::operator)
        .list("recipes", floor.recipes(), FloorWriter::recipe)
        .list("itemSetups", floor.itemSetups(), FloorWriter::itemSetup)
        .object("handling", handling(floor.handling()))
        .object("physics", physics(floor.physics()))
        .object("weights", weights(floor.weights()))
        .object("costs", costs(floor.costs()));
  }

  private static Fields attribute(SetupAttribute attribute) {
    return new Fields()
        .text("id", attribute.id())
        .text("label", attribute.label())
        .list("values", attribute.values(), FloorWriter::value);
  }

  private static Fields value(AttributeValue value) {
    return new Fields()
        .text("id", value.id())
        .text("label", value.label())
        .number("frictionCoefficient", value.frictionCoefficient())
        .words("refusedFinishes", value.refusedFinishes())
        .text("caution", value.caution());
  }

  private static Fields changeover(ChangeoverRule rule) {
    return new Fields()
        .text("attribute", rule.attribute())
        .text("from", rule.from())
        .text("to", rule.to())
        .words("rigs", rule.rigs())
        .whole("attendedSeconds", rule.attendedSeconds())
        .whole("unattendedSeconds", rule.unattendedSeconds())
        .whole("people", rule.people())
        .words("skills", rule.skills())
        .text("step", rule.step());
  }

  private static Fields kit(Kit kit) {
    return new Fields()
        .text("id", kit.id())
        .text("label", kit.label())
        .object("provides", RigWriter.equipment(kit.provides()))
        .list(
            "units",
            kit.units(),
            unit -> new Fields().text("id", unit.id()).text("place", unit.place()))
        .whole("alignSeconds", kit.alignSeconds())
        .whole("people", kit.people())
        .words("skills", kit.skills())
        .text("caution", kit.caution());
  }

  private static Fields fetch(FetchTime fetch) {
    return new Fields()
        .text("from", fetch.from())
        .text("to", fetch.to())
        .whole("seconds", fetch.seconds());
  }

  private static Fields operator(Operator operator) {
    return new Fields()
        .text("id", operator.id())
        .text("name", operator.name())
        .words("skills", operator.skills())
        .list("shifts", operator.shifts(), FloorWriter::hours)
        .list("breaks", operator.breaks(), FloorWriter::hours)
        .list("closed", operator.closed(), FloorWriter::closure);
  }

  static Fields hours(OpenHours hours) {
    List<String> days = new TreeSet<>(hours.days()).stream().map(FloorWriter::day).toList();
    return new Fields().texts("days", days).text("from", hours.from()).text("to", hours.to());
  }

  private static String day(DayOfWeek day) {
    return day.name().substring(0, 3);
  }

  static Fields closure(Closure closure) {
    return new Fields()
        .text("from", closure.from())
        .text("to", closure.to())
        .text("reason", closure.reason());
  }

  private static Fields recipe(Recipe recipe) {
    Fields measured = new Fields();
    new TreeMap<>(recipe.measuredCaptureSeconds()).forEach(measured::whole);
    return new Fields()
        .text("id", recipe.id())
        .text("label", recipe.label())
        .list("rows", recipe.rows(), FloorWriter::row)
        .list("stills", recipe.stills(), FloorWriter::still)
        .number("exposureSeconds", recipe.exposureSeconds())
        .whole("focusBrackets", recipe.focusBrackets())
        .text("lighting", Scalars.word(recipe.lighting()))
        .map("setup", recipe.setup().values())
        .words("equipment", recipe.equipment())
        .words("skills", recipe.skills())
        .flag("attended", recipe.attended())
        .whole("backgroundMarginMm", recipe.backgroundMarginMm())
        .object("measuredCaptureSeconds", measured);
  }

  private static Fields row(FrameRow row) {
    return new Fields()
        .number("elevationDeg", row.elevationDeg())
        .whole("frames", row.frames())
        .number("sweepDeg", row.sweepDeg())
        .flag("turning", row.turning());
  }

  private static Fields still(Still still) {
    return new Fields()
        .number("elevationDeg", still.elevationDeg())
        .number("angleDeg", still.angleDeg());
  }

  private static Fields itemSetup(ItemSetupRule rule) {
    return new Fields()
        .text("finish", rule.finish())
        .flag("hung", rule.hung())
        .flag("powered", rule.powered())
        .map("set", rule.set().values());
  }

  private static Fields handling(Handling handling) {
    return new Fields()
        .whole("loadSeconds", handling.loadSeconds())
        .whole("alignSeconds", handling.alignSeconds())
        .whole("measureByHandSeconds", handling.measureByHandSeconds())
        .whole("hangSeconds", handling.hangSeconds())
        .whole("powerSeconds", handling.powerSeconds())
        .whole("holderSeconds", handling.holderSeconds())
        .whole("unloadSeconds", handling.unloadSeconds())
        .whole("unhangSeconds", handling.unhangSeconds())
        .whole("unpowerSeconds", handling.unpowerSeconds())
        .words("loadSkills", handling.loadSkills())
        .words("hangSkills", handling.hangSkills())
        .words("powerSkills", handling.powerSkills());
  }

  private static Fields physics(Physics physics) {
    return new Fields()
        .number("frictionCoefficient", physics.frictionCoefficient())
        .number("safetyFactor", physics.safetyFactor())
        .whole("placementOffsetMm", physics.placementOffsetMm())
        .number("slowestTurnDegPerS", physics.slowestTurnDegPerS())
        .number("slowestTurnDegPerS2", physics.slowestTurnDegPerS2())
        .number("swingLogDecrement", physics.swingLogDecrement())
        .number("swingFraction", physics.swingFraction())
        .number("blurPixels", physics.blurPixels())
        .whole("topViewClearanceMm", physics.topViewClearanceMm())
        .object("lift", lift(physics.lift()));
  }

  private static Fields lift(LiftGeometry lift) {
    return new Fields()
        .whole("originHeightMm", lift.originHeightMm())
        .whole("horizontalMm", lift.horizontalMm())
        .number("asymmetryDeg", lift.asymmetryDeg())
        .number("liftsPerMinute", lift.liftsPerMinute())
        .number("teamFactor", lift.teamFactor());
  }

  private static Fields weights(Weights weights) {
    return new Fields()
        .whole("latenessPerMinute", weights.latenessPerMinute())
        .whole("changeoverPerMinute", weights.changeoverPerMinute())
        .whole("finishingPerMinute", weights.finishingPerMinute())
        .whole("mustFactor", weights.mustFactor());
  }

  private static Fields costs(Costs costs) {
    return new Fields()
        .text("currency", costs.currency())
        .number("operatorPerHour", costs.operatorPerHour())
        .number("overtimeFactor", costs.overtimeFactor())
        .number("rigPerHour", costs.rigPerHour())
        .number("latePerHour", costs.latePerHour())
        .number("leftOutPerJob", costs.leftOutPerJob());
  }
}
