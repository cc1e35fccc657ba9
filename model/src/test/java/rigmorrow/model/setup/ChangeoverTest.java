package rigmorrow.model.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ChangeoverTest {
  @Test
  void nothingToDoTakesNobody() {
    assertThat(Changeover.of(List.of(), true)).isEqualTo(Changeover.NONE);
  }

  @Test
  void oneOperatorDoesStepsOneAfterTheOther() {
    Changeover sum = Changeover.of(List.of(step(300, 0, 1, "a"), step(120, 0, 1, "b")), false);

    assertThat(sum.attendedSeconds()).isEqualTo(420);
    assertThat(sum.people()).isEqualTo(1);
    assertThat(sum.skills()).containsExactlyInAnyOrder("a", "b");
  }

  @Test
  void aTailRunsOnDuringTheStepsAfterIt() {
    assertThat(Changeover.of(List.of(step(120, 600, 1), step(200, 0, 1)), false).tailSeconds())
        .isEqualTo(400);
    assertThat(Changeover.of(List.of(step(200, 0, 1), step(120, 600, 1)), false).tailSeconds())
        .isEqualTo(600);
    assertThat(Changeover.of(List.of(step(120, 100, 1), step(200, 0, 1)), false).tailSeconds())
        .isZero();
  }

  @Test
  void twoHandsShareTheSteps() {
    Changeover sum =
        Changeover.of(List.of(step(100, 0, 1), step(300, 0, 1), step(150, 0, 1)), true);

    // One hand does 100 and 150, the other 300.
    assertThat(sum.attendedSeconds()).isEqualTo(300);
    assertThat(sum.people()).isEqualTo(2);
  }

  @Test
  void aSingleStepIsNotShared() {
    Changeover sum = Changeover.of(List.of(step(100, 0, 1)), true);

    assertThat(sum.attendedSeconds()).isEqualTo(100);
    assertThat(sum.people()).isEqualTo(1);
  }

  @Test
  void aStepForTwoWaitsForBothHands() {
    Changeover sum =
        Changeover.of(List.of(step(240, 0, 1), step(100, 50, 2), step(10, 0, 1)), true);

    assertThat(sum.attendedSeconds()).isEqualTo(350);
    assertThat(sum.tailSeconds()).isEqualTo(40);
  }

  @Test
  void aStepForTwoTakesTwoWhereNothingIsShared() {
    Changeover sum = Changeover.of(List.of(step(240, 0, 1), step(100, 0, 2)), false);

    assertThat(sum.attendedSeconds()).isEqualTo(340);
    assertThat(sum.people()).isEqualTo(2);
  }

  @Test
  void aRequestLeavesAloneWhatItDoesNotName() {
    Setup state = new Setup(Map.of("background", "white", "light", "soft"));
    Setup request = new Setup(Map.of("light", "crisp"));

    assertThat(state.satisfies(request)).isFalse();
    assertThat(state.after(request).value("background")).isEqualTo("white");
    assertThat(state.after(request).satisfies(request)).isTrue();
    assertThat(state.satisfies(Setup.ANY)).isTrue();
  }

  private static ChangeoverStep step(int attended, int unattended, int people, String... skills) {
    return new ChangeoverStep("step", attended, unattended, people, Set.of(skills));
  }
}
