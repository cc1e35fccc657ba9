package rigmorrow.app.board.touch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.HandTimer;

/** What each touch does to a shot list and to orders, its words, and why it is refused. */
class HandTest {
  private static final PlanOrigin BY_HAND = new PlanOrigin("hand", 0, 1, 0, "done");

  /** Two rigs more: one takes 5 kg where the others take 40, one is open for 3 minutes. */
  private static final Floor FLOOR =
      FloorFixtures.floor()
          .rigs(
              FloorFixtures.table().build(),
              FloorFixtures.platform().build(),
              new RigBuilder("small").size(new PlateSize(850, 25, 1000, 5, 5, 1200, 800)).build(),
              new RigBuilder("brief").open(FloorFixtures.hours("08:00", "08:03")).build())
          .build();

  private final HandTimer timer = new HandTimer(FLOOR);
  private final List<Pin> pins = new ArrayList<>();
  private final List<String> heldBack = new ArrayList<>();
  private List<List<String>> orders =
      List.of(List.of("a", "b", "c"), List.of("d", "e", "heavy"), List.of("f"), List.of());

  private static final List<ShotJob> JOBS =
      List.of(
          new JobBuilder("a").shouldBy(at("12:00")).build(),
          new JobBuilder("b").arrivesAt(at("09:00")).build(),
          new JobBuilder("c").build(),
          new JobBuilder("d").build(),
          new JobBuilder("e").build(),
          new JobBuilder("f").weight(3).build(),
          new JobBuilder("heavy").item(new ItemBuilder().massKg(10.0)).build(),
          new JobBuilder("giant").item(new ItemBuilder().massKg(400.0)).build(),
          new JobBuilder("piece").item(new ItemBuilder().massKg(null)).build(),
          new JobBuilder("spare").build());

  private static LocalDateTime at(String time) {
    return FloorFixtures.MONDAY.atTime(LocalTime.parse(time));
  }

  private Batch batch() {
    return new Batch(FLOOR, new ShotList(FloorFixtures.MONDAY, 1, JOBS, pins, heldBack));
  }

  private Hand.Touched touch(Touch touch) {
    return new Hand(new Ground(batch(), new Orders(orders)), timer).apply(touch);
  }

  private Hand.Touched done(Touch touch) {
    Hand.Touched done = touch(touch);
    assertThat(done.refusals()).isEmpty();
    assertThat(done.batch() != null && done.orders() != null).isTrue();
    return done;
  }

  private List<String> refused(Touch touch) {
    Hand.Touched refused = touch(touch);
    assertThat(refused.batch() == null && refused.orders() == null).isTrue();
    assertThat(refused.refusals()).isNotEmpty().allMatch(sentence -> sentence.endsWith("."));
    return refused.refusals();
  }

  private void pin(String job, String rig, Integer place) {
    pins.add(new Pin(job, rig, place, null, PinState.PLANNED));
  }

  private List<Breach> breaches(Hand.Touched touched) {
    Plan plan = timer.time(touched.batch(), touched.orders(), BY_HAND).plan();
    return PlanChecker.check(touched.batch(), plan);
  }

  @Test
  void movesAJobToAnotherRig() {
    Hand.Touched moved = done(new Touch.Move("b", "platform", 1));

    assertThat(moved.orders().byRig().get(0)).containsExactly("a", "c");
    assertThat(moved.orders().byRig().get(1)).containsExactly("d", "b", "e", "heavy");
    assertThat(moved.sentence()).isEqualTo("Move b b from table, place 2, to platform, place 2");
    assertThat(moved.batch()).isEqualTo(batch());
  }

  @ParameterizedTest
  @CsvSource({"a, 0, a b c", "a, 1, b a c", "a, 2, b c a", "c, 0, c a b", "c, 1, a c b"})
  void countsPlacesAmongTheOtherJobs(String job, int place, String then) {
    Hand.Touched moved = touch(new Touch.Move(job, "table", place));
    if (then.equals("a b c")) {
      assertThat(moved.refusals()).containsExactly("a a is at table, place 1 already.");
    } else {
      assertThat(String.join(" ", moved.orders().byRig().get(0))).isEqualTo(then);
    }
  }

