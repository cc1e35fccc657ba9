package rigmorrow.solver.hand;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.JobFacts;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * A batch, as it is or changed, on which orders are decoded. Any number of times, by one thread at
 * a time.
 */
public final class Trial {
  private static final PlanOrigin ORIGIN = new PlanOrigin("explain", 0, 1, 0, "done");

  private final Batch batch;
  private final CompiledBatch compiled;
  private final Timeline timeline;
  private final PlanWriter writer;
  private final Map<String, Integer> numbers = new HashMap<>();

  /**
   * @param batch to be planned
   * @param facts of its jobs
   */
  public Trial(Batch batch, JobFacts facts) {
    this.batch = batch;
    this.compiled = CompiledBatch.of(batch, facts);
    this.timeline = new Timeline(compiled);
    this.writer = new PlanWriter(compiled, timeline);
    for (int job = 0; job < compiled.jobCount(); job++) {
      numbers.put(compiled.jobId(job), job);
    }
  }

  /** What is planned. */
  public Batch batch() {
    return batch;
  }

  /** True when the rig can take the job, no pin holds it elsewhere and it is not too long. */
  public boolean takes(int rig, String job) {
    Integer number = numbers.get(job);
    return number != null && compiled.fits(number, rig);
  }

  /** Load, capture and unload of a job on a rig that passes the fit check. */
  public int neededSeconds(int rig, String job) {
    return compiled.plainSeconds(number(job), rig);
  }

  /** The longest time for which a rig is open and staffed in one go. */
  public int longestOpenSeconds(int rig) {
    return compiled.longestOpenSeconds(rig);
  }

  /** Decodes orders and tells their score alone: the cheap way for trying many. */
  public Sequences score(Orders orders) {
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
  public Timed decode(Orders orders) {
    return decode(orders, ORIGIN);
  }

  /**
   * The same, for a plan that is kept.
   *
   * @param origin how the orders came about
   */
  public Timed decode(Orders orders, PlanOrigin origin) {
    Sequences scored = score(orders);
    Plan plan = writer.write(scored, origin);
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
    return new Timed(plan, cost);
  }

  /** For what its rig waited on account of a job, in orders. */
  public List<Wait> waits(Orders orders, String job) {
    score(orders);
    int rig = orders.rigOf(job);
    return writer.waits(rig, orders.byRig().get(rig).indexOf(job));
  }

  /** The same of every job in the orders, by its id. */
  public Map<String, List<Wait>> waits(Orders orders) {
    score(orders);
    return writer.waits();
  }

  /** True where the job can be planned on some rig. */
  public boolean knows(String job) {
    return numbers.containsKey(job);
  }

  private int number(String job) {
    Integer number = numbers.get(job);
    if (number == null) {
      throw new IllegalArgumentException(job + " cannot be planned");
    }
    return number;
  }
}
