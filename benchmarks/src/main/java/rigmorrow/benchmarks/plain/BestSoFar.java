package rigmorrow.benchmarks.plain;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.PlanWriter;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** Keeps the best plan of several searches and tells a listener of it, ten times a second. */
final class BestSoFar {
  private static final long TELL_NANOS = 100_000_000;

  private final SolveListener listener;
  private final long begin;
  private final Timeline timeline;
  private final PlanWriter writer;
  private @Nullable Sequences best;
  private long told;

  BestSoFar(CompiledBatch batch, SolveListener listener, long begin) {
    this.listener = listener;
    this.begin = begin;
    this.timeline = new Timeline(batch);
    this.writer = new PlanWriter(batch, timeline);
    this.told = begin - TELL_NANOS;
  }

  synchronized void offer(Sequences one) {
    if (best != null && !one.betterThan(best)) {
      return;
    }
    best = one;
    long now = System.nanoTime();
    if (now - told >= TELL_NANOS) {
      told = now;
      one.decode(timeline);
      listener.improved(Duration.ofNanos(now - begin), writer.figures(one.backlog()));
    }
  }

  synchronized @Nullable Sequences best() {
    return best;
  }
}
