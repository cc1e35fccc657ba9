package rigmorrow.data.demo;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** A small shot list of jobs that no rig can take or that must be measured first, and one sound. */
public final class DemoTroubles {
  private DemoTroubles() {}

  /** Nine jobs for one day on {@link DemoStudio#floor(LocalDate)}; the first one is sound. */
  public static ShotList shotList(LocalDate date) {
    return new ShotList(
        date,
        1,
        List.of(
            job("T1", "Sound shoes", DemoRecipes.STILLS, box(290, 200, 110, 0.8)),
            job("T2", "Vase, not weighed", DemoRecipes.STILLS, box(150, 150, 300, null)),
            job("T3", "Rug, not measured", DemoRecipes.LARGE, box(null, null, null, 12.0)),
            job("T4", "Safe, too heavy", DemoRecipes.LARGE, box(600, 600, 900, 260.0)),
            job("T5", "Canoe, too long", DemoRecipes.LARGE, box(4200, 800, 400, 24.0)),
            job("T6", "Bear costume, too heavy to hang", DemoRecipes.HUNG, hung(32)),
            job("T7", "Coffee machine, foreign plug", DemoRecipes.SPIN, machine()),
            job("T8", "Thin rod off centre, would tip", DemoRecipes.STILLS, rod()),
            job(
                "T9",
                "Clear bowl, refused background",
                DemoRecipes.SPIN,
                item(220, 220, 110, 0.7, null, DemoSetups.CLEAR, null, null))),
        List.of());
  }

  private static ShotJob job(String id, String name, String recipe, Item item) {
    return new ShotJob(
        id, "00" + id, null, name, "S-" + id, recipe, item, Setup.ANY, null, null, null, 1, null);
  }

  private static Item box(
      @Nullable Integer lengthMm,
      @Nullable Integer widthMm,
      @Nullable Integer heightMm,
      @Nullable Double massKg) {
    return item(lengthMm, widthMm, heightMm, massKg, null, DemoSetups.MATTE, null, null);
  }

  private static Item hung(double massKg) {
    return item(
        500, 400, 1400, massKg, null, DemoSetups.MATTE, new Hanging(massKg, 1500, false), null);
  }

  private static Item machine() {
    return item(280, 250, 350, 4.5, null, DemoSetups.GLOSSY, null, new Power(120, 1400, "B"));
  }

  private static Item rod() {
    return item(5, 5, 800, 0.2, 200, DemoSetups.MATTE, null, null);
  }

  private static Item item(
      @Nullable Integer lengthMm,
      @Nullable Integer widthMm,
      @Nullable Integer heightMm,
      @Nullable Double massKg,
      @Nullable Integer offsetMm,
      String finish,
      @Nullable Hanging hanging,
      @Nullable Power power) {
    return new Item(
        lengthMm,
        widthMm,
        heightMm,
        massKg,
        null,
        null,
        null,
        null,
        offsetMm,
        finish,
        false,
        1,
        false,
        0,
        hanging,
        power,
        HeightSource.LIST,
        false);
  }
}
