package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.model.plan.Plan;

/** Who serves which request when, added up by hand. */
class CrewTimelineTest {
  private final Bench bench = new Bench();

  @Test
  void servesTheEarlierRequestFirst() {
    Plan plan =
        bench
            .job("left", "late", job -> job.arrivesAt(Bench.at("08:01")).weight(9))
            .job("right", "early")
            .plan();

    assertThat(Bench.line(plan, "early"))
        .isEqualTo("load 08:00-08:02 ann, capture 08:02-08:12, unload 08:12-08:13 ann");
    assertThat(Bench.line(plan, "late"))
        .isEqualTo("load 08:02-08:04 ann, capture 08:04-08:14, unload 08:14-08:15 ann");
  }

  @Test
  void keepsWhatAnEarlierRequestWasGivenThoughAHeavierOneFollows() {
    Plan plan =
        bench
            .floor(
                floor ->
                    floor.rigs(
                        Bench.rig("left").build(),
                        Bench.rig("right").build(),
                        Bench.rig("third").build()))
            .job("left", "first")
            .job("right", "second", job -> job.arrivesAt(Bench.at("08:01")))
            .job("third", "heavy", job -> job.arrivesAt(Bench.at("08:01:30")).weight(100))
            .plan();

    assertThat(Bench.line(plan, "second")).startsWith("load 08:02-08:04 ann");
    assertThat(Bench.line(plan, "heavy")).startsWith("load 08:04-08:06 ann");
  }

  @Test
  void servesTheHeavierOfTwoRequestsOfOneSecond() {
    bench.job("left", "light").job("right", "heavy", job -> job.weight(2));

    assertThat(bench.line("heavy")).startsWith("load 08:00-08:02 ann");
    assertThat(bench.line("light")).startsWith("load 08:02-08:04 ann");
  }

  @Test
  void servesRigsInOrderWhenNothingElseDiffers() {
    bench.job("right", "b").job("left", "a");

    assertThat(bench.line("a")).startsWith("load 08:00-08:02 ann");
    assertThat(bench.line("b")).startsWith("load 08:02-08:04 ann");
  }

  @Test
  void sendsTheLeastSkilledOfThoseWhoAreFree() {
    bench
        .floor(floor -> floor.crew(Bench.person("ann", "light"), Bench.person("bo")))
        .job("left", "a")
        .job("right", "b");

    assertThat(bench.line("a")).startsWith("load 08:00-08:02 bo");
    assertThat(bench.line("b")).startsWith("load 08:00-08:02 ann");
  }

  @Test
  void waitsForASecondPerson() {
    bench
        .floor(floor -> floor.crew(Bench.person("ann", "light"), Bench.person("bo")))
        .job("left", "a")
        .job("right", "big", job -> job.item(Bench.forTwo()));

    assertThat(bench.line("a")).startsWith("load 08:00-08:02 bo");
    assertThat(bench.line("big"))
        .isEqualTo("load 08:02-08:04 bo+ann, capture 08:04-08:14, unload 08:14-08:15 bo+ann");
  }

  @Test
  void startsNoStepThatWouldRunIntoABreak() {
    bench.job("left", "a", job -> job.arrivesAt(Bench.at("11:58:01")));

    assertThat(bench.line("a"))
        .isEqualTo("load 12:30-12:32 ann, capture 12:32-12:42, unload 12:42-12:43 ann");
  }

  @Test
  void endsAStepWithTheLastSecondBeforeABreak() {
    bench.job("left", "a", job -> job.arrivesAt(Bench.at("11:58")));

    assertThat(bench.line("a"))
        .isEqualTo("load 11:58-12:00 ann, capture 12:00-12:10, unload 12:30-12:31 ann");
  }

  @Test
  void capturesThroughABreakWhenNobodyHasToStay() {
    bench.job("left", "a", job -> job.arrivesAt(Bench.at("11:50")));

    assertThat(bench.line("a"))
        .isEqualTo("load 11:50-11:52 ann, capture 11:52-12:02, unload 12:30-12:31 ann");
  }

  @Test
  void putsAnAttendedCaptureOffUntilAfterTheBreak() {
    bench.job("left", "a", job -> job.recipe("look").arrivesAt(Bench.at("11:50")));

    assertThat(bench.line("a"))
        .isEqualTo("load 12:30-12:32 ann, capture 12:32-12:42 ann, unload 12:42-12:43 ann");
  }

  @Test
  void keepsTheOperatorDuringAnAttendedCapture() {
    bench.job("left", "a", job -> job.recipe("look")).job("right", "b");

    assertThat(bench.line("a"))
        .isEqualTo("load 08:00-08:02 ann, capture 08:02-08:12 ann, unload 08:14-08:15 ann");
    assertThat(bench.line("b"))
        .isEqualTo("load 08:12-08:14 ann, capture 08:14-08:24, unload 08:24-08:25 ann");
  }

  @Test
  void waitsForTheNextMorningWhenNobodyIsThereAnyMore() {
    bench.days(2).job("left", "a", job -> job.arrivesAt(Bench.at("17:30")));

    assertThat(bench.line("a"))
        .isEqualTo("load +08:00-+08:02 ann, capture +08:02-+08:12, unload +08:12-+08:13 ann");
  }

  @Test
  void needsNobodyForWhatTakesNoTime() {
    bench
        .floor(
            floor ->
                floor
                    .handling(Bench.handling(0, 0))
                    .recipes(
                        Bench.recipe("spin").measuredCaptureSeconds(Map.of("left", 0)).build()))
        .job("left", "a");

    assertThat(bench.line("a"))
        .isEqualTo("load 08:00-08:00, capture 08:00-08:00, unload 08:00-08:00");
  }
}
