package rigmorrow.data.shottable;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Floor;
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
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;

/** The smallest floor a shot list can be read against: two recipes and two setup attributes. */
public final class SmallFloor {
  private static final List<OpenHours> DAYTIME =
      List.of(new OpenHours(Set.of(DayOfWeek.THURSDAY), LocalTime.of(8, 0), LocalTime.of(16, 0)));

  /** The floor. */
  public static final Floor FLOOR =
      new Floor(
          "Small floor",
          ZoneId.of("Europe/Copenhagen"),
          List.of(rig()),
          List.of(),
          List.of(),
          List.of(new Operator("ann", "Ann", Set.of(), DAYTIME, List.of(), List.of())),
          List.of(
              attribute("background", "Baggrund", value("white", "Hvid"), value("grey", "Grå")),
              attribute("plate", "Plate", value("acrylic", "Acrylic"), value("felt", "Felt"))),
          List.of(),
          List.of(
              recipe("spin-36", List.of(new FrameRow(10, 36, 360, false)), List.of()),
              recipe("stills-4", List.of(), List.of(new Still(10, 0), new Still(10, 90)))),
          List.of(),
          new Handling(60, 30, 60, 60, 30, 30, 30, 30, 15, Set.of(), Set.of(), Set.of()),
          new Physics(
              0.4, 1.5, 10, 5, 5, 0.3, 0.05, 1, 300, new LiftGeometry(700, 300, 0, 0.2, 1.5)),
          Weights.DEFAULT,
          new Costs("EUR", 30, 1.5, 20, 10, 50));

  private SmallFloor() {}

  private static Rig rig() {
    AxisLimits axis = new AxisLimits(60, 120, 600, 0.3);
    return new Rig(
        "R1",
        "Rig 1",
        "table",
        new PlateSize(850, 20, 1_200, 40, 0, 1_500, 800),
        new CameraReach(200, 1_800, 60, 1_400, 0.4, 0.8, true, 4),
        axis,
        axis,
        List.of(),
        Set.of(),
        Map.of(),
        new Setup(Map.of("background", "white", "plate", "acrylic")),
        1,
        false,
        Map.of(),
        DAYTIME,
        List.of(),
        null,
        List.of());
  }

  private static SetupAttribute attribute(String id, String label, AttributeValue... values) {
    return new SetupAttribute(id, label, List.of(values));
  }

  private static AttributeValue value(String id, String label) {
    return new AttributeValue(id, label, null, Set.of(), null);
  }

  private static Recipe recipe(String id, List<FrameRow> rows, List<Still> stills) {
    return new Recipe(
        id,
        id,
        rows,
        stills,
        0.01,
        1,
        Lighting.EITHER,
        Setup.ANY,
        Set.of(),
        Set.of(),
        false,
        50,
        Map.of());
  }
}
