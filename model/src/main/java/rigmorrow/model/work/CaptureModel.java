package rigmorrow.model.work;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.motion.DoubleSProfile;
import rigmorrow.model.motion.ItemLimits;
import rigmorrow.model.motion.LogDecrement;
import rigmorrow.model.motion.MotionBlur;
import rigmorrow.model.motion.MoveLimits;
import rigmorrow.model.motion.Pendulum;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.Item;

/**
 * How long the pictures of one job take on one rig.
 *
 * <p>A frame of a stop-and-go row takes its exposures, then the longest of: the camera writes, the
 * strobes recycle, the plate turns one step and everything settles. A row shot while turning takes
 * its sweep at the slowest of: the plate's limit, the item's limit, the blur limit and the speed at
 * which the camera and strobes just keep up; the run-up and run-down come on top. The moves are
 * double-S profiles (Biagiotti and Melchiorri 2008, section 3.4); sliding and tipping follow from
 * Newton's second law for the resultant acceleration; the swing of what hangs decays as a damped
 * pendulum (log decrement).
 */
final class CaptureModel {
  private final Physics physics;
  private final Rig rig;
  private final Recipe recipe;
  private final Item item;
  private final MoveLimits plate;
  private final String plateLimit;
  private final MoveLimits arm;
  private final List<TimeTerm> terms = new ArrayList<>();
  private double turnedDeg;

  CaptureModel(Floor floor, Rig rig, Recipe recipe, Item item, @Nullable ItemLimits itemLimits) {
    this.physics = floor.physics();
    this.rig = rig;
    this.recipe = recipe;
    this.item = item;
    MoveLimits machine = radians(rig.plate());
    MoveLimits both = machine;
    if (itemLimits != null) {
      both = machine.tightestWith(itemLimits.turnLimits(offsetMm(item, physics)));
    }
    this.plate = both;
    this.plateLimit = both.equals(machine) ? "plate" : "item may slide or tip";
    this.arm =
        new MoveLimits(
            rig.arm().speedDegPerS(), rig.arm().accelerationDegPerS2(), rig.arm().jerkDegPerS3());
  }

  /** The terms in the order they happen. */
  List<TimeTerm> terms() {
    double elevation = 0;
    for (FrameRow row : recipe.rows()) {
      elevation = moveArm(elevation, row.elevationDeg());
      if (row.turning()) {
        turningRow(row);
      } else {
        stopAndGoRow(row);
      }
    }
    double angle = 0;
    for (Still still : recipe.stills()) {
      elevation = moveArm(elevation, still.elevationDeg());
      still(Math.abs(still.angleDeg() - angle));
      angle = still.angleDeg();
    }
    return List.copyOf(terms);
  }

  /** Plate turns of the whole capture; call after {@link #terms()}. */
  double turns() {
    return turnedDeg / 360;
  }

  /** Distance of the centre of mass from the plate's centre, at least 1 mm. */
  static double offsetMm(Item item, Physics physics) {
    int offset = item.offsetMm() == null ? physics.placementOffsetMm() : item.offsetMm();
    return Math.max(1, offset);
  }

  private double moveArm(double fromDeg, double toDeg) {
    if (fromDeg != toDeg) {
      double distance = Math.abs(toDeg - fromDeg);
      double move = DoubleSProfile.restToRest(distance, arm).durationSeconds();
      add(
          "arm from " + deg(fromDeg) + " to " + deg(toDeg),
          move + rig.arm().settleSeconds(),
          "double-S move %.2f s + settle %.2f s",
          move,
          rig.arm().settleSeconds());
    }
    return toDeg;
  }

  private void stopAndGoRow(FrameRow row) {
    double stepDeg = row.sweepDeg() / row.frames();
    double turn = DoubleSProfile.restToRest(Math.toRadians(stepDeg), plate).durationSeconds();
    double settle = settleSeconds();
    double cycle = exposuresSeconds() + Math.max(turn + settle, gapSeconds());
    turnedDeg += row.sweepDeg();
    add(
        row.frames() + " frames at " + deg(row.elevationDeg()) + ", stop and go",
        row.frames() * cycle,
        "%d x (exposures %.2f s + longest of camera %.2f s, strobe %.2f s, "
            + "turn %.1f deg %.2f s + settle %.2f s; limited by %s)",
        row.frames(),
        exposuresSeconds(),
        rig.camera().cameraWriteSeconds(),
        recycleSeconds(),
        stepDeg,
        turn,
        settle,
        plateLimit);
  }

