package rigmorrow.app.runsheet;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.LiftGeometry;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Power;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** A small floor in Berlin and a shot list with one job of every sort. Its figures are made up. */
public final class SampleDay {

  public static final LocalDate SUMMER = LocalDate.of(2026, 6, 1);
  static final String HOSTILE_NAME = "<script>alert(\"x\")</script> & 'Bowl' 🏺";

  private SampleDay() {}

  public static Batch batch(LocalDate date) {
    return batch(date, ZoneId.of("Europe/Berlin"));
  }

  public static Batch batch(LocalDate date, ZoneId zone) {
    List<ShotJob> jobs =
        List.of(
            job("J1", "0004711", "Plain box", item(), promise(date, 9, 0, true), null),
            job(
                "J2",
                "0004712",
                HOSTILE_NAME,
                glass(),
                promise(date, 9, 30, false),
                "Mind <b>me</b>"),
            job("J3", "0004713", "Bag with straps", bag(), null, null),
            job("J4", "0004714", "Lamp", lamp(), promise(date, 17, 0, false), null),
            job("J5", "0004715", "Stone bust", heavy(), null, null),
            job("J6", "0004716", "Unmeasured vase", unmeasured(), null, null),
            job("J7", "0004717", "Wardrobe", item(), promise(date, 12, 0, true), null),
            job("J8", "0004718", "Latecomer", item(), null, null));
    List<Pin> pins = List.of(new Pin("J1", "R1", 0, date.atTime(7, 0), PinState.RUNNING));
    return new Batch(floor(date, zone), new ShotList(date, 1, jobs, pins));
  }

  private static Promise promise(LocalDate date, int hour, int minute, boolean must) {
    return new Promise(date.atTime(hour, minute), must);
  }

  private static ShotJob job(
      String id,
      String article,
      String name,
      Item item,
      @Nullable Promise promise,
      @Nullable String note) {
    boolean loaned = id.equals("J4");
    LocalDateTime arrives = loaned ? LocalDateTime.of(2026, 6, 1, 8, 0) : null;
    LocalDateTime leaves = loaned ? LocalDateTime.of(2027, 6, 1, 18, 0) : null;
    return new ShotJob(
        id,
        article,
        id.equals("J1") ? "4006381333931" : null,
        name,
        "S-" + id,
        id.equals("J2") ? "stills" : "spin",
        item,
        Setup.ANY,
        arrives,
        leaves,
        promise,
        1,
        note);
  }

  private static Item item() {
    return item(2.5, false, false, null, null, false, HeightSource.LIST);
  }

  private static Item glass() {
    return item(1.25, true, true, null, null, false, HeightSource.HAND);
  }

  private static Item bag() {
    return item(1.0, false, false, new Hanging(0.4, 600, true), null, false, HeightSource.DEVICE);
  }

  private static Item lamp() {
    return item(2.0, false, false, null, new Power(230, 60, "F"), true, HeightSource.LIST);
  }

  private static Item heavy() {
    return item(38.0, false, false, null, null, false, HeightSource.LIST);
  }

  private static Item unmeasured() {
    return new Item(
        300,
        null,
        200,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        false,
        1,
        false,
        0,
        null,
        null,
        HeightSource.LIST,
        false);
  }

  private static Item item(
      double massKg,
      boolean glass,
      boolean holder,
      @Nullable Hanging hanging,
      @Nullable Power power,
      boolean estimated,
      HeightSource source) {
    return new Item(
        300,
        200,
        250,
        massKg,
        null,
        null,
        null,
        null,
        null,
        glass ? "clear" : null,
        glass,
        1,
        holder,
        holder ? 0.35 : 0,
        hanging,
        power,
        source,
        estimated);
  }

  private static Floor floor(LocalDate date, ZoneId zone) {
    return new Floor(
        "Hall <2> & yard",
        zone,
        List.of(
            rig("R1", "Table one", date), rig("R2", "Platform", date), rig("R3", "Spare", date)),
        List.of(
            new Kit(
                "rotator-head",
                "Rotator head",
                new Equipment(Equipment.ROTATOR, 10.0, 900, null, null, null, null),
                List.of(new KitUnit("RH-1", "Shelf A")),
                120,
                2,
                Set.of(),
                "Rotator head: check the safety wire.")),
        List.of(new FetchTime("*", "*", 60)),
        List.of(operator("ada", "Ada L."), operator("ben", "Ben <B>"), operator("cyn", "Cyn")),
        List.of(
            new SetupAttribute(
                "background",
                "Background",
                List.of(
                    new AttributeValue("white", "White, lit directly", null, Set.of(), null),
                    new AttributeValue(
                        "grey", "Grey", null, Set.of(), "Grey paper: do not step on it.")))),
        List.of(new ChangeoverRule("background", "*", "*", Set.of(), 270, 600, 2, Set.of(), null)),
        List.of(recipe("spin", "white", false), recipe("stills", "grey", true)),
        List.of(),
        new Handling(90, 30, 120, 60, 45, 30, 60, 30, 30, Set.of(), Set.of(), Set.of()),
        new Physics(0.4, 1.5, 5, 1, 1, 0.3, 0.05, 1, 100, new LiftGeometry(800, 250, 0, 0.2, 1.5)),
        Weights.DEFAULT,
        new Costs("EUR", 30, 1.5, 20, 10, 50));
  }

  private static Recipe recipe(String id, String background, boolean stills) {
    return new Recipe(
        id,
        stills ? "Four stills" : "Spin of two rows",
        stills
            ? List.of()
            : List.of(new FrameRow(0, 36, 360, true), new FrameRow(22.5, 24, 360, false)),
        stills
            ? List.of(new Still(0, 0), new Still(0, 90), new Still(0, 180), new Still(45, 45))
            : List.of(),
        0.01,
        stills ? 3 : 1,
        Lighting.STROBE,
        new Setup(Map.of("background", background)),
        Set.of(),
        Set.of(),
        stills,
        50,
        Map.of());
  }

  private static Operator operator(String id, String name) {
    return new Operator(
        id,
        name,
        Set.of(),
        List.of(new OpenHours(Set.of(), LocalTime.of(0, 0), LocalTime.of(16, 0))),
        List.of(new OpenHours(Set.of(), LocalTime.of(12, 0), LocalTime.of(12, 30))),
        List.of());
  }

  private static Rig rig(String id, String name, LocalDate date) {
    boolean platform = id.equals("R2");
    return new Rig(
        id,
        name,
        platform ? "platform" : "table",
        new PlateSize(850, 20, 1200, 40, 10, 900, 700),
        new CameraReach(100, 1500, 80, 2000, 0.3, 0.4, false, 5),
        new AxisLimits(90, 90, 400, 0.2),
        new AxisLimits(20, 20, 80, 0.5),
        platform
            ? List.of(new Equipment(Equipment.POWERED_SOCKET, null, null, 230, 300, "C F", null))
            : List.of(Equipment.of(Equipment.HOLDER)),
        Set.of("rotator-head"),
        Map.of(),
        new Setup(Map.of("background", "white")),
        1,
        false,
        Map.of(),
        List.of(new OpenHours(Set.of(DayOfWeek.values()), LocalTime.of(0, 0), LocalTime.of(18, 0))),
        platform
            ? List.of(new Closure(date.atTime(13, 0), date.atTime(14, 0), "Lamp service"))
            : List.of(),
        null,
        platform ? List.of("Platform edge: mind the step.") : List.of());
  }
}
