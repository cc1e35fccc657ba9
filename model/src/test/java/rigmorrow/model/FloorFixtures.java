package rigmorrow.model;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.LiftGeometry;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;

/**
 * A tiny floor for tests: two rigs, two operators, one piece of kit, three attributes, two recipes.
 * All figures are made up to be easy to add up by hand; capture times are measured ones.
 */
public final class FloorFixtures {
  /** A Monday without a clock change. */
  public static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

  public static final ZoneId COPENHAGEN = ZoneId.of("Europe/Copenhagen");

  private FloorFixtures() {}

  /**
   * Rig "table" (factor 1.5, plate ring due soon, one step at a time) and rig "platform" (factor 1,
   * two steps at once), both open 07:00 to 18:00; operator "ann" with every skill and "bo" with
   * "handle", both 07:30 to 16:30 with a break at 12:00; kit "head" on the shelf.
   */
  public static FloorBuilder floor() {
    return new FloorBuilder()
        .rigs(table().build(), platform().build())
        .kits(head())
        .fetches(new FetchTime("shelf", "*", 60), new FetchTime("*", "*", 120))
        .crew(
            operator("ann", "handle", "hang", "light", "power", "service"),
            operator("bo", "handle"))
        .attributes(
            attribute("background", value("white"), value("grey")),
            attribute("light", value("soft"), value("crisp")),
            attribute("surface", surface("matt", 0.5), surface("clear", 0.3)))
        .changeovers(
            change("background", "*", "*", 240, 0, 1),
            change("background", "white", "grey", 300, 0, 1),
            change("light", "*", "*", 120, 600, 1, "light"),
            change("surface", "*", "*", 60, 0, 1),
            change("surface", "*", "clear", 100, 0, 2))
        .recipes(spin().build(), stills().build());
  }

  /** A table of 850 mm; its ring is serviced every 50 turns and has turned 49 times. */
  public static RigBuilder table() {
    return new RigBuilder("table")
        .changeoverFactor(1.5)
        .ring(new PlateRing(50, 49, 300, Set.of("service")));
  }

  /** A platform on which two people may share a changeover. */
  public static RigBuilder platform() {
    return new RigBuilder("platform").twoStepsAtOnce(true);
  }

  /** Recipe "spin": one turn on white; 600 s on the table, 500 s on the platform. */
  public static RecipeBuilder spin() {
    return new RecipeBuilder("spin")
        .rows(new FrameRow(0, 36, 360, false))
        .setup(Map.of("background", "white"))
        .measuredCaptureSeconds(Map.of("table", 600, "platform", 500));
  }

  /** Recipe "stills": attended, grey and crisp; 400 s on the table, 300 s on the platform. */
  public static RecipeBuilder stills() {
    return new RecipeBuilder("stills")
        .stills(new Still(0, 0))
        .setup(Map.of("background", "grey", "light", "crisp"))
        .attended(true)
        .measuredCaptureSeconds(Map.of("table", 400, "platform", 300));
  }

  /** Kit "head": unit "head-1" on the shelf, a rotator for 15 kg, 90 s to align. */
  public static Kit head() {
    Equipment rotator = new Equipment(Equipment.ROTATOR, 15.0, 1500, null, null, null, null);
    return new Kit(
        "head",
        "Overhead head",
        rotator,
        List.of(new KitUnit("head-1", "shelf")),
        90,
        1,
        Set.of("hang"),
        null);
  }

  /** An operator from 07:30 to 16:30 with a break from 12:00 to 12:30. */
  public static Operator operator(String id, String... skills) {
    return new Operator(
        id,
        id,
        Set.of(skills),
        List.of(hours("07:30", "16:30")),
        List.of(hours("12:00", "12:30")),
        List.of());
  }

  /** Weekly hours on some days, every day when none is named. */
  public static OpenHours hours(String from, String to, DayOfWeek... days) {
    return new OpenHours(Set.of(days), LocalTime.parse(from), LocalTime.parse(to));
  }

  public static SetupAttribute attribute(String id, AttributeValue... values) {
    return new SetupAttribute(id, id, List.of(values));
  }

  public static AttributeValue value(String id) {
    return new AttributeValue(id, id, null, Set.of(), null);
  }

  public static AttributeValue surface(String id, double frictionCoefficient) {
    return new AttributeValue(id, id, frictionCoefficient, Set.of(), null);
  }

  /** A changeover line for every rig. */
  public static ChangeoverRule change(
      String attribute,
      String from,
      String to,
      int attendedSeconds,
      int unattendedSeconds,
      int people,
      String... skills) {
    return new ChangeoverRule(
        attribute,
        from,
        to,
        Set.of(),
        attendedSeconds,
        unattendedSeconds,
        people,
        Set.of(skills),
        null);
  }

  /** The setup both rigs start in. */
  public static Setup whiteSoftMatt() {
    return new Setup(Map.of("background", "white", "light", "soft", "surface", "matt"));
  }

  /** Load 120 s, align 30, by hand 60, hang 180, power 60, holder 45; unload 90, 60, 30. */
  public static Handling handling() {
    return new Handling(
        120, 30, 60, 180, 60, 45, 90, 60, 30, Set.of("handle"), Set.of("hang"), Set.of("power"));
  }

  public static Physics physics() {
    return new Physics(0.5, 1.5, 5, 5, 5, 0.3, 0.05, 1.0, 200, lift());
  }

  public static LiftGeometry lift() {
    return new LiftGeometry(700, 250, 0, 0.2, 1.5);
  }

  public static Costs costs() {
    return new Costs("EUR", 40, 1.5, 25, 60, 80);
  }
}
