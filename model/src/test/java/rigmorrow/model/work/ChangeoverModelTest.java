package rigmorrow.model.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static rigmorrow.model.FloorFixtures.attribute;
import static rigmorrow.model.FloorFixtures.change;
import static rigmorrow.model.FloorFixtures.value;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;

class ChangeoverModelTest {
  private static final Rig TABLE = new RigBuilder("table").build();
  private static final Rig PLATFORM = new RigBuilder("platform").build();

  /** Lines in an order that gives the wrong answer when the first one counts. */
  @ParameterizedTest
  @CsvSource({
    "white, grey, 30",
    "black, grey, 20",
    "white, black, 10",
    "grey, black, 1",
    "grey, white, 1"
  })
  void theMostSpecificLineCounts(String from, String to, int seconds) {
    ChangeoverModel model =
        model(
            change("background", "*", "*", 1, 0, 1),
            change("background", "white", "*", 10, 0, 1),
            change("background", "*", "grey", 20, 0, 1),
            change("background", "white", "grey", 30, 0, 1));

    assertThat(seconds(model, PLATFORM, from, to)).isEqualTo(seconds);
  }

  @Test
  void aLineForNamedRigsGoesBeforeEveryOther() {
    ChangeoverModel model =
        model(
            change("background", "white", "grey", 30, 0, 1),
            onTable("*", "*", 40),
            onTable("white", "*", 41));

    assertThat(seconds(model, TABLE, "white", "grey")).isEqualTo(41);
    assertThat(seconds(model, TABLE, "black", "grey")).isEqualTo(40);
    assertThat(seconds(model, PLATFORM, "white", "grey")).isEqualTo(30);
  }

  @Test
  void ofEquallySpecificLinesTheFirstCounts() {
    ChangeoverModel model =
        model(change("background", "*", "*", 5, 0, 1), change("background", "*", "*", 6, 0, 1));

    assertThat(seconds(model, TABLE, "white", "grey")).isEqualTo(5);
  }

  @Test
  void thereAndBackMayDiffer() {
    ChangeoverModel model =
        model(
            change("background", "white", "black", 60, 0, 1),
            change("background", "black", "white", 90, 0, 1));

    assertThat(seconds(model, TABLE, "white", "black")).isEqualTo(60);
    assertThat(seconds(model, TABLE, "black", "white")).isEqualTo(90);
  }

  @Test
  void aChangeWithoutALineIsRefusedByName() {
    ChangeoverModel model = model(change("background", "white", "black", 60, 0, 1));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> seconds(model, TABLE, "black", "white"))
        .withMessage("no changeover time for background from black to white on table");
  }

  @ParameterizedTest
  @CsvSource({"1.5, 91, 137", "1.1, 100, 110", "0.5, 3, 2", "1, 60, 60"})
  void theRigsFactorScalesHandsOnTimeRoundedUp(double factor, int seconds, int scaled) {
    ChangeoverModel model = model(change("background", "*", "*", seconds, 600, 1));
    Rig rig = new RigBuilder("slow").changeoverFactor(factor).build();

    ChangeoverStep step = steps(model, rig, "white", "grey").get(0);
    assertThat(step.attendedSeconds()).isEqualTo(scaled);
    assertThat(step.unattendedSeconds()).isEqualTo(600);
  }

  @Test
  void stepsComeInFloorOrderForWhatChanges() {
    ChangeoverModel model = new ChangeoverModel(FloorFixtures.floor().build());
    Setup request = new Setup(Map.of("surface", "clear", "background", "grey", "light", "soft"));

    assertThat(model.steps(PLATFORM, FloorFixtures.whiteSoftMatt(), request))
        .extracting(ChangeoverStep::text)
        .containsExactly("background: white to grey", "surface: matt to clear");
  }

  @Test
  void aStepNamesTheValuesAsPeopleCallThem() {
    SetupAttribute camera =
        new SetupAttribute(
            "camera",
            "Camera",
            List.of(called("b-70", "body B, 70 mm"), called("b-macro", "body {to}, macro")));
    ChangeoverModel model = cameraModel(camera, "Lens: {from} off, {to} on, {torque} tight");

    assertThat(text(model, "b-70", "b-macro"))
        .isEqualTo("Lens: body B, 70 mm off, body {to}, macro on, {torque} tight");
    assertThat(text(cameraModel(camera, null), "b-70", "b-macro"))
        .isEqualTo("Camera: body B, 70 mm to body {to}, macro");
  }

  @Test
  void aNameThatTwoValuesHaveIsGivenWithItsId() {
    SetupAttribute camera =
        new SetupAttribute(
            "camera",
            "Camera",
            List.of(called("b-1", "body B"), called("b-2", "body B"), called("a-1", "body A")));

    assertThat(text(cameraModel(camera, null), "b-1", "b-2"))
        .isEqualTo("Camera: body B (b-1) to body B (b-2)");
    assertThat(text(cameraModel(camera, "Take {to}"), "b-1", "a-1")).isEqualTo("Take body A");
    assertThat(camera.nameOf("c-9")).isEqualTo("c-9");
  }

  private static AttributeValue called(String id, String label) {
    return new AttributeValue(id, label, null, Set.of(), null);
  }

  private static ChangeoverModel cameraModel(SetupAttribute camera, @Nullable String step) {
    ChangeoverRule rule =
        new ChangeoverRule("camera", "*", "*", Set.of(), 60, 0, 1, Set.of(), step);
    return new ChangeoverModel(FloorFixtures.floor().attributes(camera).changeovers(rule).build());
  }

  private static String text(ChangeoverModel model, String from, String to) {
    return model
        .steps(TABLE, new Setup(Map.of("camera", from)), new Setup(Map.of("camera", to)))
        .get(0)
        .text();
  }

  @Test
  void kitTakesFetchingAndAligningButNoFactor() {
    ChangeoverModel model = new ChangeoverModel(FloorFixtures.floor().build());
    Rig table = FloorFixtures.table().build();

    assertThat(model.kitMove(FloorFixtures.head(), "head-1", "shelf", table).attendedSeconds())
        .isEqualTo(150);
    assertThat(model.kitMove(FloorFixtures.head(), "head-1", "platform", table).attendedSeconds())
        .isEqualTo(210);
    assertThat(model.kitMove(FloorFixtures.head(), "head-1", "shelf", table).text())
        .contains("(head-1) from shelf, mount");
    assertThat(model.kitMove(FloorFixtures.head(), "head-1", "platform", table).text())
        .as("a rig by its name")
        .contains(
            "(head-1) from %s (platform), mount"
                .formatted(FloorFixtures.platform().build().name()));
    assertThat(model.ringService(new PlateRing(50, 0, 300, Set.of())).attendedSeconds())
        .isEqualTo(300);
  }

  private static ChangeoverRule onTable(String from, String to, int seconds) {
    return new ChangeoverRule(
        "background", from, to, Set.of("table"), seconds, 0, 1, Set.of(), null);
  }

  private static ChangeoverModel model(ChangeoverRule... rules) {
    return new ChangeoverModel(
        FloorFixtures.floor()
            .attributes(attribute("background", value("white"), value("grey"), value("black")))
            .changeovers(rules)
            .build());
  }

  private static int seconds(ChangeoverModel model, Rig rig, String from, String to) {
    return steps(model, rig, from, to).get(0).attendedSeconds();
  }

  private static List<ChangeoverStep> steps(
      ChangeoverModel model, Rig rig, String from, String to) {
    return model.steps(
        rig, new Setup(Map.of("background", from)), new Setup(Map.of("background", to)));
  }
}