  @Test
  void plansWhatIsLeftOut() {
    heldBack.add("spare");
    Hand.Touched moved = done(new Touch.Move("spare", "small", 0));

    assertThat(moved.orders().byRig().get(2)).containsExactly("spare", "f");
    assertThat(moved.batch().shotList().heldBack()).isEmpty();
    assertThat(moved.sentence()).isEqualTo("Move spare spare to small, place 1");
  }

  @Test
  void refusesWhatThereIsNot() {
    assertThat(refused(new Touch.Move("ghost", "table", 0)))
        .containsExactly("The shot list has no job ghost.");
    assertThat(refused(new Touch.Move("a", "attic", 0)))
        .containsExactly("The floor has no rig attic; it has table, platform, small, brief.");
    assertThat(refused(new Touch.Move("a", "platform", 4)))
        .containsExactly("platform has 3 jobs beside it, so its place can be 1 to 4, not 5.");
    assertThat(refused(new Touch.Move("a", "platform", -1)))
        .containsExactly("platform has 3 jobs beside it, so its place can be 1 to 4, not 0.");
    assertThat(refused(new Touch.Swap("a", "ghost")))
        .containsExactly("The shot list has no job ghost.");
  }

  @Test
  void refusesARigThatCannotTakeTheJobWithFigures() {
    assertThat(refused(new Touch.Move("heavy", "small", 0)))
        .singleElement()
        .asString()
        .startsWith("small cannot take heavy heavy: plate payload: needed 10 kg, offered 5 kg");
    assertThat(refused(new Touch.Move("piece", "table", 0)))
        .containsExactly("piece piece needs measuring: massKg missing.");
    assertThat(refused(new Touch.Swap("heavy", "f")))
        .singleElement()
        .asString()
        .contains("needed 10 kg, offered 5 kg");
  }

  @Test
  void refusesARigThatIsNeverOpenForLongEnough() {
    assertThat(refused(new Touch.Move("a", "brief", 0)))
        .singleElement()
        .asString()
        .matches("a a takes .+ min.* on brief, which is open and staffed for 3 min in one go\\.");
  }

  @Test
  void refusesToMoveWhatIsPinnedElsewhere() {
    pin("b", "table", null);
    pin("d", "platform", 0);

    assertThat(refused(new Touch.Move("b", "platform", 0)))
        .containsExactly("b b is pinned to table; take its pin off first.");
    assertThat(refused(new Touch.Move("d", "platform", 2)))
        .containsExactly("d d is pinned to place 1 of platform; take its pin off first.");
    assertThat(refused(new Touch.LeaveOut("b")))
        .containsExactly("b b is pinned to table; take its pin off first.");
    assertThat(refused(new Touch.Swap("a", "d")))
        .containsExactly("d d is pinned to place 1 of platform; take its pin off first.");
    assertThat(refused(new Touch.Swap("e", "b")))
        .containsExactly("b b is pinned to table; take its pin off first.");
  }

  @Test
  void movesAJobThatIsPinnedToItsRigAboutOnIt() {
    pin("b", "table", null);

    assertThat(done(new Touch.Move("b", "table", 0)).orders().byRig().get(0))
        .containsExactly("b", "a", "c");
    assertThat(done(new Touch.Swap("a", "b")).orders().byRig().get(0))
        .containsExactly("b", "a", "c");
  }

