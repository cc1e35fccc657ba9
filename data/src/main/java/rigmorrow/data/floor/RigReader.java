package rigmorrow.data.floor;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.problem.Words;
import rigmorrow.data.schema.Shape;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.floor.Rig;

/** Reads rigs. */
final class RigReader {
  private final FloorNames names;
  private final SetupReader setups;
  private final CrewReader crew;

  RigReader(FloorNames names, SetupReader setups, CrewReader crew) {
    this.names = names;
    this.setups = setups;
    this.crew = crew;
  }

  List<Rig> rigs(Cursor floor) {
    Set<String> seen = FloorReader.seen();
    return floor.list("rigs", rig -> rig(rig, seen));
  }

  Rig rig(Cursor rig, Set<String> seen) {
    String id = rig.get().unique("id", seen);
    String name = rig.get().text("name", id);
    String kind = rig.get().text("kind");
    PlateSize size = rig.object("size", RigReader::size);
    CameraReach camera = rig.object("camera", RigReader::camera);
    AxisLimits plate = rig.object("plate", RigReader::axis);
    AxisLimits arm = rig.object("arm", RigReader::axis);
    Map<String, Set<String>> offers = setups.offers(rig);
    return new Rig(
        id,
        name,
        kind,
        size,
        camera,
        plate,
        arm,
        rig.list("fitted", CrewReader::equipment),
        rig.references("takesKit", names.kits(), "kit"),
        offers,
        setups.state(rig, "initialSetup", offers),
        rig.get().number("changeoverFactor"),
        rig.get().flag("twoStepsAtOnce"),
        captureFactors(rig),
        crew.hours(rig, "open"),
        crew.closures(rig),
        rig.optionalObject("ring", this::ring),
        rig.texts("cautions"));
  }

  private static PlateSize size(Cursor size) {
    int plateDiameterMm = size.get().whole("plateDiameterMm");
    int edgeMarginMm = size.get().whole("edgeMarginMm");
    int mostMarginMm = (plateDiameterMm - 1) / 2;
    if (edgeMarginMm > mostMarginMm) {
      if (size.sound("plateDiameterMm", "edgeMarginMm")) {
        Shape margin = size.shape("edgeMarginMm");
        size.refuse("edgeMarginMm", margin.accepted(margin.range().to(mostMarginMm)));
      }
      edgeMarginMm = 0;
    }
    return new PlateSize(
        plateDiameterMm,
        edgeMarginMm,
        size.get().whole("clearDiameterMm"),
        size.get().number("platePayloadKg"),
        size.get().number("hangingPayloadKg"),
        size.get().whole("itemHeightMm"),
        size.get().whole("plateHeightMm"));
  }

  private static CameraReach camera(Cursor camera) {
    int armLowMm = camera.get().whole("armLowMm");
    int armHighMm = camera.get().whole("armHighMm");
    if (armHighMm < armLowMm) {
      if (camera.sound("armLowMm", "armHighMm")) {
        Shape high = camera.shape("armHighMm");
        camera.refuse("armHighMm", high.accepted(high.range().from(armLowMm)));
      }
      armHighMm = armLowMm;
    }
    return new CameraReach(
        armLowMm,
        armHighMm,
        camera.get().number("maxElevationDeg"),
        camera.get().whole("backgroundWidthMm"),
        camera.get().number("cameraWriteSeconds"),
        camera.get().numberOrNull("strobeRecycleSeconds"),
        camera.get().flag("continuousLight"),
        camera.get().number("pixelsPerMm"));
  }

  private static AxisLimits axis(Cursor axis) {
    return new AxisLimits(
        axis.get().number("speedDegPerS"),
        axis.get().number("accelerationDegPerS2"),
        axis.get().number("jerkDegPerS3"),
        axis.get().number("settleSeconds"));
  }

  private PlateRing ring(Cursor ring) {
    return new PlateRing(
        ring.get().whole("serviceEveryTurns"),
        ring.get().whole("turnsSinceService"),
        ring.get().whole("serviceSeconds"),
        crew.skills(ring, "skills"));
  }

  private Map<String, Double> captureFactors(Cursor rig) {
    Cursor factors = rig.freeObject("captureFactors");
    Map<String, Double> read = new TreeMap<>();
    Set<String> recipes = names.recipes();
    for (String recipe : factors.names()) {
      if (recipes != null && !recipes.contains(recipe)) {
        factors.refuse(recipe, "unknown recipe", "recipes: " + Words.choice(recipes, recipe));
      }
      Double factor = factors.get().numberOrNull(recipe);
      if (factor != null) {
        read.put(recipe, factor);
      }
    }
    return read;
  }
}
