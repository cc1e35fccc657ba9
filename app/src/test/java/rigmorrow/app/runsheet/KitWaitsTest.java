package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/** A rig that is asked again and again waits once for each thing. */
class KitWaitsTest {
  private static final Batch DAY = SampleDay.batch(SampleDay.SUMMER);
  private static final int TEN = 10 * 3600;
  private static final String HEAD = "rotator-head";
  private static final KitUse TAKEN = new KitUse(HEAD, "RH-1", "R1");
  private static final KitUse LENS = new KitUse("lens", "L-1", "Shelf A");

  private static Span minutes(int from, int to) {
    return new Span(TEN + from * 60, TEN + to * 60);
  }

  private static Wait kit(Wait.Reason reason, int from, int to) {
    return new Wait(reason, Map.of(HEAD, List.of("R1")), minutes(from, to));
  }

  private static List<KitWaits.Told> told(Wait... waits) {
    Attended hands = new Attended(minutes(60, 61), List.of());
    Span capture = minutes(61, 70);
    Attended off = new Attended(minutes(70, 71), List.of());
    List<KitUse> kit = List.of(TAKEN, LENS);
    PlannedJob job =
        new PlannedJob("J4", List.of(), null, 0, hands, capture, List.of(), off, kit, 0);
    Map<String, List<Wait>> all = Map.of("J4", List.of(waits));
    TimeText times = new TimeText(PlanClock.of(DAY));
    return new KitWaits(all, new Names(DAY), times).of(job);
  }

  private static String headUntil(String time) {
    return "Rotator head (RH-1), which cannot come off Table one (R1) before " + time;
  }

  @Test
  void tellsKitAndSampleOnceEachHoweverTheyAreCut() {
    assertThat(
            told(
                kit(Wait.Reason.KIT, 0, 5),
                kit(Wait.Reason.SAMPLE_AND_KIT, 5, 9),
                kit(Wait.Reason.SAMPLE_AND_KIT, 9, 12),
                new Wait(Wait.Reason.SAMPLE, minutes(12, 20))))
        .containsExactly(
            new KitWaits.Told(List.of(minutes(0, 12)), headUntil("10:12")),
            new KitWaits.Told(List.of(minutes(5, 20)), "its sample"));
  }

  @Test
  void tellsEachOfTwoKitsWithItsOwnEnd() {
    Map<String, List<String>> both = new LinkedHashMap<>();
    both.put("lens", List.of());
    both.put(HEAD, List.of("R1"));
    assertThat(
            told(
                new Wait(Wait.Reason.KIT, both, minutes(0, 5)),
                kit(Wait.Reason.KIT_ON_A_BUSY_RIG, 5, 12)))
        .containsExactly(
            new KitWaits.Told(List.of(minutes(0, 5)), "lens (L-1)"),
            new KitWaits.Told(List.of(minutes(0, 12)), headUntil("10:12")));
  }

  @Test
  void aKitThatWasWaitedForTwiceHasOneEnd() {
    assertThat(
            told(
                kit(Wait.Reason.KIT, 0, 5),
                new Wait(Wait.Reason.CREW_TO_START, minutes(5, 8)),
                kit(Wait.Reason.KIT, 8, 12)))
        .containsExactly(
            new KitWaits.Told(List.of(minutes(0, 5), minutes(8, 12)), headUntil("10:12")));
  }

  @Test
  void aGapNamesTheTimesOfAThingTogether() {
    TimeText times = new TimeText(PlanClock.of(DAY));
    DayLines<String> day = new DayLines<>(times, "Opens", "Closes", "Nothing planned");
    day.workingHours(List.of(minutes(0, 60)));
    day.waiting(List.of(minutes(0, 5), minutes(8, 12)), "the head");
    day.waiting(List.of(minutes(0, 20)), "its sample");
    day.entry(minutes(20, 60), "job");
    assertThat(day.lines().get(0).remark())
        .endsWith(": waits 10:00–10:05 and 10:08–10:12 for the head, waits for its sample");
  }
}
