package rigmorrow.benchmarks.textbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;
import rigmorrow.model.plan.PlanFigures;

/** One machine, or several alike, where a rule is proven to be best. */
final class SequencingChecks {
  private static final long DECODES = 100_000;
  private static final int SEEDS = 10;

  private SequencingChecks() {}

  static List<OutsideCheck> all() {
    return List.of(
        check(
            "Least maximum lateness L*: planned with musts at d + L*, not a second below; 6 jobs",
            "Jackson 1955; L* by its rule, number left out by Moore 1968",
            () -> jackson("", new int[] {12, 7, 25, 9, 18, 4}, new int[] {20, 40, 31, 52, 35, 66})),
        check(
            "Least maximum lateness L*, 10 random instances of 12 jobs",
            "Jackson 1955; L* by its rule, number left out by Moore 1968",
            seeds(SequencingChecks::randomJackson)),
        check(
            "Sum of completion times, 10 random instances of 20 jobs",
            "Smith 1956, shortest job first",
            seeds(seed -> completion(seed, 1))),
        check(
            "Weighted sum of completion times, 10 random instances of 20 jobs",
            "Smith 1956, least seconds over weight first",
            seeds(seed -> completion(seed, 9))),
        check(
            "Sum of completion times on 3 machines alike, 10 random instances of 15 jobs",
            "Conway, Maxwell, Miller 1967, shortest job first",
            seeds(SequencingChecks::completionOfThree)),
        check(
            "Number of late jobs, an instance of 10 jobs",
            "Moore 1968; every set of jobs tried",
            SequencingChecks::moore),
        check(
            "Number of late jobs, 10 random instances of 14 jobs",
            "Moore 1968, by its rule",
            seeds(SequencingChecks::randomMoore)),
        check(
            "Weight of late jobs, sum of 10 random instances of 12 jobs",
            "every set of jobs tried",
            SequencingChecks::lateWeight));
  }

  private static OutsideCheck check(String what, String source, Supplier<List<Figure>> figures) {
    return OutsideCheck.of(what, source, SequencingTest.class, figures);
  }

  private static Supplier<List<Figure>> seeds(IntFunction<List<Figure>> one) {
    return () -> IntStream.range(0, SEEDS).boxed().flatMap(s -> one.apply(s).stream()).toList();
  }

  private static List<Figure> randomJackson(int seed) {
    Random random = new Random(seed);
    int[] seconds = random.ints(12, 1, 60).toArray();
    int sum = Arrays.stream(seconds).sum();
    return jackson("seed " + seed + " ", seconds, random.ints(12, sum / 5, sum).toArray());
  }

  private static List<Figure> jackson(String name, int[] seconds, int[] due) {
    int least = TextbookRules.leastMaximumLateness(seconds, due);
    int[] tight = Arrays.stream(due).map(one -> one + least - 1).toArray();
    int late = TextbookRules.leastNumberLate(seconds, tight);
    String at = name + "L* " + least;
    return List.of(
        Figure.equal(at + ", left out", 0, musts(seconds, due, least).leftOut()),
        Figure.equal(at + " - 1, left out", late, musts(seconds, due, least - 1).leftOut()));
  }

  private static PlanFigures musts(int[] seconds, int[] due, int later) {
    int[] ones = IntStream.generate(() -> 1).limit(due.length).toArray();
    return musts(seconds, Arrays.stream(due).map(one -> one + later).toArray(), ones);
  }

  private static PlanFigures musts(int[] seconds, int[] due, int[] weights) {
    List<TextbookJob> jobs = new ArrayList<>();
    for (int job = 0; job < due.length; job++) {
      jobs.add(TextbookJob.of(seconds[job]).withWeight(weights[job]).mustBy(due[job]));
    }
    return FrontDoor.figures(
        TextbookProblem.of("in time", TextbookProblem.LEFT_OUT, jobs), DECODES);
  }

  private static List<Figure> completion(int seed, int heaviest) {
    Random random = new Random(seed);
    int[] seconds = random.ints(20, 1, 100).toArray();
    int[] weights = random.ints(20, 1, heaviest + 1).toArray();
    List<TextbookJob> jobs = new ArrayList<>();
    for (int job = 0; job < seconds.length; job++) {
      jobs.add(TextbookJob.of(seconds[job]).withWeight(weights[job]).shouldBy(0));
    }
    return List.of(completed(jobs, TextbookRules.leastWeightedCompletion(seconds, weights)));
  }

  private static List<Figure> completionOfThree(int seed) {
    int[] seconds = new Random(seed).ints(15, 1, 100).toArray();
    List<TextbookJob> jobs =
        Arrays.stream(seconds)
            .mapToObj(one -> TextbookJob.of(List.of(one, one, one)).shouldBy(0))
            .toList();
    return List.of(completed(jobs, TextbookRules.leastCompletion(3, seconds)));
  }

  /** All are due at the plan's first second, so that how late they are is when they end. */
  private static Figure completed(List<TextbookJob> jobs, long least) {
    PlanFigures figures =
        FrontDoor.figures(
            TextbookProblem.of("completion", TextbookProblem.LATENESS, jobs), DECODES);
    return Figure.equal("", least, figures.leftOut() > 0 ? -1 : figures.latenessPoints());
  }

  private static List<Figure> moore() {
    int[] seconds = {19, 23, 5, 31, 17, 8, 32, 41, 26, 18};
    int[] due = {48, 75, 170, 215, 205, 240, 85, 67, 100, 95};
    return List.of(
        Figure.equal("ours", 2, musts(seconds, due, 0).leftOut()),
        Figure.equal("rule", 2, TextbookRules.leastNumberLate(seconds, due)));
  }

  private static List<Figure> randomMoore(int seed) {
    Random random = new Random(seed);
    int[] seconds = random.ints(14, 1, 60).toArray();
    int sum = Arrays.stream(seconds).sum();
    int[] due = random.ints(14, 10, sum).toArray();
    int least = TextbookRules.leastNumberLate(seconds, due);
    return List.of(Figure.equal("", least, musts(seconds, due, 0).leftOut()));
  }

  /** Not reached every time; the bar is 2 % above the sum of the optima. */
  private static List<Figure> lateWeight() {
    long least = 0;
    long ours = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      int[] seconds = random.ints(12, 1, 60).toArray();
      int[] weights = random.ints(12, 1, 20).toArray();
      int[] due = random.ints(12, 10, Arrays.stream(seconds).sum() * 2 / 3).toArray();
      least += TextbookRules.leastLateWeight(seconds, due, weights);
      ours += musts(seconds, due, weights).leftOutPoints();
    }
    return List.of(Figure.atMost("", least, least + least / 50, ours));
  }
}
