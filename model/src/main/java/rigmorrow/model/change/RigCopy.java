package rigmorrow.model.change;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;

/** Rigs that differ in one thing. */
final class RigCopy {
  private RigCopy() {}

  /** A new rig like another: no dated closures, a new plate ring. */
  static Rig fresh(Rig rig, String id, String name) {
    PlateRing ring = rig.ring();
    PlateRing unused =
        ring == null
            ? null
            : new PlateRing(ring.serviceEveryTurns(), 0, ring.serviceSeconds(), ring.skills());
    return copy(rig, id, name, rig.camera(), rig.open(), List.of(), unused);
  }

  /** The rig with other hours. */
  static Rig open(Rig rig, List<OpenHours> open) {
    return copy(rig, rig.id(), rig.name(), rig.camera(), open, rig.closed(), rig.ring());
  }

  /** The rig with strobes that take another time. */
  static Rig strobes(Rig rig, double recycleSeconds) {
    CameraReach camera = rig.camera();
    CameraReach other =
        new CameraReach(
            camera.armLowMm(),
            camera.armHighMm(),
            camera.maxElevationDeg(),
            camera.backgroundWidthMm(),
            camera.cameraWriteSeconds(),
            recycleSeconds,
            camera.continuousLight(),
            camera.pixelsPerMm());
    return copy(rig, rig.id(), rig.name(), other, rig.open(), rig.closed(), rig.ring());
  }

  private static Rig copy(
      Rig rig,
      String id,
      String name,
      CameraReach camera,
      List<OpenHours> open,
      List<Closure> closed,
      @Nullable PlateRing ring) {
    return new Rig(
        id,
        name,
        rig.kind(),
        rig.size(),
        camera,
        rig.plate(),
        rig.arm(),
        rig.fitted(),
        rig.takesKit(),
        rig.offers(),
        rig.initialSetup(),
        rig.changeoverFactor(),
        rig.twoStepsAtOnce(),
        rig.captureFactors(),
        open,
        closed,
        ring,
        rig.cautions());
  }
}