  @Test
  void leavesWhatIsRunningOrDoneWhereItIs() {
    pins.add(new Pin("a", "table", 0, at("08:00"), PinState.DONE));
    pins.add(new Pin("b", "table", 1, at("09:00"), PinState.RUNNING));

    assertThat(refused(new Touch.Move("a", "platform", 0)))
        .containsExactly("a a is done and stays as it is.");
    assertThat(refused(new Touch.Move("b", "table", 2)))
        .containsExactly("b b is running and stays as it is.");
    assertThat(refused(new Touch.Move("d", "table", 1)))
        .containsExactly("b b on table is running or done; the first free place is 3.");
    assertThat(refused(new Touch.LeaveOut("b")))
        .containsExactly("b b is running and stays as it is.");
    assertThat(refused(new Touch.Hold("b", false, null)))
        .containsExactly("b b is running and stays as it is.");
    assertThat(refused(new Touch.Release("a"))).containsExactly("a a is done and stays as it is.");
    assertThat(refused(new Touch.Swap("c", "b")))
        .containsExactly("b b is running and stays as it is.");
    assertThat(done(new Touch.Move("d", "table", 2)).orders().byRig().get(0))
        .containsExactly("a", "b", "d", "c");
  }

  @Test
  void keepsAJobThatIsPinnedToAPlaceThereWhateverMovesBeforeIt() {
    pin("c", "table", 2);

    assertThat(done(new Touch.Move("d", "table", 0)).orders().byRig().get(0))
        .containsExactly("d", "a", "c", "b");
    Hand.Touched onIt = done(new Touch.Move("d", "table", 2));
    assertThat(onIt.orders().byRig().get(0)).containsExactly("a", "b", "c", "d");
    assertThat(onIt.sentence()).isEqualTo("Move d d from platform, place 1, to table, place 4");
    assertThat(breaches(onIt)).isEmpty();
  }

  @Test
  void showsWhatItBreaksWhereTheRigGetsTooShortForAPinnedPlace() {
    pin("c", "table", 2);
    Hand.Touched shorter = done(new Touch.Move("a", "platform", 0));

    assertThat(shorter.orders().byRig().get(0)).containsExactly("b", "c");
    assertThat(breaches(shorter))
        .singleElement()
        .satisfies(
            breach -> {
              assertThat(breach.rule()).isEqualTo(FloorRule.PIN_KEPT);
              assertThat(breach.amount()).isEqualTo(1);
              assertThat(breach.sentence())
                  .isEqualTo("Job c is at place 2 of table, pinned to place 3.");
            });
  }

  @Test
  void swapsTwoJobs() {
    Hand.Touched swapped = done(new Touch.Swap("a", "e"));

    assertThat(swapped.orders().byRig().get(0)).containsExactly("e", "b", "c");
    assertThat(swapped.orders().byRig().get(1)).containsExactly("d", "a", "heavy");
    assertThat(swapped.sentence())
        .isEqualTo("Swap a a (table, place 1) and e e (platform, place 2)");
    assertThat(refused(new Touch.Swap("a", "a")))
        .containsExactly("A job cannot change places with itself.");
    assertThat(refused(new Touch.Swap("spare", "a")))
        .containsExactly("spare spare is left out; plan it first.");
  }

  @Test
  void leavesOutByHandAndTakesInWhereItCostsLeast() {
    Hand.Touched out = done(new Touch.LeaveOut("b"));
    assertThat(out.orders().byRig().get(0)).containsExactly("a", "c");
    assertThat(out.batch().shotList().heldBack()).containsExactly("b");
    assertThat(out.sentence()).isEqualTo("Leave out b b (table, place 2)");

    heldBack.add("spare");
    assertThat(refused(new Touch.LeaveOut("spare")))
        .containsExactly("spare spare is left out by hand already.");
    assertThat(refused(new Touch.LeaveOut("piece")))
        .containsExactly("piece piece needs measuring: massKg missing.");
    Hand.Touched in = done(new Touch.TakeIn("spare"));
    assertThat(in.batch().shotList().heldBack()).isEmpty();
    assertThat(in.orders()).isEqualTo(timer.cheapest(in.batch(), new Orders(orders), "spare"));
    assertThat(in.sentence()).matches("Take in spare spare at \\w+, place \\d");
    assertThat(refused(new Touch.TakeIn("a")))
        .containsExactly("a a is planned already: table, place 1.");
    assertThat(refused(new Touch.TakeIn("giant")))
        .hasSize(2)
        .first()
        .isEqualTo("No rig can take giant giant.");
  }

