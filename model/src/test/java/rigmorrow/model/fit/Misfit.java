package rigmorrow.model.fit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rigmorrow.model.FloorBuilder;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RecipeBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.shot.Hanging;

/** An item, recipe and rig that break one rule, with the figures that must be told. */
record Misfit(
    FitRule rule,
    String needed,
    String offered,
    FloorBuilder floor,
    RigBuilder rig,
    ItemBuilder item) {
  private static final Equipment ROTATOR =
      new Equipment(Equipment.ROTATOR, 15.0, 1500, null, null, null, null);

  static Stream<Misfit> all() {
    return Stream.of(items(), cameras(), equipment()).flatMap(List::stream);
  }

  private static List<Misfit> items() {
    return List.of(
        of(
            FitRule.PLATE_PAYLOAD,
            "41 kg",
            "40 kg",
            table().fitted(Equipment.of(Equipment.HOLDER)),
            new ItemBuilder().holder(40)),
        of(
            FitRule.PLATE_PAYLOAD,
            "40.02 kg",
            "40 kg",
            table().fitted(Equipment.of(Equipment.HOLDER)),
            new ItemBuilder().holder(39.02)),
        of(
            FitRule.HANGING_PAYLOAD,
            "2 kg",
            "1.5 kg",
            table().size(new PlateSize(850, 25, 1000, 40, 1.5, 1200, 800)).fitted(ROTATOR),
            new ItemBuilder().massKg(2.0).hanging(new Hanging(2, 900, false))),
        // The diagonal of 900 x 200 is 921.95 mm; the plate of 850 mm keeps 25 free all round.
        of(
            FitRule.BASE_ON_PLATE,
            "922.0 mm",
            "800 mm",
            table(),
            new ItemBuilder().size(900, 200, 150)),
        of(
            FitRule.CLEAR_CIRCLE,
            "1100 mm",
            "1000 mm",
            table(),
            new ItemBuilder().rotationDiameterMm(1100)),
        of(
            FitRule.ITEM_HEIGHT,
            "1300 mm",
            "1200 mm",
            table(),
            new ItemBuilder().size(300, 200, 1300)));
  }

  private static List<Misfit> cameras() {
    return List.of(
        of(
            FitRule.CAMERA_HEIGHT,
            "75 mm",
            "100 to 1500 mm",
            table().camera(new CameraReach(100, 1500, 60, 2000, 0.5, 0.55, true, 5)),
            new ItemBuilder()),
        recipe(
            FitRule.ELEVATION,
            "75 deg",
            "60 deg",
            table(),
            FloorFixtures.spin().rows(new FrameRow(75, 8, 360, false))),
        recipe(
            FitRule.LIGHTING,
            "continuous light",
            "strobe only",
            table().camera(new CameraReach(0, 1500, 60, 2000, 0.5, 0.55, false, 5)),
            FloorFixtures.spin().lighting(Lighting.CONTINUOUS)),
        recipe(
            FitRule.LIGHTING,
            "strobe",
            "continuous light only",
            table().camera(new CameraReach(0, 1500, 60, 2000, 0.5, null, true, 5)),
            FloorFixtures.spin().lighting(Lighting.STROBE)),
        // The diagonal of 300 x 200 is 360.6 mm, and 100 mm are wanted on each side.
        of(
            FitRule.BACKGROUND,
            "560.6 mm",
            "500 mm",
            table().camera(new CameraReach(0, 1500, 60, 500, 0.5, 0.55, true, 5)),
            new ItemBuilder()));
  }

  private static List<Misfit> equipment() {
    AttributeValue direct = new AttributeValue("white", "white", null, Set.of("clear"), null);
    Physics fast = new Physics(0.5, 1.5, 5, 60, 5, 0.3, 0.05, 1.0, 200, FloorFixtures.lift());
    return List.of(
        recipe(FitRule.EQUIPMENT, "fog", "none", table(), FloorFixtures.spin().equipment("fog")),
        of(
            FitRule.SETUP_VALUE,
            "background white",
            "grey",
            table().offers(Map.of("background", Set.of("grey"))),
            new ItemBuilder()),
        new Misfit(
            FitRule.FINISH,
            "finish clear",
            "background white is not for it",
            FloorFixtures.floor().attributes(FloorFixtures.attribute("background", direct)),
            table(),
            new ItemBuilder().finish("clear")),
        // At 100 mm and 60 deg/s: 0.1 x hypot(1.0472^2, 0.0873) m/s2; tips at g x 5/500 / 1.5.
        new Misfit(
            FitRule.STABILITY,
            "0.110 m/s2 at the slowest turn, or a holder",
            "0.065 m/s2 before it slides or tips",
            FloorFixtures.floor().physics(fast),
            table(),
            new ItemBuilder().size(10, 10, 1000).offsetMm(100)),
        recipe(
            FitRule.CREW,
            "skills handle, retouch to load",
            "nobody has all",
            table(),
            FloorFixtures.spin().skills("retouch")));
  }

  private static RigBuilder table() {
    return new RigBuilder("table");
  }

  private static Misfit of(
      FitRule rule, String needed, String offered, RigBuilder rig, ItemBuilder item) {
    return new Misfit(rule, needed, offered, FloorFixtures.floor(), rig, item);
  }

  private static Misfit recipe(
      FitRule rule, String needed, String offered, RigBuilder rig, RecipeBuilder recipe) {
    FloorBuilder floor = FloorFixtures.floor().recipes(recipe.build());
    return new Misfit(rule, needed, offered, floor, rig, new ItemBuilder());
  }

  List<FitReason> reasons() {
    return new FitCheck(floor.build())
        .of(new JobBuilder("j").item(item).build(), rig.build())
        .reasons();
  }

  @Override
  public String toString() {
    return rule + ": " + needed;
  }
}
