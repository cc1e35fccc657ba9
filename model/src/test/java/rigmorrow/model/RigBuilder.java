package rigmorrow.model;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.Setup;

/**
 * Builds rigs for tests; each call replaces one part. To begin with: a plate of 850 mm for 40 kg,
 * strobes and continuous light, open 07:00 to 18:00, white, soft and matt.
 */
public final class RigBuilder {
  private final String id;
  private PlateSize size = new PlateSize(850, 25, 1000, 40, 20, 1200, 800);
  private CameraReach camera = new CameraReach(0, 1500, 60, 2000, 0.5, 0.55, true, 5);
  private AxisLimits plate = new AxisLimits(180, 360, 3600, 0.1);
  private AxisLimits arm = new AxisLimits(20, 20, 100, 0.5);
  private List<Equipment> fitted = List.of();
  private Set<String> takesKit = Set.of("head");
  private Map<String, Set<String>> offers = Map.of();
  private Setup initialSetup = FloorFixtures.whiteSoftMatt();
  private double changeoverFactor = 1;
  private boolean twoStepsAtOnce;
  private Map<String, Double> captureFactors = Map.of();
  private List<OpenHours> open = List.of(FloorFixtures.hours("07:00", "18:00"));
  private List<Closure> closed = List.of();
  private @Nullable PlateRing ring;

  public RigBuilder(String id) {
    this.id = id;
  }

  public RigBuilder size(PlateSize other) {
    size = other;
    return this;
  }

  public RigBuilder camera(CameraReach other) {
    camera = other;
    return this;
  }

  public RigBuilder plate(AxisLimits other) {
    plate = other;
    return this;
  }

  public RigBuilder arm(AxisLimits other) {
    arm = other;
    return this;
  }

  public RigBuilder fitted(Equipment... others) {
    fitted = List.of(others);
    return this;
  }

  public RigBuilder takesKit(String... kits) {
    takesKit = Set.of(kits);
    return this;
  }

  public RigBuilder offers(Map<String, Set<String>> others) {
    offers = others;
    return this;
  }

  public RigBuilder initialSetup(Setup other) {
    initialSetup = other;
    return this;
  }

  public RigBuilder changeoverFactor(double factor) {
    changeoverFactor = factor;
    return this;
  }

  public RigBuilder twoStepsAtOnce(boolean two) {
    twoStepsAtOnce = two;
    return this;
  }

  public RigBuilder captureFactors(Map<String, Double> factors) {
    captureFactors = factors;
    return this;
  }

  public RigBuilder open(OpenHours... hours) {
    open = List.of(hours);
    return this;
  }

  public RigBuilder closed(Closure... closures) {
    closed = List.of(closures);
    return this;
  }

  public RigBuilder ring(@Nullable PlateRing other) {
    ring = other;
    return this;
  }

  public Rig build() {
    return new Rig(
        id,
        id,
        "turntable",
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
        closed,
        ring,
        List.of());
  }
}
