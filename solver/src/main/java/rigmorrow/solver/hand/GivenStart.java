package rigmorrow.solver.hand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import rigmorrow.model.plan.Orders;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Repair;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** Where a search begins that is to improve a plan there is. */
public final class GivenStart {
  private final CompiledBatch batch;
  private final Timeline timeline;

  /**
   * @param batch that is planned again
   */
  public GivenStart(CompiledBatch batch) {
    this.batch = batch;
    this.timeline = new Timeline(batch);
  }

  /**
   * The given orders where they are workable. Else the best of them, of what is left of them
   * without what offends, and of a plan by dispatch rules.
   *
   * @param orders jobs that cannot be where they are count as left out
   * @param enough asked after each dispatch rule; true ends them early
   */
  public Sequences from(Orders orders, BooleanSupplier enough) {
    write(orders);
    timeline.decode();
    Sequences given = Sequences.of(batch, timeline);
    if (given.hard() == 0) {
      return given;
    }
    Sequences repaired = new Repair(batch, timeline).untilWorkable();
    Sequences dispatched = new Dispatcher(batch).best(enough);
    Sequences best = repaired.betterThan(given) ? repaired : given;
    return dispatched.betterThan(best) ? dispatched : best;
  }

  private void write(Orders orders) {
    Map<String, Integer> numbers = new HashMap<>();
    for (int job = 0; job < batch.jobCount(); job++) {
      numbers.put(batch.jobId(job), job);
    }
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      List<Integer> jobs = new ArrayList<>();
      for (String id : orders.byRig().get(rig)) {
        Integer job = numbers.get(id);
        if (job != null && batch.fits(job, rig)) {
          jobs.add(job);
          numbers.remove(id);
        }
      }
      for (int at = 0; at < jobs.size(); at++) {
        timeline.sequence(rig)[at] = jobs.get(at);
      }
      timeline.setLength(rig, jobs.size());
    }
  }
}