  @Test
  void movesAndPinsInOneStep() {
    Hand.Touched moved = done(new Touch.Move("b", "platform", 1, true));
    assertThat(moved.orders()).isEqualTo(done(new Touch.Move("b", "platform", 1)).orders());
    assertThat(moved.batch().shotList().pins())
        .containsExactly(new Pin("b", "platform", 1, null, PinState.PLANNED));
    assertThat(moved.sentence())
        .isEqualTo("Move b b from table, place 2, to platform, place 2, and pin it there");
    assertThat(breaches(moved)).isEmpty();

    pin("a", "table", null);
    Hand.Touched again = done(new Touch.Move("a", "table", 2, true));
    assertThat(again.batch().shotList().pins())
        .containsExactly(new Pin("a", "table", 2, null, PinState.PLANNED));
    assertThat(touch(new Touch.Move("a", "platform", 0, true)).sentence())
        .endsWith("to platform, place 1, and pin it there");
  }

  @Test
  void pinsWhereAJobEndsUpAndNotOnAnothersPlace() {
    pin("c", "table", 2);
    Hand.Touched besides = done(new Touch.Move("d", "table", 2, true));
    assertThat(besides.batch().shotList().pins())
        .containsExactly(
            new Pin("c", "table", 2, null, PinState.PLANNED),
            new Pin("d", "table", 3, null, PinState.PLANNED));
    pins.clear();
    pin("f", "small", 1); // the only job of its rig, so it is at the first place
    heldBack.add("spare");
    orders = List.of(List.of("a", "b", "c"), List.of("d", "e", "heavy"), List.of("f"), List.of());
    Hand.Touched before = done(new Touch.Move("spare", "small", 1, true));
    assertThat(before.orders().byRig().get(2)).containsExactly("spare", "f");
    pins.clear();
    pin("f", "small", 2);
    pin("e", "small", 0);
    assertThat(refused(new Touch.Move("spare", "small", 0, true)))
        .containsExactly("e e is pinned to small, place 1 already.");
  }

  @Test
  void swapsAndTakesInWithPins() {
    Hand.Touched swapped = done(new Touch.Swap("a", "e", true));
    assertThat(swapped.batch().shotList().pins())
        .containsExactly(
            new Pin("a", "platform", 1, null, PinState.PLANNED),
            new Pin("e", "table", 0, null, PinState.PLANNED));
    assertThat(swapped.sentence())
        .isEqualTo("Swap a a (table, place 1) and e e (platform, place 2), and pin both there");
    assertThat(breaches(swapped)).isEmpty();

    Hand.Touched in = done(new Touch.TakeIn("spare", true));
    int rig = in.orders().rigOf("spare");
    assertThat(in.batch().shotList().pins())
        .containsExactly(
            new Pin(
                "spare",
                FLOOR.rigs().get(rig).id(),
                in.orders().byRig().get(rig).indexOf("spare"),
                null,
                PinState.PLANNED));
    assertThat(in.sentence()).matches("Take in spare spare at \\w+, place \\d, and pin it there");
  }

  /** A job that no search found room for is left out by hand from then on. */
  @Test
  void leavesOutWhatIsLeftOutAnyway() {
    assertThat(done(new Touch.LeaveOut("spare")).batch().shotList().heldBack())
        .containsExactly("spare");
  }

  @Test
  void pinsToARigAPlaceAndATime() {
    Hand.Touched rig = done(new Touch.Hold("b", false, null));
    assertThat(rig.batch().shotList().pins())
        .containsExactly(new Pin("b", "table", null, null, PinState.PLANNED));
    assertThat(rig.sentence()).isEqualTo("Pin b b to table");
    assertThat(rig.orders()).isEqualTo(new Orders(orders));

    Hand.Touched place = done(new Touch.Hold("b", true, at("10:15")));
    assertThat(place.batch().shotList().pins())
        .containsExactly(new Pin("b", "table", 1, at("10:15"), PinState.PLANNED));
    assertThat(place.sentence()).isEqualTo("Pin b b to table, place 2, starting at 10:15");

    pin("b", "table", null);
    assertThat(refused(new Touch.Hold("b", false, null)))
        .containsExactly("b b is pinned so already.");
    assertThat(done(new Touch.Hold("b", true, null)).batch().shotList().pins())
        .containsExactly(new Pin("b", "table", 1, null, PinState.PLANNED));
    assertThat(refused(new Touch.Hold("spare", false, null)))
        .containsExactly("spare spare is left out; plan it first.");
  }

