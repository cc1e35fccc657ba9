package rigmorrow.benchmarks;

import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.search.Searcher;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** Moves a second on one core: changes that a whole search judges, from the dispatch plan on. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class SearchBenchmark {
  /** Jobs of the demo day; the floor's rigs follow from them: 6, 10, 12. */
  @Param({"150", "400", "2000"})
  public int jobs;

  /** Decodes of one search. */
  @Param("20000")
  public long steps;

  private @Nullable CompiledBatch batch;
  private @Nullable Sequences start;
  private long seed;

  /** Counted beside the searches themselves. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.OPERATIONS)
  public static class Counted {
    /** Changes judged: turned down by a walk, by a decode, or kept. */
    public long moves;

    /** Starts each iteration at nothing. */
    @Setup(Level.Iteration)
    public void reset() {
      moves = 0;
    }
  }

  /** Compiles the day and builds its dispatch plan. */
  @Setup
  public void compile() {
    CompiledBatch compiled = CompiledBatch.of(RuleSet.FULL.batch(jobs));
    start = new Dispatcher(compiled).best(() -> true);
    batch = compiled;
  }

  /** One whole search. */
  @Benchmark
  public Sequences search(Counted counted) {
    Searcher searcher =
        new Searcher(
            Objects.requireNonNull(batch), Objects.requireNonNull(start), seed++, better -> {});
    Sequences found = searcher.run(0, null, steps);
    counted.moves += searcher.judged();
    return found;
  }
}
