package rigmorrow.data.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
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

/** The rigs: six of different kinds, then copies of them. */
final class DemoRigs {
  /** Rigs before the copies. */
  static final int FIRST = 6;

  /** All rigs there can be. */
  static final int MOST = 12;

  /** Which of the first six each copy is like, from R7 on. */
  private static final List<Integer> COPIES = List.of(2, 3, 6, 1, 5, 4);

  private static final AxisLimits ARM = new AxisLimits(20, 30, 90, 0.5);
  private static final AxisLimits PLATE = new AxisLimits(120, 240, 1200, 0.25);
  private static final List<String> NO_CAUTIONS = List.of();

  /** What the laser lines of the two large tables ask of the crew. */
  private static final List<String> LASER_CAUTIONS =
      List.of(
          "Laser lines for aligning: never look into them, cover mirrors and chrome before"
              + " switching them on.");

  private final String id;
  private final LocalDate date;
  private final boolean copy;

  private DemoRigs(String id, LocalDate date, boolean copy) {
    this.id = id;
    this.date = date;
    this.copy = copy;
  }

  /** The first so many rigs as they are on a date. */
  static List<Rig> on(LocalDate date, int rigs) {
    return numbers(rigs).stream()
        .map(number -> new DemoRigs("R" + number, date, number > FIRST).like(original(number)))
        .toList();
  }

  /** Ids of those of the first so many rigs that are like one of the first six. */
  static Set<String> idsLike(int rigs, Set<Integer> originals) {
    return Set.copyOf(
        numbers(rigs).stream()
            .filter(number -> originals.contains(original(number)))
            .map(number -> "R" + number)
            .toList());
  }

  private static List<Integer> numbers(int rigs) {
    return IntStream.rangeClosed(1, rigs).boxed().toList();
  }

  private static int original(int number) {
    return number <= FIRST ? number : COPIES.get(number - FIRST - 1);
  }

  private Rig like(int original) {
    return switch (original) {
      case 1 -> small();
      case 2 -> table();
      case 3 -> tallTable();
      case 4 -> platform();
      case 5 -> overhead();
      default -> powered();
    };
  }

  private Rig small() {
    return rig(
        "Small glass table",
        "glass turntable 500",
        new PlateSize(500, 15, 620, 15, 0, 520, 900),
        new CameraReach(0, 600, 60, 1000, 0.35, 0.9, true, 16),
        new AxisLimits(180, 720, 7200, 0.2),
        List.of(),
        Set.of(DemoKit.MACRO_LENS, DemoKit.HOLDER),
        offers(
            "surface",
            "glass acrylic mat",
            "suspension",
            "none",
            "power",
            "off",
            "frame",
            "parked",
            "arm",
            "home"),
        initial("background", "grey", "lighting", "continuous-low", "camera", "b-70"),
        1.0,
        null,
        NO_CAUTIONS);
  }

  private Rig table() {
    int service = 20_000;
    return rig(
        "Glass table",
        "glass turntable 850",
        new PlateSize(850, 20, 1100, 40, 8, 1200, 800),
        new CameraReach(0, 900, 60, 1600, 0.35, 1.2, false, 8),
        PLATE,
        List.of(DemoKit.frame(1000)),
        Set.of(
            DemoKit.ROTATOR_HEAD,
            DemoKit.POWERED_HEAD,
            DemoKit.MACRO_LENS,
            DemoKit.HOLDER,
            DemoKit.LIFTING_AID),
        offers(
            "lighting",
            "strobe-soft strobe-crisp",
            "surface",
            "glass acrylic mat",
            "suspension",
            "none strings",
            "arm",
            "home"),
        initial("background", "white-direct", "lighting", "strobe-soft", "camera", "a-50"),
        1.0,
        new PlateRing(
            service,
            copy ? 4_000 : service - DemoKnobs.RING_TURNS_LEFT,
            900,
            Set.of(DemoCrew.RIGGING)),
        LASER_CAUTIONS);
  }

  private Rig tallTable() {
    return rig(
        "Tall glass table",
        "glass turntable 850, long arm, tall frame",
        new PlateSize(850, 20, 1300, 40, 10, 1500, 800),
        new CameraReach(0, 1300, 75, 1800, 0.35, 1.2, true, 8),
        PLATE,
        List.of(DemoKit.frame(2200)),
        Set.of(
            DemoKit.ROTATOR_HEAD,
            DemoKit.POWERED_HEAD,
            DemoKit.DOCKING_ARM,
            DemoKit.HOLDER,
            DemoKit.LIFTING_AID),
        offers("surface", "glass acrylic mat", "suspension", "none strings"),
        initial("background", "white-reflected", "lighting", "strobe-crisp", "camera", "b-70"),
        1.1,
        new PlateRing(20_000, 6_500, 900, Set.of(DemoCrew.RIGGING)),
        LASER_CAUTIONS);
  }

