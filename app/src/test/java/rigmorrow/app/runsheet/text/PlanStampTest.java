package rigmorrow.app.runsheet.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;

class PlanStampTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 18);

  @Test
  void isTheSameForTheSamePlanAndAnotherForAnother() {
    Batch batch = Demo.batch(12, 1, DAY);
    Plan plan = FloorSolver.dispatch(batch);
    PlanStamp stamp = PlanStamp.ofPlan(batch, plan);
    assertThat(stamp.whole()).matches("Plan [0-9a-f]{8}");
    assertThat(PlanStamp.ofPlan(batch, FloorSolver.dispatch(batch))).isEqualTo(stamp);
    PlanBounds bounds = new PlanBounds(0, 0, 0, 0);
    assertThat(PlanStamp.ofPlan(batch, plan.withBounds(bounds)))
        .as("what nobody does otherwise changes nothing")
        .isEqualTo(stamp);
    Batch other = Demo.batch(13, 1, DAY);
    assertThat(PlanStamp.ofPlan(other, FloorSolver.dispatch(other))).isNotEqualTo(stamp);
  }

  @Test
  void shortensANoteOnlyInTheMargin() {
    String note = "a long note ".repeat(10).strip();
    PlanStamp stamp =
        PlanStamp.ofVersion(
            2, note, Instant.parse("2026-03-18T16:02:40Z"), ZoneId.of("Europe/Copenhagen"), 2);
    assertThat(stamp.whole())
        .isEqualTo("Version 2 of the board, published, put by 2026-03-18 17:02: " + note);
    assertThat(stamp.line()).endsWith("…").hasSizeLessThan(stamp.whole().length());
  }
}
