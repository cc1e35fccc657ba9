package rigmorrow.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * Orders decoded from scratch: the whole batch compiled anew, by the solver's own way to a plan.
 */
final class Redone {
  private final Batch batch;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final CompiledBatch compiled;

  Redone(Batch batch) {
    this.batch = batch;
    this.compiled = CompiledBatch.of(batch);
    for (int job = 0; job < compiled.jobCount(); job++) {
      numbers.put(compiled.jobId(job), job);
    }
  }

  Sequences score(Map<String, List<String>> orders) {
    List<List<Integer>> byRig = new ArrayList<>();
    batch
        .floor()
        .rigs()
        .forEach(rig -> byRig.add(orders.get(rig.id()).stream().map(numbers::get).toList()));
    return RandomSequences.scored(compiled, byRig, List.of());
  }

  Plan plan(Map<String, List<String>> orders) {
    PlanOrigin origin = new PlanOrigin("test", 0, 1, 0, "done");
    return new PlanWriter(compiled, new Timeline(compiled)).write(score(orders), origin);
  }

  /** The orders of a plan, by rig, to be changed. */
  static Map<String, List<String>> orders(Plan plan) {
    Map<String, List<String>> orders = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      orders.put(rig.rig(), new ArrayList<>(rig.jobs().stream().map(PlannedJob::job).toList()));
    }
    return orders;
  }

  /** Holds a claimed place and time against a plan. */
  static void holds(JobTimes claimed, Plan plan, String job) {
    RigPlan rig =
        plan.rigs().stream().filter(one -> one.rig().equals(claimed.rig())).findFirst().get();
    PlannedJob there = rig.jobs().get(claimed.place());
    assertThat(there.job()).isEqualTo(job);
    int changeover = there.changeover() == null ? 0 : there.changeover().span().seconds();
    assertThat(claimed)
        .isEqualTo(
            new JobTimes(
                rig.rig(),
                claimed.place(),
                rig.jobs().size(),
                there.whole().start(),
                there.capture().end(),
                there.unload().span().end(),
                changeover,
                there.lateSeconds()));
  }

  /** Holds a claimed cost against a plan; the weights are added up here once more. */
  static void holds(Cost claimed, Batch batch, Plan plan) {
    PlanFigures figures = plan.figures();
    assertThat(claimed.hard()).isEqualTo(figures.hard());
    assertThat(claimed.leftOutWeight()).isEqualTo(figures.leftOutPoints());
    assertThat(claimed.lateJobs()).isEqualTo(figures.lateJobs());
    assertThat(claimed.lateSeconds()).isEqualTo(figures.lateSeconds());
    assertThat(claimed.leftOutJobs()).isEqualTo(figures.leftOut());
    assertThat(claimed.changeoverSeconds()).isEqualTo(figures.changeoverSeconds());
    assertThat(claimed.finishedAtSecond()).isEqualTo(figures.finishedAt());
    long weighted = 0;
    for (ShotJob job : batch.shotList().jobs()) {
      weighted += job.weight() * plan.job(job.id()).map(one -> (long) one.lateSeconds()).orElse(0L);
    }
    assertThat(claimed.lateWeightedSeconds()).isEqualTo(weighted);
    Weights weights = batch.floor().weights();
    long exact =
        weighted * weights.latenessPerMinute()
            + figures.changeoverSeconds() * weights.changeoverPerMinute();
    // The finishing time counts from the first opening, which the points below tell to a minute.
    long finishing = claimed.softSixtieths() - exact;
    assertThat(Math.floorDiv(finishing + 59, 60L)).isEqualTo(figures.finishingPoints());
  }
}