  private Rig platform() {
    return rig(
        "Platform",
        "walk-on platform 1800",
        new PlateSize(1800, 50, 2400, 200, 0, 2200, 150),
        new CameraReach(150, 1400, 45, 3200, 0.45, null, true, 2),
        new AxisLimits(30, 20, 60, 0.5),
        List.of(),
        Set.of(DemoKit.DOCKING_ARM, DemoKit.HOLDER, DemoKit.LIFTING_AID),
        offers(
            "background",
            "white-reflected grey black",
            "lighting",
            "continuous-soft continuous-low",
            "surface",
            "deck mat",
            "suspension",
            "none",
            "power",
            "off",
            "frame",
            "parked"),
        initial("background", "grey", "lighting", "continuous-soft", "surface", "deck"),
        1.2,
        null,
        List.of("Walk-on platform: nobody on it while it turns."));
  }

  private Rig overhead() {
    return rig(
        "Overhead rotator",
        "overhead rotator",
        new PlateSize(1000, 40, 1400, 12, 25, 2000, 300),
        new CameraReach(0, 1200, 50, 2000, 0.35, 1.1, true, 5),
        new AxisLimits(90, 120, 600, 0.3),
        List.of(DemoKit.rotator(20, 1700), DemoKit.frame(2000)),
        Set.of(DemoKit.POWERED_HEAD),
        offers("surface", "acrylic mat", "frame", "over-plate", "arm", "home"),
        initial("suspension", "hanger", "frame", "over-plate", "surface", "mat"),
        1.0,
        null,
        List.of("Overhead load: stay out from under what hangs."));
  }

  private Rig powered() {
    return rig(
        "Mixed table",
        "mixed turntable 700 with socket",
        new PlateSize(700, 20, 1000, 25, 0, 900, 850),
        new CameraReach(0, 800, 65, 1500, 0.35, 1.0, true, 9),
        PLATE,
        List.of(DemoKit.socket(1000, "C F K")),
        Set.of(DemoKit.MACRO_LENS, DemoKit.HOLDER, DemoKit.LIFTING_AID),
        offers(
            "surface", "glass acrylic mat", "suspension", "none", "frame", "parked", "arm", "home"),
        initial("background", "black", "lighting", "continuous-low", "power", "on"),
        1.0,
        new PlateRing(15_000, 2_000, 900, Set.of(DemoCrew.RIGGING)),
        NO_CAUTIONS);
  }

  private Rig rig(
      String name,
      String kind,
      PlateSize size,
      CameraReach camera,
      AxisLimits plate,
      List<Equipment> fitted,
      Set<String> takesKit,
      Map<String, Set<String>> offers,
      Setup initial,
      double changeoverFactor,
      @Nullable PlateRing ring,
      List<String> cautions) {
    boolean platform = kind.startsWith("walk-on");
    return new Rig(
        id,
        copy ? name + " " + id : name,
        kind,
        size,
        camera,
        plate,
        ARM,
        fitted,
        takesKit,
        offers,
        initial,
        changeoverFactor,
        platform,
        Map.of(),
        List.of(new OpenHours(Set.of(), DemoKnobs.RIGS_OPEN, DemoKnobs.RIGS_CLOSE)),
        platform && !copy ? List.of(service()) : List.of(),
        ring,
        cautions);
  }

  private Closure service() {
    return new Closure(
        date.atTime(DemoKnobs.RIGS_OPEN), date.atTime(9, 0), "platform drive in service");
  }

  /** A usual state with the changes put in: every attribute has a value. */
  private static Setup initial(String... changes) {
    Setup usual =
        DemoSetups.setup(
            "arm",
            "home",
            "frame",
            "parked",
            "background",
            "white-reflected",
            "lighting",
            "strobe-soft",
            "surface",
            "acrylic",
            "camera",
            "a-50",
            "suspension",
            "none",
            "power",
            "off",
            "flags",
            "none");
    return usual.after(DemoSetups.setup(changes));
  }

  private static Map<String, Set<String>> offers(String... attributesAndValues) {
    Map<String, Set<String>> offers = new TreeMap<>();
    for (int at = 0; at < attributesAndValues.length; at += 2) {
      offers.put(attributesAndValues[at], Set.of(attributesAndValues[at + 1].split(" ", -1)));
    }
    return offers;
  }
}
