package rigmorrow.data.demo;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;

/** The scarce equipment that rigs share, and how far it is to fetch. */
final class DemoKit {
  static final String ROTATOR_HEAD = "rotator-head";
  static final String POWERED_HEAD = "powered-head";
  static final String MACRO_LENS = "macro-lens";
  static final String DOCKING_ARM = "docking-arm";
  static final String HOLDER = "holder";
  static final String LIFTING_AID = "lifting-aid";

  private static final String SHELF = "kit-shelf";
  private static final String SAFE = "camera-safe";

  private DemoKit() {}

  /** The kit of a floor with so many rigs: a bigger floor has more units. */
  static List<Kit> forRigs(int rigs) {
    int pieces = rigs > DemoRigs.FIRST ? 2 : 1;
    return List.of(
        rotatorHead(pieces),
        poweredHead(pieces),
        macroLens(pieces),
        dockingArm(),
        holder(pieces + 1),
        liftingAid(pieces));
  }

  /** Walking times; the first line that applies counts. */
  static List<FetchTime> fetches() {
    return List.of(
        new FetchTime("R3", "R4", 150),
        new FetchTime("R4", "R3", 180),
        new FetchTime(SAFE, "*", 60),
        new FetchTime(SHELF, "R4", 100),
        new FetchTime(SHELF, "*", 70),
        new FetchTime("*", "*", 80));
  }

  /** A rotator above the plate. */
  static Equipment rotator(double hangingPayloadKg, int dropMm) {
    return new Equipment(Equipment.ROTATOR, hangingPayloadKg, dropMm, null, null, null, null);
  }

  /** A 230 V socket in the turning part. */
  static Equipment socket(int watts, String plugs) {
    return new Equipment(Equipment.POWERED_SOCKET, null, null, 230, watts, plugs, null);
  }

  /** An overhead frame of a clear height. */
  static Equipment frame(int heightMm) {
    return new Equipment(Equipment.OVERHEAD_FRAME, null, null, null, null, null, heightMm);
  }

  private static Kit rotatorHead(int pieces) {
    return kit(
        ROTATOR_HEAD,
        "Overhead rotator head",
        rotator(6, 1000),
        units(ROTATOR_HEAD, SHELF, pieces),
        150,
        1,
        DemoCrew.RIGGING,
        "Overhead load: check the safety wire.");
  }

  private static Kit poweredHead(int pieces) {
    return kit(
        POWERED_HEAD,
        "Powered turning head",
        socket(300, "C K"),
        units(POWERED_HEAD, SHELF, pieces),
        120,
        1,
        DemoCrew.ELECTRICAL,
        null);
  }

  private static Kit macroLens(int pieces) {
    return kit(
        MACRO_LENS,
        "Macro lens",
        Equipment.of(MACRO_LENS),
        units(MACRO_LENS, SAFE, pieces),
        40,
        1,
        DemoCrew.CAMERA,
        null);
  }

  private static Kit dockingArm() {
    return kit(
        DOCKING_ARM,
        "Docking camera arm",
        Equipment.of(DOCKING_ARM),
        units(DOCKING_ARM, "R3", 1),
        240,
        2,
        DemoCrew.RIGGING,
        "Lock the castors before the arm moves.");
  }

  private static Kit holder(int pieces) {
    return kit(
        HOLDER,
        "Holder",
        Equipment.of(Equipment.HOLDER),
        units(HOLDER, SHELF, pieces),
        20,
        1,
        DemoCrew.HANDLING,
        null);
  }

  private static Kit liftingAid(int pieces) {
    return kit(
        LIFTING_AID,
        "Lift trolley",
        Equipment.of(Equipment.LIFTING_AID),
        units(LIFTING_AID, SHELF, pieces),
        45,
        1,
        DemoCrew.HANDLING,
        "Keep feet clear of the lift trolley.");
  }

  private static Kit kit(
      String id,
      String label,
      Equipment provides,
      List<KitUnit> units,
      int alignSeconds,
      int people,
      String skill,
      @Nullable String caution) {
    return new Kit(id, label, provides, units, alignSeconds, people, Set.of(skill), caution);
  }

  private static List<KitUnit> units(String kit, String place, int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(number -> new KitUnit(kit + "-" + number, place))
        .toList();
  }
}
