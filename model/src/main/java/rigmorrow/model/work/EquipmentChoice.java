package rigmorrow.model.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;
import rigmorrow.model.shot.ShotJob;

/**
 * Which equipment a job needs on a rig and where it comes from: fitted where that will do, else kit
 * that the rig takes.
 *
 * @param kits ids of the kit needed, in floor order
 * @param lacks what neither the rig nor any kit gives, by kind of equipment
 */
public record EquipmentChoice(List<String> kits, Map<String, Lack> lacks) {
  public EquipmentChoice {
    kits = List.copyOf(kits);
    lacks = Map.copyOf(lacks);
  }

  /**
   * Why no equipment of a kind will do.
   *
   * @param needed figure needed
   * @param offered the best figure there is, or "none"
   * @param shortfall how far off as a share of what is needed, 1 when there is none at all
   */
  public record Lack(String needed, String offered, double shortfall) {}

  /** Chooses for a job whose item is measured as far as it is known. */
  public static EquipmentChoice of(Floor floor, ShotJob job, Recipe recipe, Rig rig, boolean aid) {
    TreeSet<String> chosen = new TreeSet<>();
    Map<String, Lack> lacks = new LinkedHashMap<>();
    for (String kind : kinds(job.item(), recipe, rig, aid)) {
      Lack nearest = new Lack(need(kind, floor, job.item()), "none", 1);
      boolean found = false;
      for (Source source : sources(floor, rig, kind)) {
        Lack lack = lack(source.equipment, floor, job.item());
        if (lack == null) {
          found = true;
          if (source.kitId != null) {
            chosen.add(source.kitId);
          }
          break;
        }
        nearest = lack.shortfall < nearest.shortfall ? lack : nearest;
      }
      if (!found) {
        lacks.put(kind, nearest);
      }
    }
    List<String> inFloorOrder =
        floor.kits().stream().map(Kit::id).filter(chosen::contains).toList();
    return new EquipmentChoice(inFloorOrder, lacks);
  }

  private record Source(Equipment equipment, @Nullable String kitId) {}

  private static List<Source> sources(Floor floor, Rig rig, String kind) {
    List<Source> sources = new ArrayList<>();
    for (Equipment fitted : rig.fitted()) {
      if (fitted.kind().equals(kind)) {
        sources.add(new Source(fitted, null));
      }
    }
    for (Kit kit : floor.kits()) {
      if (kit.provides().kind().equals(kind) && rig.takesKit().contains(kit.id())) {
        sources.add(new Source(kit.provides(), kit.id()));
      }
    }
    return sources;
  }

  private static TreeSet<String> kinds(Item item, Recipe recipe, Rig rig, boolean aid) {
    TreeSet<String> kinds = new TreeSet<>(recipe.equipment());
    if (item.hanging() != null) {
      kinds.add(Equipment.ROTATOR);
    }
    if (item.power() != null) {
      kinds.add(Equipment.POWERED_SOCKET);
    }
    if (item.holder()) {
      kinds.add(Equipment.HOLDER);
    }
    if (recipe.maxElevationDeg() == 90 && rig.camera().maxElevationDeg() < 90) {
      kinds.add(Equipment.OVERHEAD_FRAME);
    }
    if (aid) {
      kinds.add(Equipment.LIFTING_AID);
    }
    return kinds;
  }

  private static String need(String kind, Floor floor, Item item) {
    Hanging hanging = item.hanging();
    Power power = item.power();
    if (kind.equals(Equipment.ROTATOR) && hanging != null) {
      return "rotator for " + hanging.hangingMassKg() + " kg, drop " + hanging.dropMm() + " mm";
    }
    if (kind.equals(Equipment.POWERED_SOCKET) && power != null) {
      return "socket " + power.volts() + " V, " + power.watts() + " W, plug " + power.plug();
    }
    if (kind.equals(Equipment.OVERHEAD_FRAME) && item.heightMm() != null) {
      int needed = item.heightMm() + floor.physics().topViewClearanceMm();
      return "overhead frame of " + needed + " mm clear height";
    }
    return kind;
  }

  /** Null when the equipment will do; otherwise what it lacks. */
  private static @Nullable Lack lack(Equipment equipment, Floor floor, Item item) {
    String needed = need(equipment.kind(), floor, item);
    Hanging hanging = item.hanging();
    Power power = item.power();
    switch (equipment.kind()) {
      case Equipment.ROTATOR:
        return hanging == null ? null : rotatorLack(equipment, hanging, needed);
      case Equipment.POWERED_SOCKET:
        return power == null ? null : socketLack(equipment, power, needed);
      case Equipment.OVERHEAD_FRAME:
        int height = equipment.heightMm() == null ? 0 : equipment.heightMm();
        int clear =
            (item.heightMm() == null ? 0 : item.heightMm()) + floor.physics().topViewClearanceMm();
        return height >= clear
            ? null
            : new Lack(needed, height + " mm", 1 - height / (double) clear);
      default:
        return null;
    }
  }

  private static @Nullable Lack rotatorLack(Equipment rotator, Hanging hanging, String needed) {
    double payload = rotator.hangingPayloadKg() == null ? 0 : rotator.hangingPayloadKg();
    int drop = rotator.dropMm() == null ? 0 : rotator.dropMm();
    double short1 = 1 - payload / hanging.hangingMassKg();
    double short2 = 1 - drop / (double) hanging.dropMm();
    double shortfall = Math.max(short1, short2);
    return shortfall <= 0
        ? null
        : new Lack(needed, "rotator for " + payload + " kg, drop " + drop + " mm", shortfall);
  }

  private static @Nullable Lack socketLack(Equipment socket, Power power, String needed) {
    int volts = socket.volts() == null ? 0 : socket.volts();
    int watts = socket.watts() == null ? 0 : socket.watts();
    String plugs = socket.plugs() == null ? "" : socket.plugs();
    boolean plugFits = List.of(plugs.split("[\\s,]+")).contains(power.plug());
    double shortfall =
        volts != power.volts() || !plugFits ? 1 : Math.max(0, 1 - watts / (double) power.watts());
    return shortfall <= 0
        ? null
        : new Lack(needed, "socket " + volts + " V, " + watts + " W, plugs " + plugs, shortfall);
  }
}
