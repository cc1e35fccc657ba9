package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomSequences;

/** Crews too small for their floor, skills nobody has, pins that cannot be kept. */
class OddFloorsTimelineTest {
  private static final Map<String, String> GREY_CRISP =
      Map.of("background", "grey", "light", "crisp");

  @Test
  void doesStepsOneByOneWhenThereIsNobodyToShareThemWith() {
    Plan plan =
        twoSteps(FloorFixtures.change("light", "*", "*", 120, 0, 1))
            .job("left", "a", job -> job.setup(GREY_CRISP))
            .plan();

    assertThat(Bench.line(plan, "a")).startsWith("change 08:00-08:07 ann, load 08:07-08:09 ann");
    assertThat(plan.figures().changeoverSeconds()).isEqualTo(420);
    assertThat(plan.figures().hard()).isZero();
  }

  @Test
  void breaksAHardRuleWhereACrewOfOneWouldHaveToBeTwo() {
    Plan plan =
        twoSteps(FloorFixtures.change("light", "*", "*", 120, 0, 2))
            .job("left", "a", job -> job.setup(GREY_CRISP))
            .plan(FloorRule.ENOUGH_PEOPLE);

    assertThat(Bench.line(plan, "a")).startsWith("change +00:00-+00:07 ann");
    assertThat(plan.figures().hard()).isPositive();
  }

  @Test
  void breaksAHardRuleWhereNobodyHasAllSkills() {
    Plan plan =
        twoSteps(FloorFixtures.change("light", "*", "*", 120, 0, 1, "light"))
            .job("left", "a", job -> job.setup(GREY_CRISP))
            .plan(FloorRule.OPERATOR_SKILLS);

    assertThat(Bench.line(plan, "a")).startsWith("change +00:00-+00:07 ann");
    assertThat(plan.figures().hard()).isPositive();
  }

  @Test
  void countsAPinnedJobThatNoRigCanTake() {
    Bench bench =
        new Bench()
            .job("left", "a")
            .job("left", "huge", job -> job.item(new ItemBuilder().size(3000, 2500, 900)));
    Batch batch = pinned(bench, new Pin("huge", "left", null, null, PinState.PLANNED));
    CompiledBatch compiled = CompiledBatch.of(batch);

    Sequences sequences = firstOnTheLeft(compiled);

    assertThat(sequences.hard()).isEqualTo(1);
    assertThat(CheckedPlans.decoded(compiled, batch, sequences).figures().hard()).isEqualTo(1);
  }

  @Test
  void countsAPinnedStartBeforeTheFirstDay() {
    LocalDateTime theEvening = FloorFixtures.MONDAY.minusDays(1).atTime(23, 0);
    Batch batch =
        pinned(new Bench().job("left", "a"), new Pin("a", "left", 0, theEvening, PinState.RUNNING));
    CompiledBatch compiled = CompiledBatch.of(batch);

    Plan plan = CheckedPlans.decoded(compiled, batch, firstOnTheLeft(compiled));

    // Begins at 08:00, nine hours after its pin.
    assertThat(plan.figures().hard()).isEqualTo(9 * 3600);
  }

  private static Sequences firstOnTheLeft(CompiledBatch compiled) {
    return RandomSequences.scored(compiled, List.of(List.of(0), List.of()), List.of());
  }

  private static Batch pinned(Bench bench, Pin pin) {
    Batch batch = bench.batch();
    ShotList list = batch.shotList();
    return new Batch(
        batch.floor(), new ShotList(list.date(), list.days(), list.jobs(), List.of(pin)));
  }

  /** One rig on which two may share a changeover, and ann alone; the background takes 5 minutes. */
  private static Bench twoSteps(ChangeoverRule light) {
    Setup start = new Setup(Map.of("background", "white", "light", "soft"));
    return new Bench()
        .floor(
            floor ->
                floor
                    .rigs(Bench.rig("left").twoStepsAtOnce(true).initialSetup(start).build())
                    .attributes(
                        FloorFixtures.attribute(
                            "background",
                            FloorFixtures.value("white"),
                            FloorFixtures.value("grey")),
                        FloorFixtures.attribute(
                            "light", FloorFixtures.value("soft"), FloorFixtures.value("crisp")))
                    .changeovers(FloorFixtures.change("background", "*", "*", 300, 0, 1), light));
  }
}