  @Test
  void refusesAPinThatCannotBe() {
    assertThat(refused(new Touch.Hold("a", false, FloorFixtures.MONDAY.plusDays(1).atTime(8, 0))))
        .containsExactly(
            "Tue 2026-03-03 08:00 is outside of the planned days; they begin at Mon 2026-03-02 00:00"
                + " and end at Tue 2026-03-03 00:00.");
    pin("c", "table", 1);
    assertThat(refused(new Touch.Hold("b", true, null)))
        .containsExactly("c c is pinned to table, place 2 already.");
  }

  /** The planner may know better; the plan says what it breaks. */
  @Test
  void letsAPinBreakTheSamplesArrivalAndTheHours() {
    assertThat(breaches(done(new Touch.Hold("b", false, at("08:00")))))
        .extracting(Breach::rule)
        .containsOnly(FloorRule.PIN_KEPT);
    assertThat(breaches(done(new Touch.Hold("f", false, at("05:00")))))
        .extracting(Breach::rule)
        .containsOnly(FloorRule.PIN_KEPT);
  }

  @Test
  void takesAPinOff() {
    pin("b", "table", 1);
    Hand.Touched released = done(new Touch.Release("b"));
    assertThat(released.batch().shotList().pins()).isEmpty();
    assertThat(released.sentence()).isEqualTo("Take the pin off b b (table, place 2)");
    assertThat(refused(new Touch.Release("a"))).containsExactly("a a is not pinned.");
  }

  @Test
  void changesAPromise() {
    Hand.Touched must = done(new Touch.SetPromise("a", at("14:30"), true));
    assertThat(must.batch().shotList().job("a").orElseThrow().promise())
        .isEqualTo(new Promise(at("14:30"), true));
    assertThat(must.sentence()).isEqualTo("Promise a a for 14:30 as a must instead of 12:00");
    Hand.Touched none = done(new Touch.SetPromise("a", null, true));
    assertThat(none.batch().shotList().job("a").orElseThrow().promise()).isNull();
    assertThat(none.sentence()).isEqualTo("Take the promise off a a (12:00)");
    Hand.Touched later = done(new Touch.SetPromise("c", at("09:00").plusDays(3), false));
    assertThat(later.sentence()).isEqualTo("Promise c c for Thu 2026-03-05 09:00");

    assertThat(refused(new Touch.SetPromise("a", at("12:00"), false)))
        .containsExactly("a a is promised so already.");
    assertThat(refused(new Touch.SetPromise("c", null, false)))
        .containsExactly("c c has no promise already.");
    assertThat(refused(new Touch.SetPromise("b", at("08:30"), false)))
        .containsExactly("The sample of b b arrives at 09:00, after 08:30.");
    assertThat(refused(new Touch.SetPromise("a", at("12:00").plusYears(2), false)))
        .containsExactly(
            "Thu 2028-03-02 12:00 is too far off; accepted: a date at most a year from the plan's"
                + " 2026-03-02.");
  }

  @Test
  void changesAWeight() {
    Hand.Touched weighed = done(new Touch.SetWeight("f", 8));
    assertThat(weighed.batch().shotList().job("f").orElseThrow().weight()).isEqualTo(8);
    assertThat(weighed.sentence()).isEqualTo("Let f f count 8 instead of 3");
    assertThat(refused(new Touch.SetWeight("f", 3))).containsExactly("f f counts 3 already.");
    assertThat(refused(new Touch.SetWeight("f", 0)))
        .containsExactly("A job counts from 1 to 1000, not 0.");
    assertThat(refused(new Touch.SetWeight("f", 1001)))
        .containsExactly("A job counts from 1 to 1000, not 1001.");
  }
}
