package rigmorrow.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SearchBenchmarkTest {
  @Test
  void countsTheChangesThatASearchJudges() {
    SearchBenchmark benchmark = new SearchBenchmark();
    benchmark.jobs = 30;
    benchmark.steps = 2000;
    SearchBenchmark.Counted counted = new SearchBenchmark.Counted();
    benchmark.compile();

    assertThat(benchmark.search(counted).hard()).isZero();

    // Each step is a decode at the dearest, and 16 judged changes are a step at the cheapest.
    assertThat(counted.moves).isBetween(1000L, 32_000L);
  }
}
