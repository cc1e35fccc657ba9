package rigmorrow.benchmarks.textbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;

/** Machines alike, without setups: the least makespan. */
final class MachinesChecks {
  private static final long DECODES = 200_000;
  private static final int SEEDS = 10;

  private MachinesChecks() {}

  static List<OutsideCheck> all() {
    return List.of(
        graham(2, 6, 7, 3, 3, 2, 2, 2),
        graham(3, 9, 11, 5, 5, 4, 4, 3, 3, 3),
        graham(4, 12, 15, 7, 7, 6, 6, 5, 5, 4, 4, 4),
        check(
            "Makespan of 2 machines alike, 10 random instances of 15 jobs",
            "sums of jobs, all that can be reached",
            seeds(MachinesChecks::twoMachines)),
        check(
            "Makespan bound max(sum p / m, max p) never beaten, 10 random instances on 2 to 4"
                + " machines",
            "McNaughton 1959",
            seeds(MachinesChecks::neverBeaten)),
        check(
            "The bound attained where jobs are cut from 3 full machines, 10 random instances of 15"
                + " jobs",
            "McNaughton 1959; by the cutting",
            seeds(MachinesChecks::attainedByCutting)),
        check(
            "The bound attained where one job is longer than all others together",
            "McNaughton 1959",
            MachinesChecks::attainedByOneLongJob));
  }

  private static OutsideCheck check(String what, String source, Supplier<List<Figure>> figures) {
    return OutsideCheck.of(what, source, MachinesTest.class, figures);
  }

  private static Supplier<List<Figure>> seeds(IntFunction<Figure> one) {
    return () -> IntStream.range(0, SEEDS).mapToObj(one).toList();
  }

  /** The instances on which the rule "longest job first" is as bad as it can be. */
  private static OutsideCheck graham(int machines, int optimum, int longestFirst, int... seconds) {
    return check(
        "Makespan of the worst instance of longest-first on " + machines + " machines",
        "Graham 1969, bound 4/3 - 1/(3m)",
        () -> {
          int byRule = TextbookRules.longestFirst(machines, seconds);
          int ours = makespan(machines, seconds);
          String bound = machines == 2 ? "1.1667" : machines == 3 ? "1.2222" : "1.2500";
          return List.of(
              Figure.equal("optimum", optimum, ours),
              Figure.equal("longest first", longestFirst, byRule),
              Figure.rounded("ratio", bound, (double) byRule / ours));
        });
  }

  private static int makespan(int machines, int... seconds) {
    List<TextbookJob> jobs =
        Arrays.stream(seconds)
            .mapToObj(one -> TextbookJob.of(Collections.nCopies(machines, one)))
            .toList();
    return FrontDoor.figures(
            TextbookProblem.of("makespan", TextbookProblem.MAKESPAN, jobs), DECODES)
        .finishedAt();
  }

  private static Figure twoMachines(int seed) {
    int[] seconds = new Random(seed).ints(15, 1, 200).toArray();
    return Figure.equal("", TextbookRules.leastMakespanOfTwo(seconds), makespan(2, seconds));
  }

  private static Figure neverBeaten(int seed) {
    Random random = new Random(seed);
    int machines = 2 + random.nextInt(3);
    int[] seconds = random.ints(machines + random.nextInt(8), 1, 100).toArray();
    int bound = TextbookRules.leastMakespanBound(machines, seconds);
    return Figure.atLeast("", bound, makespan(machines, seconds));
  }

  private static Figure attainedByCutting(int seed) {
    Random random = new Random(seed);
    List<Integer> seconds = new ArrayList<>();
    for (int machine = 0; machine < 3; machine++) {
      int[] cuts =
          IntStream.concat(IntStream.of(0, 100), random.ints(1, 100).distinct().limit(4))
              .sorted()
              .toArray();
      for (int cut = 1; cut < cuts.length; cut++) {
        seconds.add(cuts[cut] - cuts[cut - 1]);
      }
    }
    Collections.shuffle(seconds, random);
    return Figure.equal(
        "", 100, makespan(3, seconds.stream().mapToInt(Integer::intValue).toArray()));
  }

  private static List<Figure> attainedByOneLongJob() {
    int[] seconds = {120, 9, 14, 22, 31, 8, 17};
    int bound = TextbookRules.leastMakespanBound(3, seconds);
    return List.of(
        Figure.equal("bound", 120, bound), Figure.equal("makespan", bound, makespan(3, seconds)));
  }
}
