package rigmorrow.data.floor;

import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.json.Fields;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.floor.Rig;

/** Writes rigs. */
final class RigWriter {
  private RigWriter() {}

  static Fields rig(Rig rig) {
    Fields offers = new Fields();
    new TreeMap<>(rig.offers()).forEach(offers::words);
    Fields captureFactors = new Fields();
    new TreeMap<>(rig.captureFactors()).forEach(captureFactors::number);
    return new Fields()
        .text("id", rig.id())
        .text("name", rig.name())
        .text("kind", rig.kind())
        .object("size", size(rig.size()))
        .object("camera", camera(rig.camera()))
        .object("plate", axis(rig.plate()))
        .object("arm", axis(rig.arm()))
        .list("fitted", rig.fitted(), RigWriter::equipment)
        .words("takesKit", rig.takesKit())
        .object("offers", offers)
        .map("initialSetup", rig.initialSetup().values())
        .number("changeoverFactor", rig.changeoverFactor())
        .flag("twoStepsAtOnce", rig.twoStepsAtOnce())
        .object("captureFactors", captureFactors)
        .list("open", rig.open(), FloorWriter::hours)
        .list("closed", rig.closed(), FloorWriter::closure)
        .object("ring", ring(rig.ring()))
        .texts("cautions", rig.cautions());
  }

  private static Fields size(PlateSize size) {
    return new Fields()
        .whole("plateDiameterMm", size.plateDiameterMm())
        .whole("edgeMarginMm", size.edgeMarginMm())
        .whole("clearDiameterMm", size.clearDiameterMm())
        .number("platePayloadKg", size.platePayloadKg())
        .number("hangingPayloadKg", size.hangingPayloadKg())
        .whole("itemHeightMm", size.itemHeightMm())
        .whole("plateHeightMm", size.plateHeightMm());
  }

  private static Fields camera(CameraReach camera) {
    return new Fields()
        .whole("armLowMm", camera.armLowMm())
        .whole("armHighMm", camera.armHighMm())
        .number("maxElevationDeg", camera.maxElevationDeg())
        .whole("backgroundWidthMm", camera.backgroundWidthMm())
        .number("cameraWriteSeconds", camera.cameraWriteSeconds())
        .number("strobeRecycleSeconds", camera.strobeRecycleSeconds())
        .flag("continuousLight", camera.continuousLight())
        .number("pixelsPerMm", camera.pixelsPerMm());
  }

  private static Fields axis(AxisLimits axis) {
    return new Fields()
        .number("speedDegPerS", axis.speedDegPerS())
        .number("accelerationDegPerS2", axis.accelerationDegPerS2())
        .number("jerkDegPerS3", axis.jerkDegPerS3())
        .number("settleSeconds", axis.settleSeconds());
  }

  static Fields equipment(Equipment equipment) {
    return new Fields()
        .text("kind", equipment.kind())
        .number("hangingPayloadKg", equipment.hangingPayloadKg())
        .whole("dropMm", equipment.dropMm())
        .whole("volts", equipment.volts())
        .whole("watts", equipment.watts())
        .text("plugs", equipment.plugs())
        .whole("heightMm", equipment.heightMm());
  }

  private static @Nullable Fields ring(@Nullable PlateRing ring) {
    return ring == null
        ? null
        : new Fields()
            .whole("serviceEveryTurns", ring.serviceEveryTurns())
            .whole("turnsSinceService", ring.turnsSinceService())
            .whole("serviceSeconds", ring.serviceSeconds())
            .words("skills", ring.skills());
  }
}
