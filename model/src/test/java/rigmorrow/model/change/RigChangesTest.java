package rigmorrow.model.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static rigmorrow.model.change.Changed.batch;
import static rigmorrow.model.change.Changed.change;
import static rigmorrow.model.change.Changed.problems;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.RecipeBuilder;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.work.ChangeoverModel;

class RigChangesTest {
  private static final FloorChange.RigLike TWIN = new FloorChange.RigLike("table", "t2", "Twin");
  private static final FloorChange.RigGone NO_TABLE = new FloorChange.RigGone("table");

  @Test
  void aTwinHasAllThatItsModelHasBesideItsPast() {
    Floor floor = FloorFixtures.floor().build();
    LocalDateTime nine = LocalDateTime.parse("2026-03-02T09:00");
    Rig table = floor.rigs().get(0).withClosed(List.of(new Closure(nine, nine.plusHours(1), "x")));
    Rig twin = change(batch(floor.withRigs(List.of(table))), TWIN).floor().rig("t2").orElseThrow();
    assertThat(twin.name()).isEqualTo("Twin");
    assertThat(twin.closed()).isEmpty();
    assertThat(twin.ring().turnsSinceService()).isZero();
    assertThat(table.ring().turnsSinceService()).isEqualTo(49);
    assertThat(twin)
        .usingRecursiveComparison()
        .ignoringFields("id", "name", "closed", "ring.turnsSinceService")
        .isEqualTo(table);
  }

  @Test
  void aTwinTakesAsLongAsItsModel() {
    ChangeoverRule slow = FloorFixtures.change("surface", "*", "clear", 500, 7, 2);
    Floor floor =
        FloorFixtures.floor()
            .changeovers(
                FloorFixtures.change("surface", "*", "*", 60, 0, 1),
                ChangeoverChanges.of(slow, Set.of("table"), 500))
            .fetches(
                new FetchTime("shelf", "table", 11),
                new FetchTime("table", "*", 12),
                new FetchTime("*", "*", 99))
            .build();
    Floor with = change(batch(floor), TWIN).floor();
    Map<String, Integer> measured = with.recipes().get(0).measuredCaptureSeconds();
    assertThat(measured.get("t2")).isEqualTo(measured.get("table")).isEqualTo(600);
    assertThat(with.fetchSeconds("shelf", "t2")).isEqualTo(11);
    assertThat(with.fetchSeconds("t2", "platform")).isEqualTo(12);
    assertThat(with.fetchSeconds("shelf", "platform")).isEqualTo(99);
    assertThat(with.changeovers().get(1).rigs()).containsExactlyInAnyOrder("table", "t2");
  }

  @Test
  void aNewRigNeedsAnIdOfItsOwn() {
    assertThat(problems(new FloorChange.RigLike("table", "platform", "x")))
        .containsExactly(
            new ChangeProblem(0, "id", "platform", "an id that no rig has", List.of()));
    assertThat(problems(new FloorChange.RigLike("table", "shelf", "x")))
        .extracting(ChangeProblem::accepted)
        .containsExactly("an id that is not the name of a shelf");
    assertThat(problems(TWIN, new FloorChange.NewRig(FloorFixtures.table().build()), TWIN))
        .extracting(ChangeProblem::change)
        .containsExactly(1, 2);
  }

  @Test
  void tellsWhichRigsThereAre() {
    assertThat(problems(new FloorChange.RigLike("tabel", "x", "x")))
        .containsExactly(
            new ChangeProblem(0, "like", "tabel", "rigs", List.of("table", "platform")));
  }

  @Test
  void addsANewRig() {
    Rig rig = FloorFixtures.platform().build();
    Floor floor = FloorFixtures.floor().rigs(FloorFixtures.table().build()).build();
    assertThat(change(batch(floor), new FloorChange.NewRig(rig)).floor().rigs())
        .endsWith(rig)
        .hasSize(2);
  }

  @Test
  void aRigThatGoesTakesWithItWhatNamesIt() {
    Floor floor =
        FloorFixtures.floor()
            .fetches(new FetchTime("shelf", "table", 11), new FetchTime("table", "*", 12))
            .changeovers(
                FloorFixtures.change("surface", "*", "*", 60, 0, 1),
                named(Set.of("table")),
                named(Set.of("table", "platform")))
            .build();
    Pin pin = new Pin("a", "table", null, null, PinState.PLANNED);
    Pin other = new Pin("b", "platform", null, null, PinState.PLANNED);
    var after = change(batch(floor, pin, other), NO_TABLE);
    assertThat(after.floor().rigs()).extracting(Rig::id).containsExactly("platform");
    assertThat(after.floor().fetches()).isEmpty();
    assertThat(after.floor().changeovers())
        .extracting(ChangeoverRule::rigs)
        .containsExactly(Set.of(), Set.of("platform"));
    assertThat(after.floor().recipes().get(0).measuredCaptureSeconds())
        .containsOnlyKeys("platform");
    assertThat(after.shotList().pins()).containsExactly(other);
    assertThat(after.shotList().jobs()).hasSize(2);
  }

  @Test
  void kitOnARigThatGoesLiesThereAsOnAShelf() {
    FloorChange onTable = new FloorChange.MoreUnits("head", 1, "table");
    Floor floor =
        FloorFixtures.floor()
            .fetches(new FetchTime("table", "*", 12), new FetchTime("*", "*", 99))
            .build();
    Floor after = change(batch(floor), onTable, NO_TABLE).floor();
    assertThat(after.kits().get(0).units().get(1).place()).isEqualTo("table");
    assertThat(after.fetchSeconds("table", "platform")).isEqualTo(12);
  }

