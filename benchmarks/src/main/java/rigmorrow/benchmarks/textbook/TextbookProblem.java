package rigmorrow.benchmarks.textbook;

import java.util.List;
import rigmorrow.model.check.Require;
import rigmorrow.model.floor.Weights;

/**
 * A scheduling problem as textbooks put it: rigs that do one job at a time, jobs that are there
 * from the start, perhaps setups, one goal. A unit of time is a second.
 *
 * @param name of the instance
 * @param jobs at least one, all for the same number of rigs
 * @param setups what lies between two jobs
 * @param goal what is weighed; see the goals below
 */
public record TextbookProblem(
    String name, List<TextbookJob> jobs, SetupTimes setups, Weights goal) {
  /** Points are seconds late times weight. */
  public static final Weights LATENESS = new Weights(60, 0, 0, 1);

  /** Points are seconds of changeover. */
  public static final Weights CHANGEOVERS = new Weights(0, 60, 0, 1);

  /** Points are seconds until the last job ends. */
  public static final Weights MAKESPAN = new Weights(0, 0, 60, 1);

  /** Only what is left out counts. */
  public static final Weights LEFT_OUT = new Weights(0, 0, 0, 1);

  public TextbookProblem {
    Require.text("name", name);
    jobs = List.copyOf(jobs);
    Require.that(!jobs.isEmpty(), "jobs", "empty", "at least one job");
    int rigs = jobs.get(0).seconds().size();
    for (TextbookJob job : jobs) {
      Require.that(
          job.seconds().size() == rigs, "seconds", job.seconds(), "one for each of " + rigs);
      Require.that(
          job.family() < Math.max(1, setups.families()),
          "family",
          job.family(),
          "0 to " + (setups.families() - 1));
    }
    Require.that(
        setups.rigs() == 0 || setups.rigs() == rigs,
        "setups",
        setups.rigs() + " rigs",
        rigs + " rigs");
  }

  /** A problem without setups. */
  public static TextbookProblem of(String name, Weights goal, List<TextbookJob> jobs) {
    return new TextbookProblem(name, jobs, SetupTimes.NONE, goal);
  }

  /** Number of rigs. */
  public int rigs() {
    return jobs.get(0).seconds().size();
  }
}
