package rigmorrow.model.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.model.time.Span;

class WaitTest {
  private static final Wait USED = kit(Wait.Reason.KIT, "head", "R1", 0, 60);
  private static final Wait HANGS = kit(Wait.Reason.KIT_ON_A_BUSY_RIG, "head", "R1", 60, 100);
  private static final Wait USED_AGAIN = kit(Wait.Reason.KIT, "head", "R3", 100, 130);

  private static Wait kit(Wait.Reason reason, String kit, String rig, int from, int to) {
    return new Wait(reason, Map.of(kit, List.of(rig)), new Span(from, to));
  }

  private static Wait sample(int from, int to) {
    return new Wait(Wait.Reason.SAMPLE, new Span(from, to));
  }

  @Test
  void piecesOfAWaitForTheSameKitAreOneWithEveryRigOnce() {
    assertThat(Wait.joined(List.of(USED, HANGS, USED_AGAIN)))
        .containsExactly(
            new Wait(Wait.Reason.KIT, Map.of("head", List.of("R1", "R3")), new Span(0, 130)));
    assertThat(Wait.joined(List.of(USED, HANGS)))
        .as("what it ended with")
        .containsExactly(kit(Wait.Reason.KIT_ON_A_BUSY_RIG, "head", "R1", 0, 100));
  }

  @Test
  void waitsForOtherThingsAndWaitsWithATimeBetweenThemStayApart() {
    Wait crew = new Wait(Wait.Reason.CREW_TO_START, new Span(60, 90));
    Wait lens = kit(Wait.Reason.KIT, "lens", "R1", 60, 100);
    Wait taken = kit(Wait.Reason.KIT_TAKEN_OFF, "head", "R1", 60, 100);
    Wait later = kit(Wait.Reason.KIT, "head", "R1", 61, 100);
    for (Wait other : List.of(crew, lens, taken, later, sample(60, 90))) {
      assertThat(Wait.joined(List.of(USED, other))).containsExactly(USED, other);
    }
    assertThat(Wait.joined(List.of())).isEmpty();
  }

  @Test
  void aSampleIsOneWaitWhereverTheRigWasAskedAgain() {
    assertThat(Wait.joined(List.of(sample(0, 60), sample(60, 90), sample(91, 99))))
        .containsExactly(sample(0, 90), sample(91, 99));
  }

  @Test
  void kitAndSampleTogetherAreAWaitForEach() {
    Wait both = kit(Wait.Reason.SAMPLE_AND_KIT, "head", "R1", 60, 100);
    assertThat(Wait.joined(List.of(USED, both, sample(100, 140))))
        .containsExactly(kit(Wait.Reason.KIT, "head", "R1", 0, 100), sample(60, 140));
    assertThat(Wait.joined(List.of(sample(0, 60), both, USED_AGAIN)))
        .containsExactly(
            sample(0, 100),
            new Wait(Wait.Reason.KIT, Map.of("head", List.of("R1", "R3")), new Span(60, 130)));
  }

  @Test
  void eachKitOfAChangedSetIsAWaitWithItsOwnRigs() {
    Map<String, List<String>> two = new LinkedHashMap<>();
    two.put("lens", List.of("R2"));
    two.put("head", List.of("R1"));
    assertThat(Wait.joined(List.of(new Wait(Wait.Reason.KIT, two, new Span(0, 60)), HANGS)))
        .containsExactly(
            kit(Wait.Reason.KIT, "lens", "R2", 0, 60),
            kit(Wait.Reason.KIT_ON_A_BUSY_RIG, "head", "R1", 0, 100));
  }
}
