package rigmorrow.app.runsheet.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;

class PlanStampTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 18);
  private static final Instant PUT_BY = Instant.parse("2026-03-18T16:02:40Z");

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

  /** As after a change of the program: a board keeps orders, and times are worked out anew. */
  @Test
  void ofAVersionTellsOtherTimesApart() {
    Batch batch = Demo.batch(12, 1, DAY);
    Plan plan = FloorSolver.dispatch(batch);
    PlanStamp stamp = version(batch, plan);
    assertThat(stamp.whole()).matches("Version 2 .*, plan [0-9a-f]{8}: note");
    assertThat(version(batch, FloorSolver.dispatch(batch))).isEqualTo(stamp);
    assertThat(PlanStamp.ofPlan(batch, plan).words())
        .as("the plan's file has the same letters")
        .isEqualToIgnoringCase("plan " + PlanStamp.mark(batch, plan));
    PlanOrigin hand = new PlanOrigin("hand", 0, 1, 0, "done");
    assertThat(version(batch, with(plan, plan.rigs(), hand)))
        .as("how it was made changes nothing")
        .isEqualTo(stamp);
    for (int rig = 0; rig < plan.rigs().size(); rig++) {
      List<PlannedJob> jobs = plan.rigs().get(rig).jobs();
      for (int at = 0; at < jobs.size(); at++) {
        assertThat(version(batch, warmedUpLater(plan, rig, at))).isNotEqualTo(stamp);
      }
    }
  }

  private static PlanStamp version(Batch batch, Plan plan) {
    String mark = PlanStamp.mark(batch, plan);
    return PlanStamp.ofVersion(2, "note", PUT_BY, batch.floor().zone(), 2, mark);
  }

  /** One job ready for capture a second later, which no table shows. */
  private static Plan warmedUpLater(Plan plan, int rig, int at) {
    List<RigPlan> rigs = new ArrayList<>(plan.rigs());
    List<PlannedJob> jobs = new ArrayList<>(rigs.get(rig).jobs());
    PlannedJob job = jobs.get(at);
    jobs.set(
        at,
        new PlannedJob(
            job.job(),
            job.steps(),
            job.changeover(),
            job.warmedUpAt() + 1,
            job.load(),
            job.capture(),
            job.captureOperators(),
            job.unload(),
            job.kit(),
            job.lateSeconds()));
    rigs.set(rig, new RigPlan(rigs.get(rig).rig(), jobs));
    return with(plan, rigs, plan.origin());
  }

  private static Plan with(Plan plan, List<RigPlan> rigs, PlanOrigin origin) {
    return new Plan(
        plan.floor(),
        plan.zone(),
        plan.date(),
        plan.days(),
        rigs,
        plan.leftOut(),
        plan.figures(),
        origin);
  }

  @Test
  void shortensANoteOnlyInTheMargin() {
    String note = "a long note ".repeat(10).strip();
    PlanStamp stamp =
        PlanStamp.ofVersion(2, note, PUT_BY, ZoneId.of("Europe/Copenhagen"), 2, "0a1b2c3d");
    assertThat(stamp.whole())
        .isEqualTo(
            "Version 2 of the board, published, put by 2026-03-18 17:02, plan 0a1b2c3d: " + note);
    assertThat(stamp.line()).endsWith("…").hasSizeLessThan(stamp.whole().length());
  }
}
