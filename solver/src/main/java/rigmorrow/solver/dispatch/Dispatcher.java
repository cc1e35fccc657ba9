package rigmorrow.solver.dispatch;

import java.util.function.BooleanSupplier;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Repair;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** Builds a first plan: tries a small grid of dispatch rules and keeps the best decoded plan. */
public final class Dispatcher {
  private final CompiledBatch batch;
  private final Timeline timeline;

  /**
   * @param batch to plan
   */
  public Dispatcher(CompiledBatch batch) {
    this.batch = batch;
    this.timeline = new Timeline(batch);
  }

  /**
   * The best plan of the grid; what breaks a hard rule in it is left out.
   *
   * @param enough asked after each rule; true ends the grid early
   */
  public Sequences best(BooleanSupplier enough) {
    Sequences best = null;
    double meanSetup = meanSetupSeconds();
    for (DispatchRule rule : DispatchRule.grid()) {
      Sequences made = build(rule, meanSetup);
      if (best == null || made.betterThan(best)) {
        best = made;
      }
      if (enough.getAsBoolean()) {
        break;
      }
    }
    return java.util.Objects.requireNonNull(best);
  }

  private Sequences build(DispatchRule rule, double meanSetup) {
    timeline.build(new AtcsChooser(batch, rule, meanSetup));
    return new Repair(batch, timeline).untilWorkable();
  }

  private double meanSetupSeconds() {
    long sum = 0;
    long count = 0;
    timeline.build((rig, time, at) -> rigmorrow.solver.timeline.NextJob.NONE);
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      for (int job = 0; job < batch.jobCount(); job++) {
        if (batch.fits(job, rig)) {
          sum += timeline.setupSecondsNow(rig, job);
          count++;
        }
      }
    }
    return count == 0 ? 1 : sum / (double) count;
  }
}
