package rigmorrow.benchmarks.peer.exact;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Repair;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** The best plan so far in the eyes of the one decoder; never gets worse. */
public final class Incumbent {
  private final CompiledBatch batch;
  private final Timeline timeline;
  private final Repair repair;
  private final PlanWriter writer;
  private final SolveListener listener;
  private final long begin;
  private Sequences best;

  /**
   * @param first plan that is there already
   * @param listener told of it and of each better one
   * @param begin {@link System#nanoTime()} from which elapsed time counts
   */
  public Incumbent(CompiledBatch batch, Sequences first, SolveListener listener, long begin) {
    this.batch = batch;
    this.timeline = new Timeline(batch);
    this.repair = new Repair(batch, timeline);
    this.writer = new PlanWriter(batch, timeline);
    this.listener = listener;
    this.begin = begin;
    this.best = first;
    tell();
  }

  /** Decodes the sequences, leaves out what breaks a hard rule, and keeps the plan if better. */
  public synchronized void offer(List<List<Integer>> byRig) {
    new Sequences(new ArrayList<>(byRig), List.of(), 0, 0, 0).decode(timeline);
    Sequences made = Sequences.of(batch, timeline);
    if (made.hard() > 0) {
      made = repair.untilWorkable();
    }
    if (made.betterThan(best)) {
      best = made;
      tell();
    }
  }

  /** The best so far. */
  public synchronized Sequences best() {
    return best;
  }

  /** The best so far as a plan. */
  public synchronized Plan plan(PlanOrigin origin) {
    return writer.write(best, origin);
  }

  private void tell() {
    best.decode(timeline);
    listener.improved(Duration.ofNanos(System.nanoTime() - begin), writer.figures(best.backlog()));
  }
}
