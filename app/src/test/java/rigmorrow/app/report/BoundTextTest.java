package rigmorrow.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;

class BoundTextTest {
  @Test
  void tellsHowFarAllPointsAndEachPartAreFromTheBest() {
    assertThat(text(figures(0, 0, 300, 112), new PlanBounds(0, 0, 200, 100)))
        .isEqualTo(
            "Points: at most 38 % above the best possible (changeovers 50 %; finishing 12 %).");
  }

  @Test
  void saysTheBestPossibleOnlyWhereTheBoundIsReached() {
    assertThat(text(figures(0, 0, 200, 100), new PlanBounds(0, 0, 200, 100)))
        .isEqualTo(
            "Points: the best possible (changeovers the best possible; finishing the best"
                + " possible).");
    assertThat(text(figures(0, 0, 0, 1_001), new PlanBounds(0, 0, 0, 1_000)))
        .isEqualTo("Points: at most 1 % above the best possible (finishing 1 %).");
  }

  @Test
  void saysWhereABoundIsTooFarBelowToBeOfUse() {
    assertThat(text(figures(0, 7, 200, 201), new PlanBounds(0, 0, 100, 100)))
        .isEqualTo(
            "Points: how far from the best possible is not known (lateness not known; changeovers"
                + " 100 %; finishing not known).");
  }

  @Test
  void tellsOfJobsLeftOutAndThatTheRestHoldsBesideThem() {
    assertThat(text(figures(12, 0, 0, 110), new PlanBounds(10, 0, 0, 100)))
        .isEqualTo(
            "Points: at most 10 % above the best possible (finishing 10 %), among plans that"
                + " leave out no more. Left out: at most 20 % above the best possible.");
    assertThat(text(figures(12, 0, 0, 0), new PlanBounds(12, 0, 0, 0)))
        .isEqualTo(
            "Points: the best possible, among plans that leave out no more. Left out: the least"
                + " possible.");
  }

  @Test
  void doesNotCallItTheBestPossibleThatJobsAreHeldBack() {
    assertThat(BoundText.of(figures(12, 0, 0, 110), new PlanBounds(12, 0, 0, 100), 2))
        .endsWith("Left out: the least possible while 2 jobs are held back.");
    assertThat(BoundText.of(figures(12, 0, 0, 110), new PlanBounds(10, 0, 0, 100), 1))
        .endsWith("at most 20 % above the best possible while 1 job is held back.");
  }

  private static String text(PlanFigures figures, PlanBounds bounds) {
    return BoundText.of(figures, bounds, 0);
  }

  private static PlanFigures figures(long leftOut, long late, long changeover, long finishing) {
    return new PlanFigures(0, leftOut, late, changeover, finishing, 5, 0, 0, 0, 0, 3_600);
  }
}
