package rigmorrow.model.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorBuilder;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Power;

class WorkModelTest {
  private static final Power MAINS = new Power(230, 60, "C");

  @Test
  void addsUpHandsOnTimes() {
    ItemBuilder item =
        new ItemBuilder()
            .hanging(new Hanging(1, 900, false))
            .power(MAINS)
            .holder(0.5)
            .heightSource(HeightSource.HAND);

    JobWork work = work(new JobBuilder("j").item(item));

    assertThat(work.load().seconds()).isEqualTo(120 + 30 + 60 + 180 + 60 + 45);
    assertThat(work.unload().seconds()).isEqualTo(90 + 60 + 30);
    assertThat(work.load().skills()).containsExactlyInAnyOrder("handle", "hang", "power");
  }

  @Test
  void aHolderIsOneMoreHand() {
    assertThat(work(new JobBuilder("j").item(new ItemBuilder().handsNeeded(2))).load().people())
        .isEqualTo(2);
    assertThat(
            work(new JobBuilder("j").item(new ItemBuilder().handsNeeded(2).holder(0.5)))
                .load()
                .people())
        .isEqualTo(1);
  }

  @Test
  void saysWhereFewerPeoplePlaceItThanTheListAsksFor() {
    assertThat(cautions(new ItemBuilder().handsNeeded(3).holder(0.5)))
        .contains(
            "Needs 3 people by the list; 2 are planned, since its holder counts as one. Call"
                + " another before you start, unless the holder does that work.");
    assertThat(cautions(new ItemBuilder().handsNeeded(2).holder(0.5)))
        .anyMatch(text -> text.startsWith("Needs 2 people by the list; 1 is planned"));
    assertThat(cautions(new ItemBuilder().handsNeeded(2).holder(0.5).massKg(24.0)))
        .as("its weight brings the second person")
        .noneMatch(text -> text.contains("by the list"));
    assertThat(cautions(new ItemBuilder().handsNeeded(2)))
        .noneMatch(text -> text.contains("by the list"));
  }

  /** NIOSH 94-110: the load constant is 23 kg, so no lift of 24 kg has an index of at most 1. */
  @Test
  void twoPeopleLiftWhatIsTooHeavyForOne() {
    assertThat(work(new JobBuilder("j").item(new ItemBuilder().massKg(24.0))).load().people())
        .isEqualTo(2);
    assertThat(work(new JobBuilder("j").item(new ItemBuilder().massKg(2.0))).load().people())
        .isEqualTo(1);
  }

  @Test
  void aMeasuredTimeReplacesTheComputedOneButNotTheTurns() {
    JobWork work = work(new JobBuilder("j"));

    assertThat(work.captureSeconds()).isEqualTo(600);
    assertThat(work.turns()).isEqualTo(1);
  }

  @Test
  void aFactorScalesTheComputedTime() {
    FloorBuilder floor =
        FloorFixtures.floor()
            .recipes(FloorFixtures.spin().measuredCaptureSeconds(Map.of()).build());
    RigBuilder slow = FloorFixtures.table().captureFactors(Map.of("spin", 2.0));
    JobBuilder job = new JobBuilder("j");
    double plain = captureTermsSum(work(floor, FloorFixtures.table(), job));

    assertThat(captureTermsSum(work(floor, slow, job))).isCloseTo(2 * plain, within(1e-9));
    assertThat(work(floor, slow, job).captureSeconds()).isEqualTo((int) Math.ceil(2 * plain));
  }

  @Test
  void roundsTurnsUp() {
    FloorBuilder floor =
        FloorFixtures.floor()
            .recipes(
                FloorFixtures.spin()
                    .rows(new FrameRow(0, 8, 360, false), new FrameRow(30, 8, 90, false))
                    .build());

    assertThat(work(floor, FloorFixtures.table(), new JobBuilder("j")).turns()).isEqualTo(2);
  }

  @Test
  void theJobsOwnWishIsStrongerThanItsItemsAndThatThanTheRecipes() {
    FloorBuilder floor =
        FloorFixtures.floor()
            .itemSetups(
                new ItemSetupRule(
                    "clear", null, null, new Setup(Map.of("background", "grey", "light", "crisp"))),
                new ItemSetupRule(null, true, null, new Setup(Map.of("surface", "clear"))));
    JobBuilder job =
        new JobBuilder("j").item(new ItemBuilder().finish("clear")).setup(Map.of("light", "soft"));

    assertThat(work(floor, FloorFixtures.table(), job).request().values())
        .isEqualTo(Map.of("background", "grey", "light", "soft"));
  }

  @Test
  void fittedEquipmentNeedsNoKit() {
    JobBuilder hung =
        new JobBuilder("j").item(new ItemBuilder().hanging(new Hanging(1, 900, false)));
    Equipment rotator = new Equipment(Equipment.ROTATOR, 5.0, 1000, null, null, null, null);
    Equipment weak = new Equipment(Equipment.ROTATOR, 0.5, 1000, null, null, null, null);

    assertThat(work(FloorFixtures.floor(), FloorFixtures.table(), hung).kits())
        .containsExactly("head");
    assertThat(work(FloorFixtures.floor(), FloorFixtures.table().fitted(rotator), hung).kits())
        .isEmpty();
    assertThat(work(FloorFixtures.floor(), FloorFixtures.table().fitted(weak), hung).kits())
        .containsExactly("head");
  }

  @Test
  void anUnmeasuredItemIsNeverGuessed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> work(new JobBuilder("j").item(new ItemBuilder().massKg(null))));
  }

  @Test
  void saysWhatStandsOffItsBaseAndOnlyOfAnOffsetThatWasGiven() {
    ItemBuilder box = new ItemBuilder().size(300, 101, 400).massKg(2.0);
    assertThat(cautions(box)).noneMatch(text -> text.contains("base"));
    assertThat(cautions(box.offsetMm(50))).noneMatch(text -> text.contains("base"));
    assertThat(cautions(box.offsetMm(51)))
        .as("one distance, from the plate's centre")
        .contains(
            "May tip: centre of mass 51 mm off the plate's centre; placed in the middle, its base"
                + " reaches out only 50.5 mm. Secure it against tipping before you let go, and do not"
                + " turn it until it is; local rules come first.");
    assertThat(cautions(box.hanging(new Hanging(2, 900, false))))
        .as("what hangs free has no base")
        .noneMatch(text -> text.contains("base"));
    assertThat(cautions(new ItemBuilder().size(300, 101, 400).massKg(2.0).offsetMm(51).holder(1)))
        .as("what a holder holds does not stand by itself")
        .noneMatch(text -> text.contains("base"));
  }

  private static List<String> cautions(ItemBuilder item) {
    return work(new JobBuilder("j").item(item)).cautions();
  }

  private static double captureTermsSum(JobWork work) {
    return work.terms().stream()
        .filter(term -> term.part().equals("capture"))
        .mapToDouble(TimeTerm::seconds)
        .sum();
  }

  private static JobWork work(JobBuilder job) {
    return work(FloorFixtures.floor(), FloorFixtures.table(), job);
  }

  private static JobWork work(FloorBuilder floor, RigBuilder rig, JobBuilder job) {
    return new WorkModel(floor.build()).of(job.build(), rig.build());
  }
}
