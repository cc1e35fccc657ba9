package rigmorrow.model.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.model.time.Span;

class WaitTest {
  private static final Wait USED = kit(Wait.Reason.KIT, "head", "R1", 0, 60);
  private static final Wait HANGS = kit(Wait.Reason.KIT_ON_A_BUSY_RIG, "head", "R1", 60, 100);
  private static final Wait USED_AGAIN = kit(Wait.Reason.KIT, "head", "R3", 100, 130);

  private static Wait kit(Wait.Reason reason, String kit, String rig, int from, int to) {
    return new Wait(reason, List.of(kit), List.of(rig), new Span(from, to));
  }

  @Test
  void piecesOfAWaitForTheSameKitAreOneWithEveryRigOnce() {
    assertThat(Wait.joined(List.of(USED, HANGS, USED_AGAIN)))
        .containsExactly(
            new Wait(Wait.Reason.KIT, List.of("head"), List.of("R1", "R3"), new Span(0, 130)));
    assertThat(Wait.joined(List.of(USED, HANGS)))
        .as("what it ended with")
        .containsExactly(
            new Wait(
                Wait.Reason.KIT_ON_A_BUSY_RIG, List.of("head"), List.of("R1"), new Span(0, 100)));
  }

  @Test
  void waitsForOtherThingsAndWaitsWithATimeBetweenThemStayApart() {
    Wait crew = new Wait(Wait.Reason.CREW_TO_START, List.of(), List.of(), new Span(60, 90));
    Wait lens = kit(Wait.Reason.KIT, "lens", "R1", 60, 100);
    Wait taken = kit(Wait.Reason.KIT_TAKEN_OFF, "head", "R1", 60, 100);
    Wait later = kit(Wait.Reason.KIT, "head", "R1", 61, 100);
    for (Wait other : List.of(crew, lens, taken, later)) {
      assertThat(Wait.joined(List.of(USED, other))).containsExactly(USED, other);
    }
    assertThat(Wait.joined(List.of())).isEmpty();
  }
}
