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
            "Soft points: at most 38 % above the best possible (changeover 50 %; finishing 12 %).");
  }

  @Test
  void saysTheBestPossibleOnlyWhereTheBoundIsReached() {
    assertThat(text(figures(0, 0, 200, 100), new PlanBounds(0, 0, 200, 100)))
        .isEqualTo(
            "Soft points: the best possible (changeover the best possible; finishing the best"
                + " possible).");
    assertThat(text(figures(0, 0, 0, 1_001), new PlanBounds(0, 0, 0, 1_000)))
        .isEqualTo("Soft points: at most 1 % above the best possible (finishing 1 %).");
  }

  @Test
  void saysWhereABoundIsTooFarBelowToBeOfUse() {
    assertThat(text(figures(0, 7, 200, 201), new PlanBounds(0, 0, 100, 100)))
        .isEqualTo(
            "Soft points: no useful bound (late no useful bound; changeover 100 %; finishing no"
                + " useful bound).");
  }

  @Test
  void tellsOfJobsLeftOutAndThatTheRestHoldsBesideThem() {
    assertThat(text(figures(12, 0, 0, 110), new PlanBounds(10, 0, 0, 100)))
        .isEqualTo(
            "Soft points: at most 10 % above the best possible (finishing 10 %), among plans that"
                + " leave out no more. Left out: at most 20 % above the best possible.");
    assertThat(text(figures(12, 0, 0, 0), new PlanBounds(12, 0, 0, 0)))
        .isEqualTo(
            "Soft points: the best possible, among plans that leave out no more. Left out: the best"
                + " possible.");
  }

  private static String text(PlanFigures figures, PlanBounds bounds) {
    return BoundText.of(figures, bounds);
  }

  private static PlanFigures figures(long leftOut, long late, long changeover, long finishing) {
    return new PlanFigures(0, leftOut, late, changeover, finishing, 5, 0, 0, 0, 0, 3_600);
  }
}
