package rigmorrow.model.floor;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;
import rigmorrow.model.setup.Setup;

/**
 * One photo machine with its plate, arm and lights: the thing a job is assigned to.
 *
 * @param id unique on the floor
 * @param name what people call it
 * @param kind what sort of rig it is, in the studio's own words
 * @param size the room it has for an item
 * @param camera what its camera, arm and lights can do
 * @param plate limits of the turning plate
 * @param arm limits of the camera arm
 * @param fitted equipment that stays on the rig
 * @param takesKit ids of the kit that can be mounted on it
 * @param offers value ids the rig can be set up for, by attribute id; an attribute that is not
 *     named takes every value
 * @param initialSetup the state it is in when the plan starts; every attribute of the floor
 * @param changeoverFactor scales the hands-on time of every changeover step, above 0
 * @param twoStepsAtOnce true when two people may share a changeover
 * @param captureFactors scales capture time by recipe id, above 0; 1 where a recipe is missing
 * @param open working hours, at least one
 * @param closed dated closures: service, repair
 * @param ring the plate ring's wear; null when it is not counted
 * @param cautions what the crew must mind at this rig
 */
public record Rig(
    String id,
    String name,
    String kind,
    PlateSize size,
    CameraReach camera,
    AxisLimits plate,
    AxisLimits arm,
    List<Equipment> fitted,
    Set<String> takesKit,
    Map<String, Set<String>> offers,
    Setup initialSetup,
    double changeoverFactor,
    boolean twoStepsAtOnce,
    Map<String, Double> captureFactors,
    List<OpenHours> open,
    List<Closure> closed,
    @Nullable PlateRing ring,
    List<String> cautions) {
  public Rig {
    Require.text("rig.id", id);
    Require.text("rig.name", name);
    Require.text("rig.kind", kind);
    fitted = List.copyOf(fitted);
    takesKit = Set.copyOf(takesKit);
    Map<String, Set<String>> offersCopy = new TreeMap<>();
    offers.forEach((attribute, values) -> offersCopy.put(attribute, Set.copyOf(values)));
    offers = Map.copyOf(offersCopy);
    Require.positive("rig.changeoverFactor", changeoverFactor);
    captureFactors = Map.copyOf(captureFactors);
    captureFactors.forEach(
        (recipe, factor) -> Require.positive("rig.captureFactors[" + recipe + "]", factor));
    open = List.copyOf(open);
    Require.that(!open.isEmpty(), "rig.open", "empty", "at least one span of working hours");
    closed = List.copyOf(closed);
    cautions = List.copyOf(cautions);
  }

  /** The same rig with other equipment. */
  public Rig withFitted(List<Equipment> other) {
    return new Rig(
        id,
        name,
        kind,
        size,
        camera,
        plate,
        arm,
        other,
        takesKit,
        offers,
        initialSetup,
        changeoverFactor,
        twoStepsAtOnce,
        captureFactors,
        open,
        closed,
        ring,
        cautions);
  }

  /** The same rig with other closures. */
  public Rig withClosed(List<Closure> other) {
    return new Rig(
        id,
        name,
        kind,
        size,
        camera,
        plate,
        arm,
        fitted,
        takesKit,
        offers,
        initialSetup,
        changeoverFactor,
        twoStepsAtOnce,
        captureFactors,
        open,
        other,
        ring,
        cautions);
  }

  /** The fitted equipment of a kind, if there is any. */
  public Optional<Equipment> fitted(String kindOfEquipment) {
    return fitted.stream().filter(item -> item.kind().equals(kindOfEquipment)).findFirst();
  }

  /** True when the rig can be set up with that value. */
  public boolean offers(String attribute, String value) {
    Set<String> values = offers.get(attribute);
    return values == null || values.contains(value);
  }

  /** The factor on the computed capture time of a recipe, 1 when none was given or learned. */
  public double captureFactor(String recipeId) {
    return captureFactors.getOrDefault(recipeId, 1.0);
  }
}