  @Test
  void theLastRigStays() {
    assertThat(problems(NO_TABLE, new FloorChange.RigGone("platform"), NO_TABLE))
        .extracting(ChangeProblem::change, ChangeProblem::accepted)
        .containsExactly(tuple(1, "a rig that is not the only one"), tuple(2, "rigs"));
  }

  @Test
  void aRigStaysOnWhichSomethingRuns() {
    LocalDateTime eight = LocalDateTime.parse("2026-03-02T08:00");
    Pin running = new Pin("a", "table", 0, eight, PinState.RUNNING);
    var made = ScenarioMaker.of(batch(FloorFixtures.floor().build(), running), List.of(NO_TABLE));
    assertThat(made.problems())
        .extracting(ChangeProblem::accepted)
        .containsExactly("a rig on which a has not begun");
    assertThat(made.batch().floor().rigs()).hasSize(2);
  }

  @Test
  void aRigStaysThatAloneHasATimeForARecipe() {
    Floor floor =
        FloorFixtures.floor()
            .recipes(new RecipeBuilder("only").measuredCaptureSeconds(Map.of("table", 5)).build())
            .build();
    assertThat(ScenarioMaker.of(batch(floor), List.of(NO_TABLE)).problems())
        .extracting(ChangeProblem::accepted)
        .containsExactly("a rig that is not the only one with a time for only");
  }

  @Test
  void strobesTakeSecondsOrAFactor() {
    Floor floor = FloorFixtures.floor().build();
    double before = recycle(floor, 0);
    assertThat(before).isPositive();
    Floor half = change(batch(floor), new FloorChange.StrobeRecycle(List.of(), null, 0.5)).floor();
    assertThat(recycle(half, 0)).isEqualTo(before / 2);
    assertThat(recycle(half, 1)).isEqualTo(recycle(floor, 1) / 2);
    Floor one =
        change(batch(floor), new FloorChange.StrobeRecycle(List.of("table"), 0.25, null)).floor();
    assertThat(recycle(one, 0)).isEqualTo(0.25);
    assertThat(recycle(one, 1)).isEqualTo(recycle(floor, 1));
  }

  private static double recycle(Floor floor, int rig) {
    return floor.rigs().get(rig).camera().strobeRecycleSeconds();
  }

  @Test
  void otherChangeoverTimesHoldForTheRigsThatAreNamed() {
    Floor floor = FloorFixtures.floor().build();
    Floor after =
        change(
                batch(floor),
                new FloorChange.ChangeoverTimes(
                    "background", List.of("table"), null, null, null, 0.5))
            .floor();
    // The table has a factor of 1.5 of its own.
    assertThat(seconds(after, "table", "white", "grey")).isEqualTo(225);
    assertThat(seconds(after, "table", "grey", "white")).isEqualTo(180);
    assertThat(seconds(after, "platform", "white", "grey")).isEqualTo(300);
  }

  @Test
  void otherChangeoverTimesHoldForTheValuesThatAreNamed() {
    Floor floor = FloorFixtures.floor().build();
    FloorChange toClear =
        new FloorChange.ChangeoverTimes("surface", List.of(), null, "clear", 10, null);
    Floor after = change(batch(floor), toClear).floor();
    assertThat(surfaceSeconds(after, "matt", "clear")).isEqualTo(10);
    assertThat(surfaceSeconds(after, "clear", "matt")).isEqualTo(60);
  }

  @Test
  void allChangeoverTimesOfAnAttributeCanBeScaled() {
    Floor floor = FloorFixtures.floor().build();
    FloorChange faster =
        new FloorChange.ChangeoverTimes("background", List.of(), null, null, null, 0.1);
    Floor after = change(batch(floor), faster).floor();
    assertThat(after.changeovers()).hasSameSizeAs(floor.changeovers());
    assertThat(seconds(after, "platform", "white", "grey")).isEqualTo(30);
    assertThat(seconds(after, "platform", "grey", "white")).isEqualTo(24);
    assertThat(after.changeovers().get(2)).isEqualTo(floor.changeovers().get(2));
  }

  @Test
  void changeoverTimesNameWhatThereIs() {
    assertThat(
            problems(
                new FloorChange.ChangeoverTimes("colour", List.of("t9"), null, null, 1, null),
                new FloorChange.ChangeoverTimes("light", List.of(), "dim", "bright", 1, null)))
        .extracting(ChangeProblem::change, ChangeProblem::field, ChangeProblem::value)
        .containsExactly(
            tuple(0, "rigs", "t9"),
            tuple(0, "attribute", "colour"),
            tuple(1, "from", "dim"),
            tuple(1, "to", "bright"));
  }

  private static int seconds(Floor floor, String rig, String from, String to) {
    return seconds(floor, rig, "background", from, to);
  }

  private static int surfaceSeconds(Floor floor, String from, String to) {
    return seconds(floor, "platform", "surface", from, to);
  }

  private static int seconds(Floor floor, String rig, String attribute, String from, String to) {
    var now = FloorFixtures.whiteSoftMatt();
    var before = now.after(new Setup(Map.of(attribute, from)));
    var then = new Setup(Map.of(attribute, to));
    return new ChangeoverModel(floor)
        .steps(floor.rig(rig).orElseThrow(), before, then).stream()
            .mapToInt(ChangeoverStep::attendedSeconds)
            .sum();
  }

  private static ChangeoverRule named(Set<String> rigs) {
    return ChangeoverChanges.of(FloorFixtures.change("surface", "*", "clear", 5, 0, 1), rigs, 5);
  }
}