  private void turningRow(FrameRow row) {
    double interval = recipe.exposureSeconds() + gapSeconds();
    double sweep = Math.toRadians(row.sweepDeg());
    double speed = plate.speed();
    String limit = plateLimit;
    double pace = interval > 0 ? sweep / (row.frames() * interval) : Double.POSITIVE_INFINITY;
    if (pace < speed) {
      speed = pace;
      limit = recycleSeconds() > rig.camera().cameraWriteSeconds() ? "strobe" : "camera";
    }
    double blur = blurSpeed();
    if (blur < speed) {
      speed = blur;
      limit = "motion blur";
    }
    MoveLimits at = new MoveLimits(speed, plate.acceleration(), plate.jerk());
    DoubleSProfile runUp = DoubleSProfile.restToRest(1e6, at);
    double ramps = runUp.accelerationSeconds() + runUp.decelerationSeconds();
    double once = ramps + sweep / speed + settleSeconds();
    turnedDeg += recipe.focusBrackets() * (row.sweepDeg() + Math.toDegrees(speed) * ramps / 2);
    add(
        row.frames() + " frames at " + deg(row.elevationDeg()) + " while turning",
        recipe.focusBrackets() * once,
        "%d x (sweep %.0f deg at %.1f deg/s = %.2f s + run-up and run-down %.2f s + settle "
            + "%.2f s; speed limited by %s)",
        recipe.focusBrackets(),
        row.sweepDeg(),
        Math.toDegrees(speed),
        sweep / speed,
        ramps,
        settleSeconds(),
        limit);
  }

  private void still(double turnDeg) {
    double turn = DoubleSProfile.restToRest(Math.toRadians(turnDeg), plate).durationSeconds();
    double settle = turnDeg > 0 ? settleSeconds() : 0;
    turnedDeg += turnDeg;
    add(
        "still",
        exposuresSeconds() + Math.max(turn + settle, gapSeconds()),
        "exposures %.2f s + longest of camera and strobe %.2f s, turn %.0f deg %.2f s + "
            + "settle %.2f s",
        exposuresSeconds(),
        gapSeconds(),
        turnDeg,
        turn,
        settle);
  }

  /** All exposures of one picture with the pauses between focus brackets. */
  private double exposuresSeconds() {
    int brackets = recipe.focusBrackets();
    return brackets * recipe.exposureSeconds() + (brackets - 1) * gapSeconds();
  }

  /**
   * From the end of an exposure to the start of the next: the camera writes, the strobes recycle.
   */
  private double gapSeconds() {
    return Math.max(rig.camera().cameraWriteSeconds(), recycleSeconds());
  }

  private double recycleSeconds() {
    Double recycle = rig.camera().strobeRecycleSeconds();
    return recycle == null || recipe.lighting() == Lighting.CONTINUOUS ? 0 : recycle;
  }

  private double settleSeconds() {
    Hanging hanging = item.hanging();
    if (hanging == null) {
      return rig.plate().settleSeconds();
    }
    Pendulum pendulum =
        new Pendulum(hanging.dropMm(), LogDecrement.toDampingRatio(physics.swingLogDecrement()));
    return Math.max(
        rig.plate().settleSeconds(), pendulum.secondsToDecayTo(physics.swingFraction()));
  }

  private double blurSpeed() {
    if (recipe.exposureSeconds() == 0) {
      return Double.POSITIVE_INFINITY;
    }
    CameraReach camera = rig.camera();
    return MotionBlur.maximumTurnRadPerSecond(
        physics.blurPixels(),
        camera.pixelsPerMm(),
        recipe.exposureSeconds(),
        ItemGeometry.of(item).sweptDiameterMm() / 2);
  }

  private static MoveLimits radians(AxisLimits axis) {
    return new MoveLimits(
        Math.toRadians(axis.speedDegPerS()),
        Math.toRadians(axis.accelerationDegPerS2()),
        Math.toRadians(axis.jerkDegPerS3()));
  }

  private void add(String label, double seconds, String pattern, Object... values) {
    terms.add(new TimeTerm("capture", label, seconds, pattern, List.of(values)));
  }

  private static String deg(double value) {
    return Math.round(value) + " deg";
  }
}
