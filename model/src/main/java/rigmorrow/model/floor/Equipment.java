package rigmorrow.model.floor;

import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * Something a rig can do with the right gear, fitted for good or brought as kit. The kinds below
 * carry figures that the fit check reads; any other kind is just there or not.
 *
 * @param kind what it is, such as {@link #ROTATOR} or a name of the studio's own
 * @param hangingPayloadKg what a rotator may carry, above 0; null when it carries nothing
 * @param dropMm longest drop from the rotator to the item's lowest point, above 0; null unless a
 *     rotator
 * @param volts of a powered socket; null unless one
 * @param watts most power of a socket; null unless one
 * @param plugs which plugs the socket takes, separated by spaces; null unless one
 * @param heightMm clear height of an overhead frame above the plate; null unless one
 */
public record Equipment(
    String kind,
    @Nullable Double hangingPayloadKg,
    @Nullable Integer dropMm,
    @Nullable Integer volts,
    @Nullable Integer watts,
    @Nullable String plugs,
    @Nullable Integer heightMm) {
  /** Turns hung straps in step with the plate. */
  public static final String ROTATOR = "rotator";

  /** A mains socket in the turning part. */
  public static final String POWERED_SOCKET = "powered-socket";

  /** Carries a camera straight above the plate. */
  public static final String OVERHEAD_FRAME = "overhead-frame";

  /** Keeps an item upright and acts as one more hand. */
  public static final String HOLDER = "holder";

  /** A hoist, lift table or the like for what two people should not lift. */
  public static final String LIFTING_AID = "lifting-aid";

  public Equipment {
    Require.text("equipment.kind", kind);
    if (hangingPayloadKg != null) {
      Require.positive("equipment.hangingPayloadKg", hangingPayloadKg);
    }
    if (dropMm != null) {
      Require.atLeast("equipment.dropMm", dropMm, 1);
    }
    if (volts != null) {
      Require.atLeast("equipment.volts", volts, 1);
    }
    if (watts != null) {
      Require.atLeast("equipment.watts", watts, 1);
    }
    if (heightMm != null) {
      Require.atLeast("equipment.heightMm", heightMm, 1);
    }
    if (kind.equals(ROTATOR)) {
      Require.that(
          hangingPayloadKg != null && dropMm != null,
          "equipment (rotator)",
          "without figures",
          "hangingPayloadKg and dropMm");
    }
    if (kind.equals(POWERED_SOCKET)) {
      Require.that(
          volts != null && watts != null && plugs != null,
          "equipment (powered-socket)",
          "without figures",
          "volts, watts and plugs");
    }
    if (kind.equals(OVERHEAD_FRAME)) {
      Require.that(heightMm != null, "equipment (overhead-frame)", "without height", "heightMm");
    }
  }

  /** Equipment of a kind that carries no figures. */
  public static Equipment of(String kind) {
    return new Equipment(kind, null, null, null, null, null, null);
  }
}
