package rigmorrow.app.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.app.runsheet.SampleDay;
import rigmorrow.model.explain.JobRules;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.time.Span;

class WaitSentencesTest {
  private static final int EIGHT = 8 * 3600;

  private static Wait wait(Wait.Reason reason, String rig, int fromMinute, int toMinute) {
    return new Wait(
        reason,
        rig.isEmpty() ? Map.of() : Map.of("rotator-head", List.of(rig)),
        new Span(EIGHT + fromMinute * 60, EIGHT + toMinute * 60));
  }

  private static List<String> sentences(Wait... waits) {
    JobRules rules =
        new JobRules(1, null, null, null, false, List.of(), List.of(), 1, 1, false, false, null);
    return new WaitSentences(new Names(SampleDay.batch(SampleDay.SUMMER)), rules)
        .of(List.of(waits));
  }

  @Test
  void oneSentenceNamesKitAndRigsOfAWaitInPieces() {
    assertThat(
            sentences(
                wait(Wait.Reason.KIT, "R1", 0, 20),
                wait(Wait.Reason.KIT_ON_A_BUSY_RIG, "R1", 20, 35),
                wait(Wait.Reason.KIT, "R3", 35, 60)))
        .singleElement()
        .asString()
        .contains("08:00", "09:00")
        .endsWith(" for Rotator head, which was on Table one (R1) and Spare (R3).");
  }

  @Test
  void saysWhereItHasToBeTakenOff() {
    assertThat(
            sentences(
                wait(Wait.Reason.KIT, "R1", 0, 20),
                wait(Wait.Reason.KIT_ON_A_BUSY_RIG, "R1", 20, 35)))
        .singleElement()
        .asString()
        .endsWith(
            " for Rotator head, which was on Table one (R1), to be taken off there, between two"
                + " jobs.");
  }

  @Test
  void tellsKitAndSampleOnceEachWithTheirOwnEnds() {
    List<String> told =
        sentences(
            wait(Wait.Reason.SAMPLE, "", 0, 10),
            wait(Wait.Reason.SAMPLE, "", 10, 20),
            wait(Wait.Reason.SAMPLE_AND_KIT, "R1", 20, 35),
            wait(Wait.Reason.KIT, "R1", 35, 50));
    assertThat(told).hasSize(2);
    assertThat(told.get(0)).contains("08:00", "08:35").endsWith(" for its sample.");
    assertThat(told.get(1))
        .contains("08:20", "08:50")
        .endsWith(" for Rotator head, which was on Table one (R1).");
  }
}
