package rigmorrow.benchmarks;

import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * Full decodes a second on one core. The rules that are taken out one by one tell what each part of
 * the timeline costs.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DecodeBenchmark {
  /** Jobs of the demo day; the floor's rigs follow from them: 6, 10, 12. */
  @Param({"150", "400", "2000"})
  public int jobs;

  /** Which rules are in force. */
  @Param public RuleSet rules = RuleSet.FULL;

  private @Nullable Timeline timeline;

  /** Compiles the day and writes its dispatch plan into the decoder. */
  @Setup
  public void compile() {
    CompiledBatch batch = CompiledBatch.of(rules.batch(jobs));
    Sequences sequences = new Dispatcher(batch).best(() -> true);
    Timeline decoder = new Timeline(batch);
    sequences.decode(decoder);
    timeline = decoder;
  }

  /** One full decode of the plan. */
  @Benchmark
  public int decode() {
    Timeline decoder = java.util.Objects.requireNonNull(timeline);
    decoder.decode();
    return decoder.finishedAt();
  }
}
