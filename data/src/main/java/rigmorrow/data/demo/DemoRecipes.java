package rigmorrow.data.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.Setup;

/** What pictures the studio takes. */
final class DemoRecipes {
  static final String STILLS = "stills";
  static final String SPIN = "spin-36";
  static final String SPIN_3 = "spin-3x36";
  static final String SPIN_TURNING = "spin-turning";
  static final String FOCUS = "focus-stills";
  static final String TOP = "top-view";
  static final String HUNG = "hung-spin";
  static final String LOOK = "styled-look";
  static final String LAMP = "lamp-stills";
  static final String LARGE = "large-stills";
  static final String LARGE_SPIN = "large-spin";

  /** Exposure of a strobe picture. */
  private static final double FLASH_SECONDS = 0.002;

  /** Exposure of a picture by continuous light. */
  private static final double LAMP_SECONDS = 0.4;

  private DemoRecipes() {}

  /**
   * The recipes.
   *
   * @param lookRigs ids of the rigs on which the styled look was measured
   */
  static List<Recipe> all(Set<String> lookRigs) {
    return List.of(
        standing(STILLS, "Six stills", List.of(), stills(10, 6, 60), 12, stillsSetup()),
        standing(SPIN, "One-row spin, 36", List.of(row(15, 36, false)), List.of(), 2, spinSetup()),
        standing(SPIN_3, "Three-row spin, 3 x 36", threeRows(), List.of(), 1, threeRowSetup()),
        continuousTurn(),
        focusStills(),
        standing(TOP, "Top view and four sides", List.of(), topStills(), 10, topSetup()),
        hungSpin(),
        styledLook(lookRigs),
        lampStills(),
        large(LARGE, "Large stills", List.of(), stills(12, 8, 45), Set.of(), largeSetup("home")),
        large(
            LARGE_SPIN,
            "Large two-row spin",
            List.of(row(10, 36, false), row(35, 36, false)),
            List.of(),
            Set.of(DemoKit.DOCKING_ARM),
            largeSetup("docked")));
  }

  private static Recipe standing(
      String id,
      String label,
      List<FrameRow> rows,
      List<Still> stills,
      int focusBrackets,
      Setup setup) {
    return new Recipe(
        id,
        label,
        rows,
        stills,
        FLASH_SECONDS,
        focusBrackets,
        Lighting.STROBE,
        setup,
        Set.of(),
        Set.of(),
        false,
        60,
        Map.of());
  }

  private static Recipe large(
      String id,
      String label,
      List<FrameRow> rows,
      List<Still> stills,
      Set<String> equipment,
      Setup setup) {
    return new Recipe(
        id,
        label,
        rows,
        stills,
        LAMP_SECONDS,
        id.equals(LARGE) ? 8 : 1,
        Lighting.CONTINUOUS,
        setup,
        equipment,
        Set.of(),
        false,
        150,
        Map.of());
  }

  private static Recipe continuousTurn() {
    return new Recipe(
        SPIN_TURNING,
        "Spin while turning, 2 x 72",
        List.of(row(8, 72, true), row(30, 72, true)),
        List.of(),
        FLASH_SECONDS,
        1,
        Lighting.EITHER,
        DemoSetups.setup("background", "white-reflected", "camera", "b-70"),
        Set.of(),
        Set.of(),
        false,
        60,
        Map.of());
  }

  private static Recipe focusStills() {
    return new Recipe(
        FOCUS,
        "Focus-bracketed stills",
        List.of(),
        stills(25, 5, 72),
        LAMP_SECONDS,
        30,
        Lighting.CONTINUOUS,
        DemoSetups.setup(
            "background",
            "grey",
            "lighting",
            "continuous-low",
            "camera",
            "b-macro",
            "surface",
            "acrylic"),
        Set.of(DemoKit.MACRO_LENS),
        Set.of(DemoCrew.CAMERA),
        false,
        40,
        Map.of());
  }

  private static Recipe hungSpin() {
    return new Recipe(
        HUNG,
        "Hung spin, 24",
        List.of(row(5, 24, false)),
        List.of(),
        FLASH_SECONDS,
        1,
        Lighting.STROBE,
        DemoSetups.setup("background", "white-direct", "lighting", "strobe-soft", "camera", "a-50"),
        Set.of(Equipment.ROTATOR),
        Set.of(),
        false,
        60,
        Map.of());
  }

  private static Recipe styledLook(Set<String> rigs) {
    Map<String, Integer> measured = new TreeMap<>();
    rigs.forEach(rig -> measured.put(rig, 240));
    return new Recipe(
        LOOK,
        "Styled look, operator stays",
        List.of(),
        stills(10, 6, 60),
        FLASH_SECONDS,
        4,
        Lighting.STROBE,
        DemoSetups.setup("background", "grey", "lighting", "strobe-crisp", "camera", "b-70"),
        Set.of(),
        Set.of(DemoCrew.STYLING),
        true,
        60,
        measured);
  }

  private static Recipe lampStills() {
    return new Recipe(
        LAMP,
        "Lamp lit and unlit",
        List.of(),
        stills(5, 8, 45),
        1.5,
        8,
        Lighting.CONTINUOUS,
        DemoSetups.setup("background", "black", "lighting", "continuous-low", "camera", "b-70"),
        Set.of(),
        Set.of(),
        false,
        60,
        Map.of());
  }

  private static Setup stillsSetup() {
    return DemoSetups.setup(
        "background", "white-reflected", "lighting", "strobe-soft", "camera", "a-100");
  }

  private static Setup spinSetup() {
    return DemoSetups.setup(
        "background", "white-direct", "lighting", "strobe-soft", "camera", "a-50", "arm", "home");
  }

  /** The arm swings high: the overhead frame must be out of its way. */
  private static Setup threeRowSetup() {
    return spinSetup().after(DemoSetups.setup("frame", "parked"));
  }

  private static Setup topSetup() {
    return DemoSetups.setup(
        "background",
        "white-reflected",
        "lighting",
        "strobe-crisp",
        "camera",
        "b-70",
        "frame",
        "over-plate");
  }

  private static Setup largeSetup(String arm) {
    return DemoSetups.setup("lighting", "continuous-soft", "camera", "a-50", "arm", arm);
  }

  private static List<FrameRow> threeRows() {
    return List.of(row(0, 36, false), row(20, 36, false), row(45, 36, false));
  }

  private static FrameRow row(double elevationDeg, int frames, boolean turning) {
    return new FrameRow(elevationDeg, frames, 360, turning);
  }

  private static List<Still> topStills() {
    List<Still> stills = new ArrayList<>(stills(15, 4, 90));
    stills.add(new Still(90, 270));
    return List.copyOf(stills);
  }

  private static List<Still> stills(double elevationDeg, int count, double stepDeg) {
    List<Still> stills = new ArrayList<>();
    for (int still = 0; still < count; still++) {
      stills.add(new Still(elevationDeg, still * stepDeg));
    }
    return List.copyOf(stills);
  }
}
