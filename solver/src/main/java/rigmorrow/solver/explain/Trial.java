package rigmorrow.solver.explain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.JobFacts;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** A batch, as it is or changed, on which orders are decoded. */
final class Trial {
  private static final PlanOrigin ORIGIN = new PlanOrigin("explain", 0, 1, 0, "done");

  private final Batch batch;
  private final CompiledBatch compiled;
  private final Timeline timeline;
  private final PlanWriter writer;
  private final Map<String, Integer> numbers = new HashMap<>();

  Trial(Batch batch, JobFacts facts) {
    this.batch = batch;
    this.compiled = CompiledBatch.of(batch, facts);
    this.timeline = new Timeline(compiled);
    this.writer = new PlanWriter(compiled, timeline);
    for (int job = 0; job < compiled.jobCount(); job++) {
      numbers.put(compiled.jobId(job), job);
    }
  }

  /**
   * What orders come to.
   *
   * @param plan with every time
   * @param cost of it
   */
  record Decoded(Plan plan, Cost cost) {
    /** Where and when a job is; it must be planned. */
    JobTimes times(String job) {
      for (var rig : plan.rigs()) {
        for (int place = 0; place < rig.jobs().size(); place++) {
          PlannedJob one = rig.jobs().get(place);
          if (one.job().equals(job)) {
            return new JobTimes(
                rig.rig(),
                place,
                rig.jobs().size(),
                one.whole().start(),
                one.capture().end(),
                one.whole().end(),
                one.changeover() == null ? 0 : one.changeover().span().seconds(),
                one.lateSeconds());
          }
        }
      }
      throw new IllegalArgumentException(job + " is not planned");
    }
  }

  Batch batch() {
    return batch;
  }

  /** True when the rig can take the job, no pin holds it elsewhere and it is not too long. */
  boolean takes(int rig, String job) {
    Integer number = numbers.get(job);
    return number != null && compiled.fits(number, rig);
  }

  /** Load, capture and unload of a job on a rig that passes the fit check. */
  int neededSeconds(int rig, String job) {
    return compiled.plainSeconds(number(job), rig);
  }

  /** The longest time for which a rig is open and staffed in one go. */
  int longestOpenSeconds(int rig) {
    return compiled.longestOpenSeconds(rig);
  }

  /** Decodes orders and tells their score alone: the cheap way for trying many. */
  Sequences score(Orders orders) {
    for (int rig = 0; rig < compiled.rigCount(); rig++) {
      List<String> jobs = orders.byRig().get(rig);
      int[] sequence = timeline.sequence(rig);
      for (int place = 0; place < jobs.size(); place++) {
        sequence[place] = number(jobs.get(place));
      }
      timeline.setLength(rig, jobs.size());
    }
    timeline.decode();
    return Sequences.of(compiled, timeline);
  }

  /** Decodes orders and tells every time. */
  Decoded decode(Orders orders) {
    Sequences scored = score(orders);
    Plan plan = writer.write(scored, ORIGIN);
    PlanFigures figures = plan.figures();
    Cost cost =
        new Cost(
            figures.hard(),
            figures.leftOutPoints(),
            scored.soft(),
            timeline.lateWeighted(),
            figures.lateSeconds(),
            figures.lateJobs(),
            figures.leftOut(),
            figures.changeoverSeconds(),
            figures.finishedAt());
    return new Decoded(plan, cost);
  }

  /** For what its rig waited on account of a job, in orders. */
  List<Wait> waits(Orders orders, String job) {
    score(orders);
    int rig = orders.rigOf(job);
    return writer.waits(rig, orders.byRig().get(rig).indexOf(job));
  }

  private int number(String job) {
    Integer number = numbers.get(job);
    if (number == null) {
      throw new IllegalArgumentException(job + " cannot be planned");
    }
    return number;
  }
}
