package rigmorrow.data.floor;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Range;
import rigmorrow.data.problem.Words;
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
    floor.atMost("rigs", Bounds.MOST_RIGS);
    return floor.list("rigs", "rig", 1, rig -> rig(rig, seen));
  }

  private Rig rig(Cursor rig, Set<String> seen) {
    String id = rig.get().unique("id", seen);
    String name = rig.get().text("name", id);
    String kind = rig.get().text("kind", "rig");
    PlateSize size = rig.object("size", "size", RigReader::size);
    CameraReach camera = rig.object("camera", "camera", RigReader::camera);
    AxisLimits plate = rig.object("plate", "axis", RigReader::axis);
    AxisLimits arm = rig.object("arm", "axis", RigReader::axis);
    Map<String, Set<String>> offers = setups.offers(rig);
    return new Rig(
        id,
        name,
        kind,
        size,
        camera,
        plate,
        arm,
        rig.list("fitted", "equipment", 0, CrewReader::equipment),
        rig.references("takesKit", names.kits(), "kit"),
        offers,
        setups.state(rig, "initialSetup", offers),
        rig.get().number("changeoverFactor", Bounds.FACTOR, 1),
        rig.get().flag("twoStepsAtOnce", false),
        captureFactors(rig),
        crew.hours(rig, "open", 1),
        crew.closures(rig),
        rig.optionalObject("ring", "ring", this::ring),
        rig.texts("cautions"));
  }

  private static PlateSize size(Cursor size) {
    int before = size.reading().problems().count();
    int plateDiameterMm = size.get().whole("plateDiameterMm", Bounds.SIZE_MM);
    if (size.reading().problems().count() > before) {
      plateDiameterMm = (int) Bounds.SIZE_MM.high();
    }
    int mostMarginMm = (plateDiameterMm - 1) / 2;
    return new PlateSize(
        plateDiameterMm,
        size.get().whole("edgeMarginMm", Range.of(0, mostMarginMm), 0),
        size.get().whole("clearDiameterMm", Bounds.SIZE_MM),
        size.get().number("platePayloadKg", Bounds.MASS_KG),
        size.get().number("hangingPayloadKg", Bounds.SOME_MASS_KG, 0),
        size.get().whole("itemHeightMm", Bounds.SIZE_MM),
        size.get().whole("plateHeightMm", Bounds.DISTANCE_MM));
  }

  private static CameraReach camera(Cursor camera) {
    int armLowMm = camera.get().whole("armLowMm", Range.of(-10_000, 100_000));
    return new CameraReach(
        armLowMm,
        camera.get().whole("armHighMm", Range.of(armLowMm, 100_000)),
        camera.get().number("maxElevationDeg", Bounds.ELEVATION_DEG),
        camera.get().whole("backgroundWidthMm", Bounds.SIZE_MM),
        camera.get().number("cameraWriteSeconds", Bounds.SECONDS),
        camera.get().numberOrNull("strobeRecycleSeconds", Bounds.SECONDS),
        camera.get().flag("continuousLight", false),
        camera.get().number("pixelsPerMm", Bounds.RATE));
  }

  private static AxisLimits axis(Cursor axis) {
    return new AxisLimits(
        axis.get().number("speedDegPerS", Bounds.RATE),
        axis.get().number("accelerationDegPerS2", Bounds.RATE),
        axis.get().number("jerkDegPerS3", Bounds.RATE),
        axis.get().number("settleSeconds", Bounds.SECONDS));
  }

  private PlateRing ring(Cursor ring) {
    return new PlateRing(
        ring.get().whole("serviceEveryTurns", Bounds.COUNT),
        ring.get().whole("turnsSinceService", Range.of(0, 1_000_000_000), 0),
        ring.get().whole("serviceSeconds", Bounds.SECONDS),
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
      Double factor = factors.get().numberOrNull(recipe, Bounds.FACTOR);
      if (factor != null) {
        read.put(recipe, factor);
      }
    }
    return read;
  }
}
